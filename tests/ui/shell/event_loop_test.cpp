// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/backup.h"
#include "core/store/photo_files.h"
#include "core/store/record_reader.h"
#include "core/store/visit_book.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/visit_log.h"
#include "ui/pages/paper/page_preview.h"
#include "ui/pages/paper/paper_work.h"
#include "ui/pages/paper/print_page.h"
#include "ui/pages/track/rates_panel.h"
#include "ui/pages/track/track_panel.h"
#include "ui/shell/main_window.h"

#include <QAbstractEventDispatcher>
#include <QBuffer>
#include <QEventLoop>
#include <QFileInfo>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

#include <algorithm>
#include <atomic>
#include <ctime>
#include <functional>
#include <iostream>

namespace padside::test {

namespace {

/// The longest the window may go without answering, on a machine that does formOfManyLines() in formTime.
constexpr double longestPause = 50; // ms
constexpr double formTime = 10; // ms; the machine the limit was set on takes 7 to 8, idle

/// Speed is judged where the program is built as people get it.
#ifdef NDEBUG
constexpr bool judged = true;
#else
constexpr bool judged = false;
#endif

/// Processor time this thread has used, in ms: unlike the clock on the wall it does not count what other programs do.
double threadTime()
{
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return 1e3 * static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_nsec);
}

/// Work as a window does it, always the same: what this machine needs for it now says what may be asked of it now. A
/// core shared with other programs takes twice as long for the same.
double formOfManyLines()
{
    const double began = threadTime();
    QWidget form;
    auto* lines = new QFormLayout(&form);
    for (int line = 0; line < 100; ++line)
        lines->addRow(QStringLiteral("Line %1 of the form").arg(line), new QLineEdit(QString::number(line)));
    form.grab();
    return threadTime() - began;
}

/// How long the window did not answer, and what this machine needed for the form just before or after: the longer one.
struct Stretch
{
    double longest; ///< ms
    double form; ///< ms
};

/// The longest the event loop works between two waits for the person, while `action` and all that follows from it is
/// done.
Stretch longestStretch(const std::function<void()>& action, const std::function<bool()>& over = {})
{
    const double before = formOfManyLines();
    QEventLoop loop;
    QAbstractEventDispatcher* dispatcher = QAbstractEventDispatcher::instance();
    double began = threadTime();
    double longest = 0;
    QObject context;
    const auto turn = [&] {
        const double now = threadTime();
        longest = std::max(longest, now - began);
        began = now;
    };
    // Dispatchers differ in when they say which; the time between two such signals is one turn of the loop (waiting
    // uses no processor time).
    QObject::connect(dispatcher, &QAbstractEventDispatcher::awake, &context, turn);
    QObject::connect(dispatcher, &QAbstractEventDispatcher::aboutToBlock, &context, turn);
    QTimer::singleShot(0, &context, action);
    QTimer watch;
    int quiet = 0;
    QObject::connect(&watch, &QTimer::timeout, &context, [&] {
        if (!over || over())
            ++quiet;
        if (quiet == 5)
            loop.quit();
    });
    watch.start(20);
    loop.exec();
    return {longest, std::max(before, formOfManyLines())};
}

void judge(const char* what, const Stretch& stretch)
{
    std::cout << what << ": the window paused for " << stretch.longest << " ms at most, the form took " << stretch.form
              << " ms\n";
    const double allowed = longestPause * std::max(1.0, stretch.form / formTime);
    EXPECT_TRUE(!judged || stretch.longest <= allowed) << what << ": " << stretch.longest << " ms";
}

} // namespace

/// What a person does, on a real window; each may keep it from answering for 50 ms of processor time at most.
class EventLoopTest : public WindowFixture
{
protected:
    EventLoopTest()
        : m_window(*m_book, Theme::light())
    {
        formOfManyLines(); // the first takes longer: fonts are read
        m_window.resize(1280, 800);
        longestStretch([this] { m_window.show(); });
    }

    /// As a telephone takes them: 12 million points each.
    void photographEveryZone(UnitId unit, VisitId visit)
    {
        QImage image(4000, 3000, QImage::Format_RGB32);
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x)
                image.setPixel(x, y, qRgb(x % 251, y % 241, (x + y) % 239));
        }
        QByteArray jpeg;
        QBuffer buffer(&jpeg);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, "JPEG", 80);
        const auto kept = m_store->photos().keep(jpeg, "image/jpeg");
        const UnitRecord record = m_store->records().unitRecord(unit);
        for (const Part& part : record.parts) {
            for (const Zone& zone : part.zones) {
                Photo photo;
                photo.id = m_ids.make<PhotoId>();
                photo.visitId = visit;
                photo.unitId = unit;
                photo.on = findVisit(record, visit)->on;
                photo.zoneId = zone.id;
                photo.sha256 = kept.sha256;
                photo.bytes = kept.bytes;
                photo.mediaType = "image/jpeg";
                photo.width = image.width();
                photo.height = image.height();
                m_store->visits().put(photo);
            }
        }
    }

    MainWindow m_window;
};

TEST_F(EventLoopTest, TheWindowAnswersWhileUnitsAreLookedAt)
{
    for (const UnitId& unit : units())
        judge("showing a unit", longestStretch([&] { m_window.showUnit(unit); }));
}

TEST_F(EventLoopTest, TheWindowAnswersWhileAVisitBeginsAndItsSummaryIsShown)
{
    const UnitId unit = units().front();
    judge("starting a visit", longestStretch([&] { m_window.startVisit(unit, VisitReason::spring); }));
    const VisitId visit = m_store->visits().openVisitOf(unit).value().id;
    judge("showing the visit summary", longestStretch([&] { m_window.showSummary(unit, visit); }));
}

TEST_F(EventLoopTest, TheWindowAnswersWhileASummaryOfManyLargePhotographsIsShownAndExported)
{
    const UnitId unit = units().front();
    m_window.startVisit(unit, VisitReason::spring);
    const VisitId visit = m_store->visits().openVisitOf(unit).value().id;
    photographEveryZone(unit, visit);
    const auto preview = [this] { return m_window.findChild<PrintPage*>()->findChild<PagePreview*>(); };
    judge("showing many photographs",
          longestStretch([&] { m_window.showSummary(unit, visit); }, [&] { return preview()->isComplete(); }));
    auto* page = m_window.findChild<PrintPage*>();

    const QString path = m_folder.filePath(QStringLiteral("summary.pdf"));
    page->setFileChooser([&](const QString&) { return path; });
    judge("exporting many photographs",
          longestStretch([&] { page->findChild<QPushButton*>(QStringLiteral("exportPdf"))->click(); },
                         [&] { return !page->findChild<PaperWork*>()->isRunning(); }));
    EXPECT_TRUE(QFileInfo::exists(path));
}

TEST_F(EventLoopTest, TheWindowAnswersWhileTheSeasonIsWorkedOut)
{
    const auto* fleet = m_window.findChild<FleetReviewer*>();
    judge("showing the season", longestStretch([&] { m_window.showSeason(); }, [&] { return !fleet->isRunning(); }));
}

TEST_F(EventLoopTest, TheWindowAnswersWhileAVisitIsClosedAndItsForecastsAreKept)
{
    const UnitId unit = units().front();
    m_window.startVisit(unit, VisitReason::fall); // a visit is closed on its own page
    VisitLog log(*m_book);
    ASSERT_TRUE(log.turnTo(m_store->visits().openVisitOf(unit).value().id));
    judge("closing a visit", longestStretch([&] { EXPECT_TRUE(log.close()); }));
}

TEST_F(EventLoopTest, TheWindowAnswersWhileOldForecastsAreHeldAgainstTheRecordAndRatesAreLearned)
{
    const auto panel = [this] { return m_window.findChild<TrackPanel*>(); };
    judge("showing the track record",
          longestStretch([&] { m_window.showTrack(); }, [&] { return panel()->summary() != nullptr; }));
    m_window.showTrack(true);
    bool learnt = false;
    const auto* rates = m_window.findChild<RatesPanel*>();
    QObject::connect(rates, &RatesPanel::learnt, rates, [&learnt] { learnt = true; });
    judge("learning rates",
          longestStretch([&] { rates->findChild<QPushButton*>(QStringLiteral("learn"))->click(); },
                         [&] { return learnt; }));
}

TEST_F(EventLoopTest, TheWindowAnswersWhileABackupGoesOn)
{
    std::atomic<bool> ended = false;
    judge("backing up",
          longestStretch(
              [&] {
                  m_window.doLongWork(QStringLiteral("Backup"), [&](const LongWork::Tell& tell) {
                      const auto store = Store::open(m_store->path(), Store::Access::readOnly);
                      const bool done = backup(*store, m_folder.filePath(QStringLiteral("spare.padside")), tell);
                      ended = true;
                      return done;
                  });
              },
              [&] { return ended.load(); }));
}

} // namespace padside::test
