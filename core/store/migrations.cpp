// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/migrations.h"

#include "core/store/connection.h"
#include "core/store/copy_database.h"
#include "core/store/schema_v1.h"
#include "core/store/schema_v2.h"
#include "core/store/transaction.h"

#include <QFileInfo>

#include <array>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

int versionOf(Connection& connection)
{
    return static_cast<int>(connection.number("PRAGMA user_version"));
}

/// "harbour.padside" at version 1 → "harbour.version-1-copy-1.padside", with the first number that is free.
QString freeBackupName(const QString& path, int version)
{
    const QFileInfo file(path);
    for (int counter = 1;; ++counter) {
        QString name = u"%1/%2.version-%3-copy-%4.%5"_s.arg(file.absolutePath(), file.completeBaseName(),
                                                            QString::number(version), QString::number(counter),
                                                            file.suffix().isEmpty() ? u"padside"_s : file.suffix());
        if (!QFileInfo::exists(name))
            return name;
    }
}

/// Foreign keys are off while a step runs, so that it may rebuild tables, and on again whatever happens.
class ForeignKeysOff
{
public:
    explicit ForeignKeysOff(Connection& connection)
        : m_connection(connection)
    {
        m_connection.run("PRAGMA foreign_keys = OFF");
    }
    ~ForeignKeysOff()
    {
        try {
            m_connection.run("PRAGMA foreign_keys = ON");
        } catch (const StoreError&) { // NOLINT(bugprone-empty-catch): the step's own error is on its way already
        }
    }
    ForeignKeysOff(const ForeignKeysOff&) = delete;
    ForeignKeysOff& operator=(const ForeignKeysOff&) = delete;

private:
    Connection& m_connection;
};

void carryOut(Connection& connection, const Migration& step)
{
    const ForeignKeysOff off(connection);
    Transaction transaction(connection);
    if (versionOf(connection) >= step.version) // another program was quicker
        return;
    step.apply(connection);
    if (connection.number("SELECT count(*) FROM pragma_foreign_key_check") != 0)
        throw storeError(
            ProblemKind::cannotWrite,
            PADSIDE_SAY("{0} could not be brought to version {1}: records would point at nothing. It was left "
                        "as it was."),
            {connection.path().toStdString(), std::int64_t{step.version}});
    connection.run("PRAGMA user_version = " + std::to_string(step.version));
    transaction.commit();
}

} // namespace

std::span<const Migration> migrations()
{
    static const std::array steps{
        Migration{1, [](Connection& connection) { connection.run(schemaVersion1()); }},
        Migration{2, [](Connection& connection) { connection.run(schemaVersion2()); }},
    };
    return steps;
}

int latestVersion(std::span<const Migration> steps)
{
    return steps.empty() ? 0 : steps.back().version;
}

QString bringUpToDate(Connection& connection, std::span<const Migration> steps)
{
    const int version = versionOf(connection);
    if (version >= latestVersion(steps))
        return {};
    QString backup;
    if (version > 0) {
        backup = freeBackupName(connection.path(), version);
        copyDatabase(connection, backup, {});
    }
    for (const Migration& step : steps) {
        if (step.version > version)
            carryOut(connection, step);
    }
    return backup;
}

} // namespace padside
