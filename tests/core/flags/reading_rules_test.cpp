// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/raise_flags.h"
#include "resources/resources.h"
#include "tests/support/record_builder.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace padside::test {

using ::testing::HasSubstr;

namespace {

/// Flags about what was measured, with the shipped catalogue.
class ReadingRules : public ::testing::Test
{
protected:
    ReadingRules()
        : m_catalogue(*Catalogue::load(shippedCatalogue()))
    {
    }

    [[nodiscard]] std::vector<Flag> flags(const UnitRecord& record, const std::string& today = "2026-11-01") const
    {
        return raiseFlags(record, m_catalogue, day(today), zoneHistories(record), {});
    }

    [[nodiscard]] std::vector<Flag> flagsBy(const std::string& rule, const UnitRecord& record,
                                            const std::string& today = "2026-11-01") const
    {
        std::vector<Flag> found;
        std::ranges::copy_if(flags(record, today), std::back_inserter(found),
                             [&](const Flag& flag) { return flag.rule == rule; });
        return found;
    }

    /// A unit whose capacitor (label 45 µF) was measured once a year from 2020 on.
    [[nodiscard]] static UnitRecord capacitors(const std::vector<double>& microfarads)
    {
        RecordBuilder unit = aUnit("HB-01");
        unit.withPart("run-capacitor", {"body"});
        int year = 2020;
        for (const double one : microfarads)
            unit.visit(std::to_string(year++) + "-05-04")
                .read("capacitor-compressor", one * 1e-6, QuantityKind::capacitance, "uF");
        UnitRecord record = unit.build();
        record.unit.nameplate.push_back({"capacitor-compressor", *parseMeasure("45 uF", QuantityKind::capacitance)});
        for (Reading& reading : record.readings)
            reading.partId = record.parts.front().id;
        return record;
    }

    /// Wall or rust of the accumulator's bottom, once a year from 2020 on.
    [[nodiscard]] static UnitRecord bottoms(const std::string& kind, const std::vector<double>& si,
                                            QuantityKind quantity, const std::string& unitCode)
    {
        RecordBuilder unit = aUnit("HB-01");
        unit.withPart("suction-accumulator", {"bottom"});
        int year = 2020;
        for (const double one : si)
            unit.visit(std::to_string(year++) + "-10-04", VisitReason::fall)
                .graded("bottom", 2)
                .read(kind, one, quantity, unitCode);
        UnitRecord record = unit.build();
        record.unit.nameplate.push_back({"minimum-wall", *parseMeasure("2 mm", QuantityKind::length)});
        for (Reading& reading : record.readings) {
            reading.partId = record.parts.front().id;
            reading.zoneId = record.parts.front().zones.front().id;
        }
        return record;
    }

    Catalogue m_catalogue;
};

} // namespace

TEST_F(ReadingRules, AReadingOutsideItsLimitIsFlaggedWithItsEvidence)
{
    const UnitRecord record = capacitors({44, 39});
    const auto raised = flagsBy("reading-outside", record);
    ASSERT_EQ(raised.size(), 1U);
    EXPECT_EQ(raised[0].severity, Severity::plan);
    EXPECT_EQ(raised[0].partId, record.parts.front().id);
    EXPECT_EQ(raised[0].readings, std::vector{record.readings.back().id});
    EXPECT_THAT(say(raised[0].sentence), HasSubstr("39.0 µF"));
}

TEST_F(ReadingRules, MeasuredAgainInsideItClears)
{
    EXPECT_TRUE(flagsBy("reading-outside", capacitors({39, 44.5})).empty());
}

TEST_F(ReadingRules, WhatWasLeftCountsNotWhatWasFound)
{
    UnitRecord record = capacitors({44, 39});
    Reading left = record.readings.back();
    left.id = ReadingId(UuidBytes{77});
    left.phase = Phase::asLeft;
    left.value.si = 45e-6;
    record.readings.push_back(left);
    EXPECT_TRUE(flagsBy("reading-outside", record).empty());
}

TEST_F(ReadingRules, ACapacitorThatWillLeaveItsLimitWithinAYearDrifts)
{
    // 45, 44.4, 43.8, 43.2, 42.6: 0.6 a year; 42.3 (6 % under the label) is half a year ahead of May 2024.
    const auto raised = flagsBy("reading-drifting", capacitors({45, 44.4, 43.8, 43.2, 42.6}), "2024-06-01");
    ASSERT_EQ(raised.size(), 1U);
    EXPECT_THAT(say(raised[0].sentence), HasSubstr("about 2024-11"));
    EXPECT_TRUE(flagsBy("reading-drifting", capacitors({45, 44.9, 44.8, 44.7, 44.6}), "2024-06-01").empty())
        << "23 years ahead";
    EXPECT_TRUE(flagsBy("reading-drifting", capacitors({45, 43.8, 42.6}), "2022-06-01").empty())
        << "three readings are no trend";
}

TEST_F(ReadingRules, AColdCrankcaseHeaterIsFlagged)
{
    RecordBuilder unit = aUnit("HB-01");
    unit.withPart("compressor", {"shell"});
    unit.visit("2025-10-04", VisitReason::fall);
    unit.read("outdoor-dry-bulb", 278.15, QuantityKind::temperature, "degC");
    unit.read("shell-temperature", 279.15, QuantityKind::temperature, "degC");
    const auto raised = flagsBy("crankcase-heater-cold", unit.build());
    ASSERT_EQ(raised.size(), 1U) << "hermetic compressor service handbook: at least 10 °F";
    EXPECT_EQ(raised[0].readings.size(), 2U);
    EXPECT_TRUE(flagsBy("reading-outside", unit.build()).empty()) << "told once";
}

TEST_F(ReadingRules, AWallAtItsMinimumIsToBeActedUpon)
{
    const auto raised
        = flagsBy("wall-near-minimum", bottoms("wall-thickness", {3e-3, 1.9e-3}, QuantityKind::length, "mm"));
    ASSERT_EQ(raised.size(), 1U);
    EXPECT_EQ(raised[0].severity, Severity::act);
    EXPECT_EQ(raised[0].readings.size(), 2U);
}

TEST_F(ReadingRules, AWallWithFewYearsLeftIsPlannedFor)
{
    const auto raised
        = flagsBy("wall-near-minimum", bottoms("wall-thickness", {3e-3, 2.5e-3}, QuantityKind::length, "mm"));
    ASSERT_EQ(raised.size(), 1U);
    EXPECT_EQ(raised[0].severity, Severity::plan);
    EXPECT_THAT(say(raised[0].sentence), HasSubstr("1.0 years"));
    EXPECT_TRUE(
        flagsBy("wall-near-minimum", bottoms("wall-thickness", {3e-3, 2.95e-3}, QuantityKind::length, "mm")).empty());
}

TEST_F(ReadingRules, AGrowingRustedShareIsFlagged)
{
    EXPECT_EQ(flagsBy("rust-growing", bottoms("rust-share", {0.01, 0.03}, QuantityKind::ratio, "pct")).size(), 1U);
    EXPECT_TRUE(flagsBy("rust-growing", bottoms("rust-share", {0.01, 0.012}, QuantityKind::ratio, "pct")).empty());
    EXPECT_TRUE(flagsBy("rust-growing", bottoms("rust-share", {0.05}, QuantityKind::ratio, "pct")).empty());
}

TEST_F(ReadingRules, WetAndBareIsFlaggedUntilItIsDryOrCoated)
{
    RecordBuilder unit = aUnit("HB-01");
    unit.withPart("suction-accumulator", {"bottom"});
    unit.visit("2025-05-04").graded("bottom", 3).wet(Wetness::wet);
    EXPECT_EQ(flagsBy("wet-and-bare", unit.build()).size(), 1U);
    RecordBuilder coated = unit;
    coated.treated("bottom", TreatmentKind::brushAndCoat);
    EXPECT_TRUE(flagsBy("wet-and-bare", coated.build()).empty());
    unit.visit("2025-10-04", VisitReason::fall).graded("bottom", 3).wet(Wetness::dry);
    EXPECT_TRUE(flagsBy("wet-and-bare", unit.build()).empty());
}

TEST_F(ReadingRules, WhatDoesNotRustMayBeWetAndBare)
{
    RecordBuilder unit = aUnit("HB-01");
    unit.withPart("whip", {"cable"});
    unit.visit("2025-05-04").graded("cable", 3).wet(Wetness::wet);
    EXPECT_TRUE(flagsBy("wet-and-bare", unit.build()).empty());
}

TEST_F(ReadingRules, SoundAndWetIsNoWorry)
{
    RecordBuilder unit = aUnit("HB-01");
    unit.withPart("suction-accumulator", {"bottom"});
    unit.visit("2025-05-04").graded("bottom", 2).wet(Wetness::wet);
    EXPECT_TRUE(flagsBy("wet-and-bare", unit.build()).empty());
}

} // namespace padside::test
