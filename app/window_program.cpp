// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/window_program.h"

#include "app/come_forward.h"
#include "core/store/backup.h"
#include "ui/models/speaker.h"
#include "ui/shell/file_drop.h"
#include "ui/shell/main_window.h"
#include "ui/shell/window_memory.h"

#include <QApplication>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>

#include <utility>

namespace padside {

WindowProgram::WindowProgram(QApplication& application, Dialogs dialogs)
    : m_dialogs(std::move(dialogs))
    , m_computerIsDark(QApplication::palette().color(QPalette::Window).lightness() < 128)
    , m_appearance(application)
    , m_preferences(readPreferences(QSettings()))
{
    applyPreferences();
}

WindowProgram::~WindowProgram() = default;

MainWindow* WindowProgram::window() const
{
    return m_open ? m_open->window.get() : nullptr;
}

void WindowProgram::showWindow(OpenFile& file)
{
    QSettings settings;
    if (window())
        rememberWindow(*window(), settings);
    auto made = std::make_unique<MainWindow>(*file.book, m_appearance.theme());
    made->installEventFilter(this);
    // Queued: these replace the window that asks.
    connect(made.get(), &MainWindow::openFileRequested, this, &WindowProgram::chooseFile, Qt::QueuedConnection);
    connect(made.get(), &MainWindow::sampleRequested, this, &WindowProgram::showSample, Qt::QueuedConnection);
    connect(made.get(), &MainWindow::backupRequested, this, &WindowProgram::backUp, Qt::QueuedConnection);
    connect(made.get(), &MainWindow::preferencesRequested, this, &WindowProgram::showPreferences, Qt::QueuedConnection);
    connect(
        made.get(), &MainWindow::catalogueChanged, this, [this] { choose(readPreferences(QSettings()), true); },
        Qt::QueuedConnection);
    connect(made.get(), &MainWindow::lookRequested, this, &WindowProgram::changeLook);
    connect(new FileDrop(*made, QStringLiteral(".padside")), &FileDrop::dropped, this, &WindowProgram::open,
            Qt::QueuedConnection);
    for (const Sentence& why : std::exchange(file.complaints, {}))
        Q_EMIT file.book->failed(said(why));
    restoreWindow(*made, settings);
    made->show();
    file.window = std::move(made); // one before it goes only now: without any window the program would end
}

void WindowProgram::bringForward()
{
    MainWindow& window = *m_open->window;
    window.setWindowState(window.windowState() & ~Qt::WindowMinimized);
    window.show();
    window.raise();
    window.activateWindow();
    QApplication::alert(&window); // where the desktop doesn't let windows come forward by themselves
}

bool WindowProgram::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Close && watched == window()) {
        QSettings settings;
        rememberWindow(*window(), settings);
    }
    return QObject::eventFilter(watched, event);
}

void WindowProgram::chooseFile()
{
    const QString folder = QFileInfo(window()->file()).absolutePath();
    const QString file = QFileDialog::getOpenFileName(window(), tr("Open a record file"), folder,
                                                      tr("Padside records (*.padside);;All files (*)"));
    if (!file.isEmpty())
        open(file);
}

void WindowProgram::backUp()
{
    const QString target
        = QFileDialog::getSaveFileName(window(), tr("Back up to a new file"), {}, tr("Padside records (*.padside)"));
    if (target.isEmpty())
        return;
    m_open->window->doLongWork(tr("Backup to %1").arg(QFileInfo(target).fileName()),
                               [source = m_open->store->path(), target](const LongWork::Tell& tell) {
                                   // A store belongs to one thread: the copy is made through another.
                                   const auto store = Store::open(source, Store::Access::readOnly);
                                   return backup(*store, target, tell);
                               });
}

void WindowProgram::tell(const QString& sentence)
{
    if (m_open)
        Q_EMIT m_open->book->failed(sentence);
    else
        m_dialogs.tell(sentence);
}

QString WindowProgram::said(const Sentence& sentence)
{
    return LocalSpeaker(QLocale(), usualUnits(QLocale())).said(sentence);
}

} // namespace padside
