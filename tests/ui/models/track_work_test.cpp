// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/own_catalogue.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/models/track_work.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

/// A file with one unit whose fan blade went through the grades; each closing foretold 30 % for the next half year.
class TrackWork : public testing::Test
{
protected:
    TrackWork()
    {
        RecordBuilder builder = aUnit("HB-01");
        builder.withPart("fan-blade", {"root"}, "2016-05-01");
        for (int year = 0; year < 4; ++year)
            builder.visit(std::to_string(2017 + year) + "-05-01").graded("root", 2 + year);
        const UnitRecord record = builder.build();
        const auto store = Store::create(m_path);
        store->sites().addSite(record.site);
        store->sites().addUnit(record.unit);
        for (const Part& part : record.parts)
            store->sites().addPart(part);
        for (const Visit& visit : record.visits) {
            Visit open = visit;
            open.closedAt.reset();
            store->visits().open(open);
            for (const Finding& finding : record.findings) {
                if (finding.visitId == visit.id)
                    store->visits().put(finding);
            }
            KeptForecast forecast;
            forecast.unitId = record.unit.id;
            forecast.visitId = visit.id;
            forecast.on = visit.on;
            forecast.zoneId = builder.zone("root");
            forecast.chances = {0.3, 0.5, 0.7, 0.9};
            store->visits().close(visit.id, *visit.closedAt, std::vector{forecast});
        }
    }

    [[nodiscard]] LookBack file() const { return {m_path, m_catalogue, day("2026-01-01")}; }
    static bool goOn(double) { return true; }

    QTemporaryDir m_folder;
    QString m_path = m_folder.filePath(QStringLiteral("track.padside"));
    Catalogue m_catalogue = smallCatalogue();
};

} // namespace

TEST_F(TrackWork, HoldsTheForecastsOfTheFileAgainstItsRecord)
{
    const auto track = gatherTrack(file(), &goOn);
    ASSERT_TRUE(track);
    EXPECT_EQ(track->all.forecasts, 3U) << "the last visit found it spent and foretold nothing";
    EXPECT_EQ(track->all.keptSince, day("2017-05-01"));
    EXPECT_EQ(track->all.horizons[1].settled, 3U);
    EXPECT_EQ(track->all.horizons[1].spent, 1U) << "within a year, only the one before the last";
    EXPECT_NEAR(track->all.horizons[1].brier, 0.25, 1e-12);
}

TEST_F(TrackWork, LearnsFromTheFileTheSameEachTime)
{
    const auto lessons = learnLives(file(), &goOn);
    ASSERT_TRUE(lessons);
    ASSERT_EQ(lessons->size(), 1U);
    EXPECT_EQ(lessons->front().partKind, "fan-blade");
    EXPECT_LT(lessons->front().learntLife.medianLife, lessons->front().prior.medianLife);
    const auto again = learnLives(file(), &goOn);
    EXPECT_EQ(lessons->front().learnt->medianLifeYears, again->front().learnt->medianLifeYears);
}

TEST_F(TrackWork, StopsWhenAskedTo)
{
    EXPECT_FALSE(gatherTrack(file(), [](double) { return false; }));
    EXPECT_FALSE(learnLives(file(), [](double) { return false; }));
    EXPECT_FALSE(learnLives(file(), [](double share) { return share < 0.2; })) << "while it learns";
}

TEST_F(TrackWork, AFileThatIsGoneIsSaid)
{
    EXPECT_THROW((void)gatherTrack({m_folder.filePath(QStringLiteral("gone")), m_catalogue, day("2026-01-01")}, &goOn),
                 StoreError);
}

} // namespace padside::test
