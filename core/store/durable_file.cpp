// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/durable_file.h"

#include "core/store/sqlite_failure.h"

#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <unistd.h>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

[[noreturn]] void failed(const QString& path, int error)
{
    const std::string name = path.toStdString();
    if (error == ENOSPC || error == EDQUOT)
        throw storeError(ProblemKind::cannotWrite,
                         PADSIDE_SAY("The disk is full: {0} could not be written. Make room and try again."), {name});
    if (error == EACCES || error == EPERM || error == EROFS)
        throw storeError(ProblemKind::cannotWrite,
                         PADSIDE_SAY("{0} can't be written: check who may write to its folder."), {name});
    throw storeError(ProblemKind::cannotWrite,
                     PADSIDE_SAY("{0} could not be written ({1}): check the disk and try again."),
                     {name, std::string(std::strerror(error))});
}

/// An open file descriptor, closed at the end.
class Descriptor
{
public:
    Descriptor(const QString& path, int flags)
        : m_path(path)
        , m_fd(::open(QFile::encodeName(path).constData(), flags | O_CLOEXEC, 0644))
    {
        if (m_fd < 0)
            failed(path, errno);
    }
    ~Descriptor() { ::close(m_fd); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    void write(const QByteArray& content) const
    {
        qsizetype done = 0;
        while (done < content.size()) {
            const ssize_t count
                = ::write(m_fd, content.constData() + done, static_cast<std::size_t>(content.size() - done));
            if (count < 0 && errno != EINTR)
                failed(m_path, errno);
            done += count > 0 ? count : 0;
        }
    }
    void sync() const
    {
        if (::fsync(m_fd) != 0)
            failed(m_path, errno);
    }

private:
    QString m_path;
    int m_fd;
};

} // namespace

void writeDurably(const QString& path, const QByteArray& content)
{
    const QString temporary = path + u".part-%1"_s.arg(::getpid());
    try {
        const Descriptor file(temporary, O_WRONLY | O_CREAT | O_TRUNC);
        file.write(content);
        file.sync();
        if (::rename(QFile::encodeName(temporary).constData(), QFile::encodeName(path).constData()) != 0)
            failed(path, errno);
    } catch (...) {
        QFile::remove(temporary);
        throw;
    }
    syncFolder(QFileInfo(path).absolutePath());
}

void syncFolder(const QString& folder)
{
    Descriptor(folder, O_RDONLY | O_DIRECTORY).sync();
}

void publishDatabase(const QString& from, const QString& to)
{
    if (QFileInfo(from + u"-wal"_s).size() > 0 || QFileInfo(from + u"-journal"_s).size() > 0)
        failed(from, EIO);
    Descriptor(from, O_RDONLY).sync();
    const QByteArray source = QFile::encodeName(from);
    const QByteArray target = QFile::encodeName(to);
    if (::link(source.constData(), target.constData()) == 0) {
        ::unlink(source.constData());
    } else if (errno == EEXIST || QFileInfo::exists(to)) {
        throw storeError(ProblemKind::refused, PADSIDE_SAY("{0} is there already: choose another name."),
                         {to.toStdString()});
    } else if (::rename(source.constData(), target.constData()) != 0) { // a file system without hard links
        failed(to, errno);
    }
    syncFolder(QFileInfo(to).absolutePath());
}

void removeDatabaseFiles(const QString& path)
{
    for (const QString& ending : {u""_s, u"-journal"_s, u"-wal"_s, u"-shm"_s})
        QFile::remove(path + ending);
}

} // namespace padside
