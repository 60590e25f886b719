// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/clock.h"
#include "app/command_line.h"
#include "app/version.h"
#include "app/window_program.h"

#include <QApplication>
#include <QGuiApplication>

#include <iostream>

namespace {

/// A command needs fonts and image formats but no window: the offscreen platform works without a display.
void startWithoutDisplay(int& argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static const QGuiApplication application(argc, argv);
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

int openWindow(int& argc, char** argv, const std::string& file)
{
    if (!displayIsThere()) {
        std::cerr << "padside: there is no display, so the window can't be opened. The commands work without one: "
                     "padside --help\n";
        return padside::exitWrongUse;
    }
    QApplication application(argc, argv);
    padside::WindowProgram program(application);
    if (!program.open(file.empty() ? padside::WindowProgram::usualFile() : QString::fromLocal8Bit(file)))
        return padside::exitFileTrouble;
    return QApplication::exec();
}

} // namespace

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("padside"));
    QCoreApplication::setApplicationName(QStringLiteral("padside"));
    QCoreApplication::setApplicationVersion(QString::fromLatin1(padside::programVersion));

    const std::vector<std::string> arguments(argv + 1, argv + argc);
    const padside::CommandSurroundings surroundings{std::cout, std::cerr, &padside::now,
                                                    [&argc, argv] { startWithoutDisplay(argc, argv); }};
    const padside::CommandOutcome outcome = padside::runCommandLine(arguments, surroundings);
    if (!outcome.window)
        return outcome.exitCode;
    return openWindow(argc, argv, outcome.window->file);
}
