// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// How a file comes to be the open one: claimed, opened, put in place of the one before.

#include "app/clock.h"
#include "app/come_forward.h"
#include "app/commands/of_file.h"
#include "app/window_program.h"
#include "ui/models/speaker.h"
#include "ui/shell/main_window.h"

#include <QDir>
#include <QFileInfo>
#include <QRandomGenerator>
#include <QSettings>
#include <QStandardPaths>

#include <utility>

namespace padside {

namespace {

const QString lastFileKey = QStringLiteral("last-file");

QString recordsInDataFolder()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    return QDir(folder).filePath(QStringLiteral("records.padside"));
}

} // namespace

WindowProgram::Opened WindowProgram::openUsual()
{
    const QString last = QSettings().value(lastFileKey).toString();
    const bool lastIsThere = QFileInfo::exists(last);
    if (lastIsThere) {
        if (const Opened opened = open(last); opened != Opened::notAtAll)
            return opened;
    }
    // Not remembered as the last file: where a disk was only not connected, the next start finds the other again.
    const QString usual = recordsInDataFolder();
    const Opened opened = put(usual);
    if (opened == Opened::here && lastIsThere)
        tell(tr("%1, the file used last, was not opened. Shown here is %2.").arg(last, usual));
    else if (opened == Opened::here && !last.isEmpty())
        tell(tr("%1, the file used last, is not there any more: it was moved, renamed or deleted, or its disk is not "
                "connected. Open it where it is now with Ctrl+O. Shown here is %2.")
                 .arg(last, usual));
    return opened;
}

WindowProgram::Opened WindowProgram::open(const QString& file)
{
    const Opened opened = put(file);
    if (opened == Opened::here)
        QSettings().setValue(lastFileKey, m_open->store->path());
    return opened;
}

WindowProgram::Opened WindowProgram::put(const QString& file)
{
    const QString path = QFileInfo(file).absoluteFilePath();
    if (m_open && QFileInfo(path) == QFileInfo(m_open->store->path())) {
        bringForward();
        return Opened::here;
    }
    QDir().mkpath(QFileInfo(path).absolutePath());
    FileClaim::Outcome outcome = claimFor(path);
    auto* claim = std::get_if<FileClaim>(&outcome);
    if (!claim)
        return notClaimed(path, outcome);
    try {
        auto opened = taken(path, std::move(*claim));
        showWindow(*opened);
        m_open = std::move(opened); // the file before is closed only now: without any window the program would end
    } catch (const StoreError& error) {
        tell(error.problem().what);
        return Opened::notAtAll;
    }
    return Opened::here;
}

std::unique_ptr<WindowProgram::OpenFile> WindowProgram::taken(const QString& file, FileClaim claim)
{
    std::vector<Sentence> complaints;
    const bool isThere = QFileInfo::exists(file);
    if (!isThere && file != recordsInDataFolder())
        complaints.push_back(
            {PADSIDE_SAY("There was no file {0}: this is a new, empty record of that name."), {file.toStdString()}});
    auto store = isThere ? Store::open(file) : Store::create(file);
    auto catalogue = std::make_unique<const Catalogue>(
        catalogueFor(*store, [&](const Sentence& why) { complaints.push_back(why); }));
    auto opened
        = std::make_unique<OpenFile>(OpenFile{std::move(claim), std::move(store), std::move(catalogue),
                                              IdMaker(&millisecondsNow, QRandomGenerator::system()->generate64()),
                                              nullptr, nullptr, nullptr, std::move(complaints)});
    opened->book = bookOf(*opened);
    opened->calls = std::make_unique<ComeForward>(file);
    connect(opened->calls.get(), &ComeForward::called, this, &WindowProgram::bringForward);
    return opened;
}

FileClaim::Outcome WindowProgram::claimFor(const QString& file)
{
    FileClaim::Outcome outcome = FileClaim::make(file);
    const auto* holder = std::get_if<FileHolder>(&outcome);
    if (!holder || holder->onThisHost)
        return outcome;
    // Whether that computer still runs can't be seen from here; it may be off, or the mark was copied with the file.
    const QString question = said(inUseSentence(file, *holder))
        + tr("\n\nIf you are sure that no Padside there has it open any more, you can open it all the same.");
    if (m_dialogs.agree(question, tr("Open it all the same"), tr("Leave it")) && FileClaim::dropMarkOfOtherHost(file))
        return FileClaim::make(file);
    return outcome;
}

WindowProgram::Opened WindowProgram::notClaimed(const QString& file, const FileClaim::Outcome& outcome)
{
    if (const auto* problem = std::get_if<Problem>(&outcome)) {
        tell(problem->what);
        return Opened::notAtAll;
    }
    const auto& holder = std::get<FileHolder>(outcome);
    if (holder.onThisHost && ComeForward::call(file))
        return Opened::elsewhere;
    if (holder.onThisHost) // of another host it was said in the question
        tell(inUseSentence(file, holder));
    return Opened::notAtAll;
}

} // namespace padside
