// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/core/store/store_fixture.h"

#include <algorithm>
#include <limits>

namespace padside::test {

namespace {

/// One unit with an open visit at which two zones were graded.
class VisitBookTest : public StoreTest
{
protected:
    VisitBookTest() { writeRecord(*m_store, m_record); }
    ~VisitBookTest() override { EXPECT_TRUE(verify(*m_store).clean()); }

    [[nodiscard]] VisitBook& book() { return m_store->visits(); }
    [[nodiscard]] UnitRecord read() { return m_store->records().unitRecord(m_record.unit.id); }
    void close()
    {
        book().close(m_record.visits[0].id, Instant{m_record.visits[0].openedAt.utc + std::chrono::hours(1), {}});
    }

    template <typename AnyId> AnyId id() { return m_ids.make<AnyId>(); }

    UnitRecord m_record = aUnit("HB-01")
                              .withPart("suction-accumulator", {"crown", "bottom"})
                              .visit("2024-02-29", VisitReason::spring, false)
                              .graded("crown", 2)
                              .graded("bottom", 3)
                              .read("suction-pressure", 468843.5, QuantityKind::gaugePressure, "psig")
                              .treated("bottom", TreatmentKind::grease, "wax")
                              .build();
    IdMaker m_ids{[] { return std::int64_t{1'800'000'000'000}; }, 3};
};

} // namespace

TEST_F(VisitBookTest, AnOpenVisitIsFoundAgainAfterReopening)
{
    reopen();
    ASSERT_EQ(book().openVisits().size(), 1U);
    EXPECT_EQ(book().openVisitOf(m_record.unit.id), m_record.visits[0]);
    EXPECT_EQ(book().visit(m_record.visits[0].id), m_record.visits[0]);
    EXPECT_EQ(book().visit(VisitId(UuidBytes{9})), std::nullopt);
    EXPECT_EQ(read(), m_record);
}

TEST_F(VisitBookTest, ASecondOpenVisitOfTheUnitIsRefused)
{
    Visit second = m_record.visits[0];
    second.id = id<VisitId>();
    const auto error = refusalOf([&] { book().open(second); });
    EXPECT_EQ(error.problem().kind, ProblemKind::refused);
    EXPECT_NE(std::string(error.what()).find("already has an open visit"), std::string::npos) << error.what();
    close();
    book().open(second);
    EXPECT_EQ(book().openVisitOf(m_record.unit.id), second);
}

TEST_F(VisitBookTest, AVisitOfAnUnknownUnitOrOnNoDayIsRefused)
{
    Visit visit = m_record.visits[0];
    visit.id = id<VisitId>();
    visit.unitId = id<UnitId>();
    EXPECT_EQ(refusalOf([&] { book().open(visit); }).problem().kind, ProblemKind::refused);
    close();
    visit.unitId = m_record.unit.id;
    visit.on = day("2024-02-29") + std::chrono::days(4'000'000); // beyond the year 9999
    EXPECT_EQ(refusalOf([&] { book().open(visit); }).problem().kind, ProblemKind::refused);
    EXPECT_TRUE(book().openVisits().empty());
}

TEST_F(VisitBookTest, CircumstancesOfAnOpenVisitChangeButNotItsUnitOrDay)
{
    Visit visit = m_record.visits[0];
    visit.reason = VisitReason::callOut;
    visit.conditions = {280.0, 0.5, Sky::fog, Running::heating};
    visit.note = "rang at noon";
    book().change(visit);
    EXPECT_EQ(book().visit(visit.id), visit);
    Visit moved = visit;
    moved.on += std::chrono::days(1);
    EXPECT_EQ(refusalOf([&] { book().change(moved); }).problem().kind, ProblemKind::refused);
    Visit unknown = visit;
    unknown.id = id<VisitId>();
    EXPECT_EQ(refusalOf([&] { book().change(unknown); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(book().visit(visit.id), visit);
}

TEST_F(VisitBookTest, AnEntryPutAgainReplacesItself)
{
    Finding finding = m_record.findings[0];
    finding.sight = NotSeenReason::covered;
    finding.note = std::string(1'000'000, 'x');
    book().put(finding);
    Reading reading = m_record.readings[0];
    reading.value.si = 1;
    book().put(reading);
    EXPECT_EQ(read().findings[0], finding);
    EXPECT_EQ(read().readings[0], reading);
    EXPECT_EQ(read().findings.size(), 2U);
}

TEST_F(VisitBookTest, ANewFindingOfAZoneTakesTheOldOnesPlace)
{
    Finding finding = m_record.findings[0];
    finding.id = id<FindingId>();
    finding.sight = Grade::spent;
    book().put(finding);
    ASSERT_EQ(read().findings.size(), 2U);
    EXPECT_EQ(read().findings.back(), finding);
    Finding asLeft = finding;
    asLeft.id = id<FindingId>();
    asLeft.phase = Phase::asLeft;
    book().put(asLeft);
    EXPECT_EQ(read().findings.size(), 3U) << "as found and as left stand side by side";
}

TEST_F(VisitBookTest, AFindingThatIsRefusedLeavesTheOldOneInPlace)
{
    Finding finding = m_record.findings[0];
    finding.id = id<FindingId>();
    finding.note = "broken \xff bytes";
    EXPECT_EQ(refusalOf([&] { book().put(finding); }).problem().kind, ProblemKind::badInput);
    finding.note.clear();
    finding.on += std::chrono::days(1);
    EXPECT_EQ(refusalOf([&] { book().put(finding); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(read(), m_record);
}

TEST_F(VisitBookTest, EntriesAreRemovedOnceAndOnlyWhileOpen)
{
    book().remove(m_record.findings[0]);
    EXPECT_EQ(read().findings.size(), 1U);
    EXPECT_EQ(refusalOf([&] { book().remove(m_record.findings[0]); }).problem().kind, ProblemKind::refused);
    close();
    EXPECT_EQ(refusalOf([&] { book().remove(m_record.findings[1]); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(refusalOf([&] { book().remove(m_record.treatments[0]); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(read().findings.size(), 1U);
}

TEST_F(VisitBookTest, DiscardingTakesTheVisitAndAllItsEntries)
{
    book().discard(m_record.visits[0].id);
    const UnitRecord left = read();
    EXPECT_TRUE(left.visits.empty());
    EXPECT_TRUE(left.findings.empty());
    EXPECT_TRUE(left.readings.empty());
    EXPECT_TRUE(left.treatments.empty());
    EXPECT_EQ(left.parts, m_record.parts);
    EXPECT_EQ(refusalOf([&] { book().discard(m_record.visits[0].id); }).problem().kind, ProblemKind::refused);
}

TEST_F(VisitBookTest, ACorrectionStandsBesideTheEntryOfAClosedVisit)
{
    Finding correcting = m_record.findings[0];
    correcting.id = id<FindingId>();
    correcting.sight = Grade::marked;
    correcting.correction = Correction<FindingId>{m_record.findings[0].id, "wrong vessel"};
    const auto stillOpen = refusalOf([&] { book().put(correcting); });
    EXPECT_NE(std::string(stillOpen.what()).find("still open"), std::string::npos) << stillOpen.what();
    close();
    book().put(correcting);
    EXPECT_EQ(read().findings.size(), 3U);
    EXPECT_EQ(standing(read().findings).size(), 2U);

    Finding again = correcting;
    again.id = id<FindingId>();
    const auto twice = refusalOf([&] { book().put(again); });
    EXPECT_NE(std::string(twice.what()).find("corrected already"), std::string::npos) << twice.what();
    again.correction = Correction<FindingId>{correcting.id, "it was the right one"};
    book().put(again);
    EXPECT_EQ(standing(read().findings).size(), 2U);
    EXPECT_EQ(refusalOf([&] { book().put(correcting); }).problem().kind, ProblemKind::refused)
        << "corrections stay too";
}

TEST_F(VisitBookTest, AnEntryOfAZoneOfAnotherUnitIsRefused)
{
    UnitRecord other = aUnit("HB-02").withPart("contactor", {"points"}).build();
    other.site = m_record.site;
    other.unit.siteId = m_record.site.id;
    other.unit.id = id<UnitId>();
    other.parts[0].id = id<PartId>();
    other.parts[0].unitId = other.unit.id;
    other.parts[0].zones[0] = {id<ZoneId>(), other.parts[0].id, "points", "points"};
    writeRecord(*m_store, other);
    Finding finding = m_record.findings[0];
    finding.id = id<FindingId>();
    finding.zoneId = other.parts[0].zones[0].id;
    EXPECT_EQ(refusalOf([&] { book().put(finding); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(read(), m_record);
}

TEST_F(VisitBookTest, NumbersThatCantBeKeptExactlyAreRefused)
{
    Reading reading = m_record.readings[0];
    for (const double bad : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        reading.value.si = bad;
        EXPECT_EQ(refusalOf([&] { book().put(reading); }).problem().kind, ProblemKind::badInput);
    }
    Treatment treatment = m_record.treatments[0];
    for (const double bad : {12.345, std::numeric_limits<double>::quiet_NaN(), 1e300}) {
        treatment.cost = bad;
        EXPECT_EQ(refusalOf([&] { book().put(treatment); }).problem().kind, ProblemKind::badInput) << bad;
    }
    treatment.cost = -1;
    EXPECT_EQ(refusalOf([&] { book().put(treatment); }).problem().kind, ProblemKind::refused);
    for (int cents = 0; cents <= 1000; ++cents) {
        treatment.cost = static_cast<double>(cents) / 100;
        book().put(treatment);
        ASSERT_EQ(read().treatments[0].cost, treatment.cost);
        cents += 6;
    }
    EXPECT_EQ(read().readings, m_record.readings);
    treatment.cost.reset();
    book().put(treatment);
    EXPECT_EQ(read(), m_record);
}

TEST_F(VisitBookTest, APhotographWhoseFileWasNotKeptIsRefused)
{
    Photo photo;
    photo.id = id<PhotoId>();
    photo.unitId = m_record.unit.id;
    photo.visitId = m_record.visits[0].id;
    photo.on = m_record.visits[0].on;
    photo.enteredAt = m_record.visits[0].openedAt;
    photo.sha256 = std::string(64, 'a');
    photo.mediaType = "image/png";
    EXPECT_EQ(refusalOf([&] { book().put(photo); }).problem().kind, ProblemKind::refused);
    EXPECT_TRUE(read().photos.empty());
}

} // namespace padside::test
