// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/forecast_book.h"
#include "core/store/visit_book.h"
#include "resources/resources.h"
#include "sample-db/sample_lessons.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/reliability_plot_view.h"
#include "ui/drawing/theme.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_log.h"
#include "ui/pages/track/horizon_model.h"
#include "ui/pages/track/track_page.h"
#include "ui/pages/track/track_panel.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

#include <algorithm>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

class TrackPageTest : public WindowFixture
{
protected:
    TrackPageTest()
        : m_page(*m_book, Theme::light())
    {
        m_page.resize(1280, 760);
        m_page.show();
        m_page.refresh();
        waitForSummary();
    }

    void waitForSummary()
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return panel().summary() != nullptr; }, 30'000));
    }
    template <typename Widget> [[nodiscard]] Widget& part(const QString& name) const
    {
        return *m_page.findChild<Widget*>(name);
    }
    [[nodiscard]] TrackPanel& panel() const { return *m_page.findChild<TrackPanel*>(); }
    [[nodiscard]] QString verdict() const { return part<QLabel>(u"verdict"_s).text(); }

    TrackPage m_page;
};

} // namespace

TEST_F(TrackPageTest, TheVerdictOnTopIsThatOfTheRecord)
{
    EXPECT_EQ(verdict(), m_book->speaker().said(panel().summary()->verdict.sentence));
    EXPECT_FALSE(verdict().isEmpty());
    EXPECT_TRUE(
        part<QLabel>(u"since"_s).text().contains(m_book->speaker().shownDate(*panel().summary()->all.keptSince)));
    const Scores& halfYear = panel().summary()->all.horizons[0];
    EXPECT_GT(halfYear.settled, 0U) << "two years of visits";
    const auto* model = part<QTableView>(u"horizons"_s).model();
    EXPECT_EQ(model->index(0, HorizonModel::told).data().toString(), QString::number(halfYear.settled));
    EXPECT_EQ(model->index(3, HorizonModel::told).data().toString(), u"0"_s) << "five years are not over";
    EXPECT_EQ(model->index(3, HorizonModel::brier).data().toString(), u"–"_s);
}

TEST_F(TrackPageTest, WithoutLearnedLivesThereIsOneSetOfForecastsOnly)
{
    EXPECT_FALSE(part<QLabel>(u"beside"_s).isVisible());
    EXPECT_FALSE(part<QComboBox>(u"set"_s).isVisible());
}

TEST_F(TrackPageTest, WithLearnedLivesTheForecastsMadeWithThemAreToldApart)
{
    const Catalogue learned = Catalogue::load(shippedCatalogue(), lessonsPatch(*parseDate("2026-01-10"))).value();
    RecordBook book(*m_store, learned, m_ids, m_book->surroundings());
    TrackPage page(book, Theme::light());
    page.resize(1280, 760);
    page.show();
    const auto* panel = page.findChild<TrackPanel*>();
    ASSERT_TRUE(QTest::qWaitFor([panel] { return panel->summary() != nullptr; }, 30'000));
    const TrackSummary& track = *panel->summary();
    ASSERT_TRUE(track.learning);
    const auto* beside = page.findChild<QLabel*>(u"beside"_s);
    EXPECT_TRUE(beside->isVisible());
    EXPECT_TRUE(beside->text().contains(book.speaker().shownDate(*parseDate("2026-01-10"))))
        << qPrintable(beside->text());
    EXPECT_TRUE(beside->text().contains(book.speaker().said(track.learning->verdictBefore.sentence)));

    auto* set = page.findChild<QComboBox*>(u"set"_s);
    ASSERT_TRUE(set->isVisible());
    EXPECT_FALSE(set->accessibleName().isEmpty());
    const auto* table = page.findChild<QTableView*>(u"horizons"_s)->model();
    const auto waitingOf = [table] { return table->index(0, HorizonModel::waiting).data().toString(); };
    const auto told = [table] { return table->index(0, HorizonModel::told).data().toString(); };
    for (const ForecastSet which : {ForecastSet::all, ForecastSet::inUse, ForecastSet::before}) {
        set->setCurrentIndex(set->findData(static_cast<int>(which)));
        EXPECT_EQ(told(), QString::number(track.of(which).horizons[0].settled));
        EXPECT_EQ(waitingOf(), QString::number(track.of(which).horizons[0].waiting));
        EXPECT_EQ(page.findChild<QListWidget*>(u"misses"_s)->count(), static_cast<int>(track.of(which).misses.size()));
    }
    EXPECT_GT(track.of(ForecastSet::before).horizons[0].settled, 0U);
}

TEST_F(TrackPageTest, ThePlotShowsTheHorizonChosen)
{
    auto& horizon = part<QComboBox>(u"horizon"_s);
    horizon.setCurrentIndex(0);
    const auto& plot = part<ReliabilityPlotView>(u"plot"_s);
    int told = 0;
    for (const ReliabilityPoint& point : plot.plot().points)
        told += point.count;
    EXPECT_EQ(told, static_cast<int>(panel().summary()->all.horizons[0].settled));
    EXPECT_FALSE(plot.accessibleDescription().isEmpty());
    horizon.setCurrentIndex(3);
    EXPECT_TRUE(plot.plot().points.empty());
    EXPECT_EQ(plot.accessibleDescription(), u"None of these forecasts has been settled yet."_s);
}

TEST_F(TrackPageTest, AMissOpensItsUnit)
{
    // A zone said to be safe is found spent.
    const UnitId unit = units().front();
    VisitLog log(*m_book);
    ASSERT_TRUE(log.turnTo(startVisit(*m_book, unit, VisitReason::callOut)));
    const UnitRecord record = m_book->record(unit);
    const auto kept = m_store->forecasts().of(unit);
    const auto safe = std::ranges::find_if(kept, [&](const KeptForecast& one) {
        const Part* part = partOfZone(record, one.zoneId);
        return one.on == kept.back().on && one.grade == Grade::sound && one.chances[0] < 0.2 && part != nullptr
            && !part->removedOn;
    });
    ASSERT_NE(safe, kept.end());
    ASSERT_TRUE(log.see({safe->zoneId, Phase::asFound, {}}, Grade::spent));
    QSignalSpy again(&panel(), &TrackPanel::workedOut);
    ASSERT_TRUE(log.close());
    ASSERT_TRUE(again.count() > 0 || again.wait(30'000)) << "the page follows the record";
    const auto& misses = part<QListWidget>(u"misses"_s);
    ASSERT_GT(misses.count(), 0);
    QSignalSpy asked(&m_page, &TrackPage::unitRequested);
    Q_EMIT part<QListWidget>(u"misses"_s).itemActivated(misses.item(0));
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.front().front().value<UnitId>(), panel().summary()->all.misses.front().unitId);
}

TEST_F(TrackPageTest, TheModelKeepsTheRulesOfModels)
{
    const QAbstractItemModelTester tester(part<QTableView>(u"horizons"_s).model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    for (int column = 0; column < HorizonModel::columns; ++column) {
        const auto* model = part<QTableView>(u"horizons"_s).model();
        EXPECT_FALSE(model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().isEmpty());
        EXPECT_FALSE(model->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString().isEmpty());
    }
}

TEST_F(TrackPageTest, ThePlotIsPaintedInEveryTheme)
{
    part<QComboBox>(u"horizon"_s).setCurrentIndex(0);
    const ReliabilityPlot& plot = part<ReliabilityPlotView>(u"plot"_s).plot();
    ASSERT_FALSE(plot.points.empty());
    for (const auto kind : {ThemeKind::light, ThemeKind::dark, ThemeKind::sunlight}) {
        const Theme& theme = Theme::of(kind);
        QImage image(400, 400, QImage::Format_RGB32);
        image.fill(theme.panel);
        QPainter painter(&image);
        paintReliabilityPlot(painter, QRectF(image.rect()), plot, theme);
        painter.end();
        int dots = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x)
                dots += image.pixelColor(x, y) == theme.accent ? 1 : 0;
        }
        EXPECT_GT(dots, 20) << "the dots, in the theme's colour";
    }
}

TEST(TrackPageOfAnEmptyFile, SaysWhenThereWillBeSomething)
{
    QTemporaryDir folder;
    const auto store = Store::create(folder.filePath(u"empty.padside"_s));
    const Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
    IdMaker ids([] { return std::int64_t{1'795'600'000'000}; }, 7);
    RecordBook book(*store, catalogue, ids,
                    {[] {
                         return Instant{*parseDate("2026-11-25"), {}};
                     },
                     QLocale::c(),
                     UnitSystem::metric,
                     {}});
    TrackPage page(book, Theme::light());
    page.resize(1280, 760);
    page.show();
    const auto* panel = page.findChild<TrackPanel*>();
    ASSERT_TRUE(QTest::qWaitFor([panel] { return panel->summary() != nullptr; }, 30'000));
    EXPECT_EQ(page.findChild<QLabel*>(u"verdict"_s)->text(),
              u"No forecasts are kept yet: from now on they are, each time a visit is closed."_s);
    EXPECT_TRUE(page.findChild<QLabel*>(u"since"_s)->text().contains(u"half a year after the first closing"_s));
    EXPECT_FALSE(page.findChild<QTableView*>(u"horizons"_s)->isVisible());
}

} // namespace padside::test
