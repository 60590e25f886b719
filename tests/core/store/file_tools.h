// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QFile>
#include <QFileInfo>
#include <QString>

#include <sys/stat.h>
#include <unistd.h>

namespace padside::test {

[[nodiscard]] inline QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return QFileInfo(path).isFile() && file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

inline void writeContent(const QString& path, const QByteArray& content)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
        qFatal("a test could not write its file");
}

/// Gives up the superuser's rights for a while, where a test runs as the superuser: permissions then hold.
class AsAnotherUser
{
public:
    AsAnotherUser()
        : m_was(::geteuid())
    {
        if (m_was == 0 && ::seteuid(nobody) != 0)
            qFatal("a test could not give up its rights");
    }
    ~AsAnotherUser()
    {
        if (m_was == 0 && ::seteuid(0) != 0)
            qFatal("a test could not take back its rights");
    }
    AsAnotherUser(const AsAnotherUser&) = delete;
    AsAnotherUser& operator=(const AsAnotherUser&) = delete;

private:
    static constexpr uid_t nobody = 65534;
    uid_t m_was;
};

} // namespace padside::test
