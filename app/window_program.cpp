// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/window_program.h"

#include "app/clock.h"
#include "app/commands/of_file.h"
#include "core/store/backup.h"
#include "ui/models/speaker.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QRandomGenerator>
#include <QSettings>
#include <QStandardPaths>

namespace padside {

namespace {

const QString lastFileKey = QStringLiteral("last-file");
const QString technicianKey = QStringLiteral("technician");

} // namespace

WindowProgram::WindowProgram(QApplication& application)
    : m_appearance(application)
{
    m_appearance.wear(rememberedLook());
}

WindowProgram::~WindowProgram() = default;

QString WindowProgram::usualFile()
{
    QString last = QSettings().value(lastFileKey).toString();
    if (!last.isEmpty() && QFileInfo::exists(last))
        return last;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    return QDir(folder).filePath(QStringLiteral("records.padside"));
}

bool WindowProgram::open(const QString& file)
{
    try {
        QDir().mkpath(QFileInfo(file).absolutePath());
        auto store = QFileInfo::exists(file) ? Store::open(file) : Store::create(file);
        std::vector<Sentence> complaints;
        Catalogue catalogue = catalogueFor(*store, [&](const Sentence& why) { complaints.push_back(why); });
        m_open.reset(); // the window first, then what it shows
        m_open = std::make_unique<OpenFile>(OpenFile{
            std::move(store), std::move(catalogue), IdMaker(&millisecondsNow, QRandomGenerator::system()->generate64()),
            nullptr, nullptr, std::move(complaints)});
    } catch (const StoreError& error) {
        const LocalSpeaker speaker(QLocale(), usualUnits(QLocale()));
        QMessageBox::warning(nullptr, QStringLiteral("Padside"), speaker.said(error.problem().what));
        return false;
    }
    const QLocale locale;
    m_open->book = std::make_unique<RecordBook>(
        *m_open->store, m_open->catalogue, m_open->ids,
        RecordBook::Surroundings{&now, locale, usualUnits(locale), QSettings().value(technicianKey).toString()});
    QSettings().setValue(lastFileKey, QFileInfo(file).absoluteFilePath());
    showWindow();
    return true;
}

void WindowProgram::showWindow()
{
    m_open->window = std::make_unique<MainWindow>(*m_open->book, m_appearance.theme());
    MainWindow& window = *m_open->window;
    // Queued: these replace the window that asks.
    connect(&window, &MainWindow::openFileRequested, this, &WindowProgram::chooseFile, Qt::QueuedConnection);
    connect(&window, &MainWindow::backupRequested, this, &WindowProgram::backUp, Qt::QueuedConnection);
    connect(&window, &MainWindow::lookRequested, this, [this](const Look& look) {
        m_appearance.wear(look);
        remember(look);
    });
    for (const Sentence& why : m_open->complaints)
        Q_EMIT m_open->book->failed(m_open->book->speaker().said(why));
    window.resize(1280, 800);
    window.show();
}

void WindowProgram::chooseFile()
{
    const QString file = QFileDialog::getOpenFileName(m_open->window.get(), tr("Open a record file"), {},
                                                      tr("Padside records (*.padside);;All files (*)"));
    if (!file.isEmpty())
        open(file);
}

void WindowProgram::backUp()
{
    const QString target = QFileDialog::getSaveFileName(m_open->window.get(), tr("Back up to a new file"), {},
                                                        tr("Padside records (*.padside)"));
    if (!target.isEmpty())
        m_open->book->attempt([&] { backup(*m_open->store, target); });
}

} // namespace padside
