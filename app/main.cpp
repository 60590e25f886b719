// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/clock.h"
#include "app/command_line.h"
#include "app/version.h"
#include "app/window_program.h"
#include "resources/resources.h"

#include <QApplication>
#include <QIcon>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <iostream>
#include <memory>
#include <unistd.h>

namespace {

/// A command needs fonts and image formats but no window: the offscreen platform works without a display.
std::unique_ptr<QGuiApplication> startedWithoutDisplay(int& argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    return std::make_unique<QGuiApplication>(argc, argv);
}

bool displayIsThere()
{
#ifdef Q_OS_LINUX
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY")
        || qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
#else
    return true;
#endif
}

/// Qt's own words (in its file dialog, say) in the person's language.
void installWordsOfQt()
{
    static QTranslator translator;
    if (translator.load(QLocale(), QStringLiteral("qtbase"), QStringLiteral("_"),
                        QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(&translator);
}

int openWindow(int& argc, char** argv, const std::string& file)
{
    if (!displayIsThere()) {
        std::cerr << "padside: there is no display, so the window can't be opened. The commands work without one: "
                     "padside --help\n";
        return padside::exitWrongUse;
    }
    QApplication application(argc, argv);
    QGuiApplication::setDesktopFileName(QStringLiteral("org.padside.Padside"));
    QGuiApplication::setWindowIcon(QIcon(QString::fromStdString(padside::iconPath())));
    installWordsOfQt();
    padside::WindowProgram program(application);
    switch (file.empty() ? program.openUsual() : program.open(QString::fromLocal8Bit(file))) {
    case padside::WindowProgram::Opened::here:
        return QApplication::exec();
    case padside::WindowProgram::Opened::elsewhere:
        std::cerr << "padside: the file is open in another window, which was asked to come forward.\n";
        return padside::exitDone;
    case padside::WindowProgram::Opened::notAtAll:
        break;
    }
    return padside::exitFileTrouble;
}

} // namespace

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("padside"));
    QCoreApplication::setApplicationName(QStringLiteral("padside"));
    QCoreApplication::setApplicationVersion(QString::fromLatin1(padside::programVersion));

    const std::vector<std::string> arguments(argv + 1, argv + argc);
    std::unique_ptr<QGuiApplication> behindCommand; // ends before main does, and with it Qt's threads
    const padside::CommandSurroundings surroundings{std::cout, std::cerr, &padside::now,
                                                    [&] { behindCommand = startedWithoutDisplay(argc, argv); },
                                                    ::isatty(STDERR_FILENO) == 1};
    const padside::CommandOutcome outcome = padside::runCommandLine(arguments, surroundings);
    if (!outcome.window)
        return outcome.exitCode;
    return openWindow(argc, argv, outcome.window->file);
}
