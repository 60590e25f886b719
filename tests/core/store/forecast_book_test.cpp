// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/connection.h"
#include "core/store/forecast_book.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/core/store/store_fixture.h"

namespace padside::test {

namespace {

class ForecastBookTest : public StoreTest
{
protected:
    ForecastBookTest() { writeRecord(*m_store, m_record); }

    [[nodiscard]] KeptForecast foretold(std::size_t zone) const
    {
        const Visit& visit = m_record.visits[0];
        KeptForecast forecast;
        forecast.unitId = m_record.unit.id;
        forecast.visitId = visit.id;
        forecast.on = visit.on;
        forecast.zoneId = m_record.parts[0].zones[zone].id;
        forecast.grade = Grade::marked;
        forecast.chances = {0.01, 0.1 + 0.2, 0.55, 0.999};
        forecast.dates.early = day("2025-01-01");
        forecast.dates.middle = day("2026-02-03");
        return forecast;
    }

    UnitRecord m_record = aUnit("HB-01")
                              .withPart("contactor", {"points", "coil"})
                              .visit("2024-02-29", VisitReason::spring, false)
                              .graded("points", 3)
                              .build();
    Instant m_evening{day("2024-02-29") + std::chrono::hours(17), std::chrono::minutes(0)};
};

} // namespace

TEST_F(ForecastBookTest, WhatWasForetoldAtTheClosingIsKeptAsItWasSaid)
{
    KeptForecast unseen = foretold(1);
    unseen.grade.reset();
    unseen.dates.early.reset();
    unseen.dates.middle.reset();
    const std::vector forecasts{foretold(0), unseen};
    m_store->visits().close(m_record.visits[0].id, m_evening, forecasts);
    reopen();
    EXPECT_EQ(m_store->forecasts().of(m_record.unit.id), forecasts);
    std::vector<KeptForecast> all;
    m_store->forecasts().all([&](const KeptForecast& forecast) { all.push_back(forecast); });
    EXPECT_EQ(all, forecasts);
    EXPECT_TRUE(verify(*m_store).clean());
}

TEST_F(ForecastBookTest, AForecastThatCantBeKeptLeavesTheVisitOpen)
{
    KeptForecast impossible = foretold(0);
    impossible.chances[2] = 1.5;
    (void)refusalOf([&] { m_store->visits().close(m_record.visits[0].id, m_evening, std::vector{impossible}); });
    EXPECT_TRUE(m_store->visits().visit(m_record.visits[0].id)->isOpen());
    EXPECT_TRUE(m_store->forecasts().of(m_record.unit.id).empty());
}

TEST_F(ForecastBookTest, NobodyCanForetellAfterwardsOrChangeWhatWasForetold)
{
    m_store->visits().close(m_record.visits[0].id, m_evening, std::vector{foretold(0)});
    Connection& file = m_store->connection();
    (void)refusalOf([&] { file.run("UPDATE forecast SET one_year = 0"); });
    (void)refusalOf([&] { file.run("DELETE FROM forecast"); });
    (void)refusalOf([&] {
        file.run(
            "INSERT INTO forecast SELECT unit_id, visited_on, visit_id, (SELECT id FROM zone WHERE kind = 'coil'), "
            "grade, half_year, one_year, two_years, five_years, early, middle, late FROM forecast");
    });
    EXPECT_EQ(m_store->forecasts().of(m_record.unit.id), std::vector{foretold(0)});
}

} // namespace padside::test
