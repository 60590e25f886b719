// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/visit_book.h"
#include "tests/core/store/full_record.h"
#include "tests/core/store/store_fixture.h"

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

using RecordReaderTest = StoreTest;

std::vector<LastTwoGrades> allLastTwo(Store& store)
{
    std::vector<LastTwoGrades> all;
    store.records().lastTwoGrades([&all](const LastTwoGrades& grades) { all.push_back(grades); });
    return all;
}

} // namespace

TEST_F(RecordReaderTest, AWholeRecordComesBackAsItWasWritten)
{
    const UnitRecord record = fullRecord(*m_store);
    writeRecord(*m_store, record);
    reopen();
    const UnitRecord read = m_store->records().unitRecord(record.unit.id);
    EXPECT_EQ(read.site, record.site);
    EXPECT_EQ(read.unit, record.unit);
    EXPECT_EQ(read.parts, record.parts);
    EXPECT_EQ(read.visits, record.visits);
    EXPECT_EQ(read.findings, record.findings);
    EXPECT_EQ(read.readings, record.readings);
    EXPECT_EQ(read.treatments, record.treatments);
    EXPECT_EQ(read.photos, record.photos);
    EXPECT_EQ(read.charges, record.charges);
    EXPECT_EQ(read.followUps, record.followUps);
}

TEST_F(RecordReaderTest, AUnitWithoutVisitsIsReadWhole)
{
    const UnitRecord record = aUnit("HB-01").build();
    writeRecord(*m_store, record);
    EXPECT_EQ(m_store->records().unitRecord(record.unit.id), record);
    EXPECT_TRUE(allLastTwo(*m_store).empty());
}

TEST_F(RecordReaderTest, AnUnknownUnitIsRefused)
{
    const auto error = refusalOf([&] { (void)m_store->records().unitRecord(UnitId(UuidBytes{1})); });
    EXPECT_EQ(error.problem().kind, ProblemKind::refused);
}

TEST_F(RecordReaderTest, EntriesComeInTheOrderOfTheirEnteringEvenIfTheirKeysDoNot)
{
    UnitRecord record = aUnit("HB-01")
                            .withPart("suction-accumulator", {"crown", "bottom"})
                            .visit("2025-05-06")
                            .graded("crown", 2)
                            .graded("bottom", 3)
                            .build();
    std::swap(record.findings[0].id, record.findings[1].id);
    record.findings[1].enteredAt.utc += std::chrono::minutes(1);
    writeRecord(*m_store, record);
    EXPECT_EQ(m_store->records().unitRecord(record.unit.id).findings, record.findings);
}

TEST_F(RecordReaderTest, LastTwoGradesSkipNotSeenAsLeftAndCorrected)
{
    const auto builder = [] {
        return aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"}).visit("2024-05-02");
    };
    auto made = builder()
                    .graded("crown", 1)
                    .graded("bottom", 2)
                    .visit("2024-10-02")
                    .graded("crown", 4)
                    .corrected(2, "read the wrong vessel")
                    .notSeen("bottom", NotSeenReason::covered)
                    .visit("2025-05-02")
                    .notSeen("crown", NotSeenReason::noTime)
                    .graded("bottom", 3)
                    .graded("bottom", 1, Phase::asLeft);
    const UnitRecord record = made.build();
    writeRecord(*m_store, record);
    const auto all = allLastTwo(*m_store);
    ASSERT_EQ(all.size(), 2U);
    const auto& crown = all[0].zoneId == made.zone("crown") ? all[0] : all[1];
    const auto& bottom = all[0].zoneId == made.zone("crown") ? all[1] : all[0];
    EXPECT_LT(all[0].zoneId, all[1].zoneId);
    EXPECT_EQ(crown.lastOn, day("2024-10-02"));
    EXPECT_EQ(crown.last, Grade::worn);
    EXPECT_EQ(crown.previous, Grade::sound);
    EXPECT_EQ(bottom.lastOn, day("2025-05-02"));
    EXPECT_EQ(bottom.last, Grade::marked);
    EXPECT_EQ(bottom.previous, Grade::worn);
}

TEST_F(RecordReaderTest, UnitLinesTellSiteLastClosedVisitAndWorstFittedGrade)
{
    const UnitRecord record = aUnit("HB-01")
                                  .withPart("contactor", {"points"}, "2020-01-01")
                                  .withPart("suction-accumulator", {"crown"})
                                  .visit("2024-05-02")
                                  .graded("points", 5)
                                  .graded("crown", 3)
                                  .replacedPart("contactor", "2024-05-02")
                                  .visit("2025-05-02", VisitReason::spring, false)
                                  .build();
    writeRecord(*m_store, record);
    const auto lines = m_store->records().unitLines();
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].unitId, record.unit.id);
    EXPECT_EQ(lines[0].siteName, "Quay House");
    EXPECT_EQ(lines[0].tag, "HB-01");
    EXPECT_TRUE(lines[0].hasOpenVisit);
    EXPECT_FALSE(lines[0].retired);
    EXPECT_EQ(lines[0].lastVisitOn, day("2024-05-02"));
    EXPECT_EQ(lines[0].worst, Grade::marked) << "the spent contactor is gone";
}

} // namespace padside::test
