// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The sample that a person may look at before they set up anything of their own.

#include "app/window_program.h"
#include "core/store/photo_path.h"
#include "resources/resources.h"
#include "sample-db/sample.h"
#include "ui/shell/main_window.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

StoreError notMade(const QString& file)
{
    return StoreError(
        Problem{ProblemKind::cannotWrite,
                {PADSIDE_SAY("The sample could not be put at {0}: is the disk full, or the folder closed to you?"),
                 {file.toStdString()}}});
}

/// Makes the sample apart and puts it in its place when it is whole: a stop in between leaves no half of one there.
bool makeSample(const QString& file, const LongWork::Tell& tell)
{
    const QTemporaryDir apart(QFileInfo(file).absolutePath() + u"/sample-XXXXXX"_s);
    if (!apart.isValid())
        throw notMade(file);
    const QString fresh = apart.filePath(QFileInfo(file).fileName());
    bool whole = true;
    {
        const auto store = Store::create(fresh);
        const auto catalogue = Catalogue::load(shippedCatalogue());
        if (!catalogue)
            throw StoreError(catalogue.error());
        buildSample(*store, *catalogue, {}, [&](double share) {
            whole = tell(share);
            return whole;
        });
    }
    if (!whole)
        return false;
    QDir().rename(photoFolderOf(fresh), photoFolderOf(file)); // without them the record is still whole, and says so
    if (!QFile::rename(fresh, file))
        throw notMade(file);
    return true;
}

} // namespace

void WindowProgram::showSample()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    const QString file = QDir(folder).filePath(u"sample.padside"_s);
    if (QFileInfo::exists(file)) {
        open(file);
        return;
    }
    QDir().mkpath(folder);
    window()->doLongWork(tr("Making the sample"), [this, file](const LongWork::Tell& tell) {
        const bool made = makeSample(file, tell);
        if (made) // opened in the window's thread, when this work has ended
            QMetaObject::invokeMethod(
                this, [this, file] { open(file); }, Qt::QueuedConnection);
        return made;
    });
}

} // namespace padside
