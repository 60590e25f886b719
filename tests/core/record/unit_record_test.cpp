// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/unit_record.h"
#include "tests/support/record_builder.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

using test::aUnit;

UnitRecord twoVisits()
{
    return aUnit("HB-01")
        .withPart("suction-accumulator", {"crown", "bottom"})
        .withPart("fan-motor", {"body"})
        .visit("2024-05-02")
        .graded("bottom", 2)
        .notSeen("crown", NotSeenReason::covered)
        .visit("2025-05-06")
        .graded("bottom", 4)
        .corrected(3, "looked again in better light")
        .graded("crown", 1)
        .build();
}

} // namespace

TEST(StandingEntries, ACorrectedEntryGivesWayToItsCorrection)
{
    const UnitRecord record = twoVisits();
    ASSERT_EQ(record.findings.size(), 5U);
    const auto findings = standing(record.findings);
    ASSERT_EQ(findings.size(), 4U);
    EXPECT_EQ(findings[0].grade(), Grade::worn);
    EXPECT_FALSE(findings[1].seen());
    EXPECT_EQ(findings[2].grade(), Grade::marked);
    EXPECT_EQ(findings[2].correction.value().reason, "looked again in better light");
    EXPECT_EQ(findings[3].grade(), Grade::sound);
}

TEST(StandingEntries, OnlyTheLastOfAChainOfCorrectionsStands)
{
    const auto record = aUnit("HB-01")
                            .withPart("suction-accumulator", {"bottom"})
                            .visit("2025-05-06")
                            .graded("bottom", 5)
                            .corrected(4, "one")
                            .corrected(3, "two")
                            .build();
    const auto findings = standing(record.findings);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].grade(), Grade::marked);
}

TEST(StandingEntries, ACorrectionStandsEvenBeforeWhatItCorrectsInTheList)
{
    UnitRecord record = twoVisits();
    std::swap(record.findings[2], record.findings[3]);
    const auto findings = standing(record.findings);
    ASSERT_EQ(findings.size(), 4U);
    EXPECT_EQ(findings[2].grade(), Grade::marked);
}

TEST(StandingEntries, WithoutCorrectionsNothingChanges)
{
    UnitRecord record = twoVisits();
    EXPECT_EQ(standing(record.readings), record.readings);
    EXPECT_EQ(standing(record.treatments), record.treatments);
    EXPECT_EQ(standing(record.photos), record.photos);
    EXPECT_EQ(standing(record.charges), record.charges);
    const auto once = standing(record.findings);
    EXPECT_NE(once, record.findings);
    record.findings.erase(record.findings.begin() + 2); // the corrected one
    EXPECT_EQ(once, record.findings);
}

TEST(StandingEntries, EveryKindOfEntryCanBeCorrected)
{
    UnitRecord record = aUnit("HB-01")
                            .withPart("fan-motor", {"body"})
                            .visit("2025-05-06")
                            .treated("body", TreatmentKind::clean)
                            .read("superheat", 5, QuantityKind::temperatureDifference, "dK")
                            .build();
    Treatment treatment = record.treatments.front();
    treatment.correction = Correction<TreatmentId>{treatment.id, "greased"};
    treatment.id = TreatmentId(UuidBytes{1});
    record.treatments.push_back(treatment);
    Reading reading = record.readings.front();
    reading.correction = Correction<ReadingId>{reading.id, "typing error"};
    reading.id = ReadingId(UuidBytes{2});
    record.readings.push_back(reading);
    EXPECT_EQ(standing(record.treatments), std::vector<Treatment>{treatment});
    EXPECT_EQ(standing(record.readings), std::vector<Reading>{reading});
}

TEST(UnitRecord, PartsZonesAndVisitsAreFoundByTheirKeys)
{
    const UnitRecord record = twoVisits();
    const Part& accumulator = record.parts[0];
    EXPECT_EQ(findPart(record, accumulator.id), &accumulator);
    EXPECT_EQ(findZone(record, accumulator.zones[1].id), &accumulator.zones[1]);
    EXPECT_EQ(partOfZone(record, accumulator.zones[1].id), &accumulator);
    EXPECT_EQ(partOfZone(record, record.parts[1].zones[0].id), &record.parts[1]);
    EXPECT_EQ(findVisit(record, record.visits[1].id), &record.visits[1]);
    EXPECT_EQ(findPart(record, PartId()), nullptr);
    EXPECT_EQ(findZone(record, ZoneId()), nullptr);
    EXPECT_EQ(partOfZone(record, ZoneId()), nullptr);
    EXPECT_EQ(findVisit(record, VisitId()), nullptr);
}

TEST(UnitRecord, AReplacedPartAndTheNewOneAreBothFound)
{
    auto builder = aUnit("HB-01").withPart("fan-motor", {"body"});
    const ZoneId old = builder.zone("body");
    const UnitRecord record = builder.replacedPart("fan-motor", "2025-05-06").build();
    EXPECT_NE(builder.zone("body"), old);
    EXPECT_TRUE(partOfZone(record, old)->removedOn);
    EXPECT_EQ(partOfZone(record, builder.zone("body"))->replaces, partOfZone(record, old)->id);
}

TEST(VisitRecord, IsOpenUntilItIsClosed)
{
    const auto record = aUnit("HB-01").visit("2025-05-06", VisitReason::fall, false).visit("2025-05-07").build();
    EXPECT_TRUE(record.visits[0].isOpen());
    EXPECT_FALSE(record.visits[1].isOpen());
}

} // namespace padside
