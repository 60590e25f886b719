// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/kept_forecasts.h"
#include "core/review/unit_forecast.h"
#include "resources/resources.h"
#include "tests/core/review/gauged_unit.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace padside::test {

namespace {

class KeptForecasts : public testing::Test
{
protected:
    [[nodiscard]] std::vector<KeptForecast> keptAt(const UnitRecord& record, std::size_t visit) const
    {
        return keptForecasts(record, m_catalogue, m_model, record.visits[visit].id);
    }

    Catalogue m_catalogue = smallCatalogue();
    OutlookModel m_model{m_catalogue};
};

RecordBuilder bladeSince2018()
{
    RecordBuilder unit = aUnit("HB-01");
    unit.withPart("fan-blade", {"root"}, "2018-05-01");
    unit.visit("2020-05-04").graded("root", 2);
    return unit;
}

} // namespace

TEST_F(KeptForecasts, SayWhatTheOutlookOfThatDaySays)
{
    const UnitRecord record = bladeSince2018().build();
    const auto kept = keptAt(record, 0);
    const UnitForecast outlook = unitForecast(record, m_catalogue, m_model, day("2020-05-04"));
    ASSERT_EQ(kept.size(), 1U);
    const LeadingOutlook* zone = outlook.leadingOf(kept.front().zoneId);
    ASSERT_NE(zone, nullptr);
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
        EXPECT_EQ(kept.front().chances.at(horizon), zone->spent[horizon].chance);
    EXPECT_EQ(kept.front().dates, zone->dates);
    EXPECT_EQ(kept.front().grade, Grade::worn);
    EXPECT_EQ(kept.front().on, day("2020-05-04"));
    EXPECT_EQ(kept.front().unitId, record.unit.id);
}

TEST_F(KeptForecasts, SayWhatWasMeasuredWhereThatLeads)
{
    const Catalogue catalogue = *Catalogue::load(shippedCatalogue());
    const UnitRecord record = gaugedUnit({3.0, 2.8, 2.6, 2.4});
    const OutlookModel model(catalogue);
    const auto kept = keptForecasts(record, catalogue, model, record.visits.back().id);
    const UnitForecast outlook = unitForecast(record, catalogue, model, record.visits.back().on);
    const auto bottom = std::ranges::find(kept, record.parts.front().zones[1].id, &KeptForecast::zoneId);
    ASSERT_NE(bottom, kept.end());
    const LeadingOutlook& leads = *outlook.leadingOf(bottom->zoneId);
    EXPECT_EQ(leads.by, OutlookBy::wall);
    EXPECT_EQ(bottom->dates, leads.dates);
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
        EXPECT_EQ(bottom->chances.at(horizon), leads.spent[horizon].chance);
    EXPECT_GT(bottom->chances[1], outlook.of(bottom->zoneId)->spent[1].chance);
}

TEST_F(KeptForecasts, KnowNothingOfWhatCameLater)
{
    RecordBuilder unit = bladeSince2018();
    const auto before = keptAt(unit.build(), 0);
    unit.visit("2021-05-04").graded("root", 5);
    unit.replacedPart("fan-blade", "2021-05-04");
    EXPECT_EQ(keptAt(unit.build(), 0), before);
    EXPECT_NE(keptAt(unit.build(), 1).front().zoneId, before.front().zoneId) << "the blade fitted that day";
}

TEST_F(KeptForecasts, AreMadeWhileTheVisitIsStillOpen)
{
    RecordBuilder open = bladeSince2018();
    open.visit("2021-05-04", VisitReason::spring, false).graded("root", 4);
    const auto kept = keptAt(open.build(), 1);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept.front().grade, Grade::poor);
}

TEST_F(KeptForecasts, AreNotMadeOfAVisitThatIsNotThereNorOfARetiredUnit)
{
    UnitRecord record = bladeSince2018().build();
    EXPECT_TRUE(keptForecasts(record, m_catalogue, m_model, VisitId()).empty());
    record.unit.retiredOn = day("2020-05-04");
    EXPECT_TRUE(keptAt(record, 0).empty());
}

} // namespace padside::test
