// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/kept_forecasts.h"
#include "core/review/unit_forecast.h"
#include "tests/support/record_builder.h"
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
    const ZoneForecast* zone = outlook.of(kept.front().zoneId);
    ASSERT_NE(zone, nullptr);
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
        EXPECT_EQ(kept.front().chances.at(horizon), zone->spent[horizon].chance);
    EXPECT_EQ(kept.front().early, zone->early);
    EXPECT_EQ(kept.front().middle, zone->middle);
    EXPECT_EQ(kept.front().late, zone->late);
    EXPECT_EQ(kept.front().grade, Grade::worn);
    EXPECT_EQ(kept.front().on, day("2020-05-04"));
    EXPECT_EQ(kept.front().unitId, record.unit.id);
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
