// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/file_claim.h"

#include "core/store/store_error.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QLockFile>
#include <QSysInfo>

#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

/// Two links to one file are one file.
QString realPath(const QString& path)
{
    const QFileInfo info(path);
    const QString real = info.canonicalFilePath(); // empty if it is not there
    return real.isEmpty() ? info.absoluteFilePath() : real;
}

std::optional<Instant> lastChangeOf(const QString& file)
{
    const QDateTime changed = QFileInfo(file).lastModified();
    if (!changed.isValid())
        return std::nullopt;
    return Instant{std::chrono::sys_seconds(std::chrono::seconds(changed.toSecsSinceEpoch())),
                   std::chrono::minutes(changed.offsetFromUtc() / 60)};
}

/// The machine's own number decides where both are known: two computers may have one name.
bool isOfThisHost(const QString& mark, const QString& host)
{
    constexpr qsizetype machineLine = 3; // after process, program and host, as QLockFile writes them
    QFile file(mark);
    const auto lines = file.open(QIODevice::ReadOnly) ? file.readAll().split('\n') : QByteArrayList();
    const QByteArray machine = lines.value(machineLine);
    const QByteArray ours = QSysInfo::machineUniqueId();
    if (!machine.isEmpty() && !ours.isEmpty())
        return machine == ours;
    return host.isEmpty() || host == QSysInfo::machineHostName();
}

FileHolder holderOf(const QLockFile& mark)
{
    FileHolder holder;
    qint64 process = 0;
    QString program;
    if (mark.getLockInfo(&process, &holder.host, &program))
        holder.process = process;
    holder.onThisHost = isOfThisHost(mark.fileName(), holder.host);
    holder.since = lastChangeOf(mark.fileName());
    return holder;
}

std::string sinceText(const FileHolder& holder)
{
    return holder.since ? instantText(*holder.since).substr(0, 16).replace(10, 1, " ") : "?";
}

} // namespace

FileClaim::FileClaim(std::unique_ptr<QLockFile> mark)
    : m_mark(std::move(mark))
{
}

FileClaim::~FileClaim() = default; // the mark goes with the QLockFile
FileClaim::FileClaim(FileClaim&&) noexcept = default;
FileClaim& FileClaim::operator=(FileClaim&&) noexcept = default;

FileClaim::Outcome FileClaim::make(const QString& path)
{
    auto mark = std::make_unique<QLockFile>(inUseMarkOf(path));
    mark->setStaleLockTime(0); // a window may stay open for days: only a holder that is gone makes a mark stale
    if (mark->tryLock())
        return FileClaim(std::move(mark));
    switch (mark->error()) {
    case QLockFile::LockFailedError:
        return holderOf(*mark);
    case QLockFile::PermissionError:
        return FileClaim(nullptr);
    case QLockFile::NoError:
    case QLockFile::UnknownError:
        break;
    }
    return Problem{ProblemKind::cannotWrite,
                   {PADSIDE_SAY("{0} can't be made, so it can't be said whether another program has the record open: "
                                "check that the folder is there and the disk is not full."),
                    {inUseMarkOf(path).toStdString()}}};
}

FileClaim FileClaim::makeOrThrow(const QString& path)
{
    Outcome outcome = make(path);
    if (auto* claim = std::get_if<FileClaim>(&outcome))
        return std::move(*claim);
    if (const auto* holder = std::get_if<FileHolder>(&outcome))
        throw StoreError(Problem{ProblemKind::refused, inUseSentence(path, *holder)});
    throw StoreError(std::get<Problem>(std::move(outcome)));
}

bool FileClaim::dropMarkOfOtherHost(const QString& path)
{
    const QLockFile mark(inUseMarkOf(path));
    if (holderOf(mark).onThisHost)
        return false;
    return QFile::remove(mark.fileName());
}

QString inUseMarkOf(const QString& recordFile)
{
    return realPath(recordFile) + u".in-use"_s;
}

Sentence inUseSentence(const QString& recordFile, const FileHolder& holder)
{
    if (holder.onThisHost)
        return {
            PADSIDE_SAY("{0} is already open in another Padside on this computer (process {1}, since {2}). Go on in "
                        "that window, or close it first."),
            {recordFile.toStdString(), std::to_string(holder.process), sinceText(holder)}};
    return {PADSIDE_SAY("{0} is open in Padside on the computer “{1}” (process {2}, since {3}). Close it there first: "
                        "two programs writing to one file over a network can damage it."),
            {recordFile.toStdString(), holder.host.toStdString(), std::to_string(holder.process), sinceText(holder)}};
}

} // namespace padside
