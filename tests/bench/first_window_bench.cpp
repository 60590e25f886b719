// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// How long a person waits for the first painted window, from the start of the process: Padside on its sample beside a
// window of Qt's with a menu bar and a label, of the same size, on the same platform. Padside's first frame holds the
// menus and the list of all units; the page of the unit chosen follows, and is told, too. The program starts itself
// again for each round; a round ends when what is waited for has painted itself.

#include "app/commands/of_file.h"
#include "app/window_program.h"
#include "core/store/store.h"
#include "sample-db/sample.h"
#include "ui/drawing/cutaway_view.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QLabel>
#include <QMenuBar>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>
#include <benchmark/benchmark.h>
#include <cstdio>
#include <cstdlib>
#include <vector>

using namespace Qt::Literals::StringLiterals;

namespace padside::bench {

namespace {

// What the program is started again for.
constexpr auto plainMode = "--plain-window"_L1;
constexpr auto windowMode = "--padside-window"_L1;
constexpr auto pageMode = "--padside-page"_L1;

/// Ends the process, without farewells, once the widget it watches has painted itself.
class EndAtFirstFrame : public QObject
{
public:
    explicit EndAtFirstFrame(QWidget& watched) { watched.installEventFilter(this); }

    bool eventFilter(QObject*, QEvent* event) override
    {
        if (event->type() == QEvent::Paint)
            QTimer::singleShot(0, [] { std::_Exit(0); }); // after this frame is through
        return false;
    }
};

/// A window of Qt's that says something, as every window does: a bare one would not even look for fonts.
int showPlainWindow(int argc, char** argv)
{
    QApplication application(argc, argv);
    QMainWindow window;
    window.menuBar()->addMenu(u"&File"_s)->addAction(u"&Quit"_s);
    window.setCentralWidget(new QLabel(u"An empty window"_s));
    window.resize(1280, 800);
    const EndAtFirstFrame end(window);
    window.show();
    return QApplication::exec();
}

int showPadside(int argc, char** argv, const QString& mode, const QString& file)
{
    QApplication application(argc, argv);
    WindowProgram program(application);
    if (program.open(file) != WindowProgram::Opened::here)
        return 1;
    const EndAtFirstFrame end(mode == pageMode ? *program.window()->findChild<CutawayView*>()
                                               : static_cast<QWidget&>(*program.window()));
    return QApplication::exec();
}

double secondsOfStart(const QStringList& arguments)
{
    QElapsedTimer timer;
    timer.start();
    if (QProcess::execute(QCoreApplication::applicationFilePath(), arguments) != 0)
        std::abort(); // a start that failed is no figure
    return 1e-9 * static_cast<double>(timer.nsecsElapsed());
}

void startAgainAndAgain(const char* name, const QStringList& arguments, std::vector<double>& seconds)
{
    benchmark::RegisterBenchmark(name,
                                 [&seconds, arguments](benchmark::State& state) {
                                     for (auto turn : state) {
                                         seconds.push_back(secondsOfStart(arguments));
                                         state.SetIterationTime(seconds.back());
                                     }
                                 })
        ->UseManualTime()
        ->Iterations(7)
        ->Unit(benchmark::kMillisecond);
}

double middle(std::vector<double> seconds)
{
    std::ranges::sort(seconds);
    return seconds.at(seconds.size() / 2);
}

int compare(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    const QTemporaryDir folder;
    const QString file = folder.filePath(u"sample.padside"_s);
    {
        const auto store = Store::create(file);
        buildSample(*store, catalogueFor(*store, [](const Sentence&) {}), SampleOptions{}, {});
    }
    qputenv("XDG_CONFIG_HOME", folder.path().toUtf8()); // no window of the person's is remembered here
    std::vector<double> plain;
    std::vector<double> window;
    std::vector<double> page;
    startAgainAndAgain("first_window/plain", {plainMode}, plain);
    startAgainAndAgain("first_window/padside_with_sample", {windowMode, file}, window);
    startAgainAndAgain("first_window/padside_with_page_of_unit", {pageMode, file}, page);
    benchmark::RunSpecifiedBenchmarks();
    if (plain.empty() || window.empty() || page.empty())
        return 0; // a filter left one out
    const double ratio = middle(window) / middle(plain);
    std::printf(
        "\nfirst window with the sample: %.0f ms (aim 500 or less), with the unit's page in it: %.0f ms; plain Qt "
        "window (menu bar and label) %.0f ms, ratio %.2f (aim 2.5 or less)%s\n",
        middle(window) * 1e3, middle(page) * 1e3, middle(plain) * 1e3, ratio, ratio <= 2.5 ? "" : "  MISSED");
    return 0;
}

} // namespace

} // namespace padside::bench

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(u"padside-bench"_s);
    QCoreApplication::setApplicationName(u"padside-bench"_s);
    const QString mode = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString();
    if (mode == padside::bench::plainMode)
        return padside::bench::showPlainWindow(argc, argv);
    if ((mode == padside::bench::windowMode || mode == padside::bench::pageMode) && argc > 2)
        return padside::bench::showPadside(argc, argv, mode, QString::fromLocal8Bit(argv[2]));
    return padside::bench::compare(argc, argv);
}
