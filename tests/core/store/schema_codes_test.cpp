// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/quantity_code.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/visit_book.h"
#include "tests/core/store/store_fixture.h"

namespace padside::test {

namespace {

/// Every value of every enum can be kept and comes back: the lists in the schema and the tables of the enums agree.
class SchemaCodesTest : public StoreTest
{
protected:
    SchemaCodesTest() { writeRecord(*m_store, m_record); }

    [[nodiscard]] UnitRecord read() { return m_store->records().unitRecord(m_record.unit.id); }

    UnitRecord m_record = aUnit("HB-01")
                              .withPart("contactor", {"points"})
                              .visit("2024-02-29", VisitReason::spring, false)
                              .graded("points", 1)
                              .read("suction-pressure", 1, QuantityKind::gaugePressure, "Pa")
                              .treated("points", TreatmentKind::clean)
                              .build();
};

} // namespace

TEST_F(SchemaCodesTest, OfUnits)
{
    for (const auto& row : codesOf(Metering{})) {
        m_record.unit.metering = row.value;
        m_store->sites().changeUnit(m_record.unit);
        EXPECT_EQ(read().unit, m_record.unit) << row.code;
    }
}

TEST_F(SchemaCodesTest, OfVisits)
{
    Visit& visit = m_record.visits[0];
    const auto expectKept = [&](std::string_view code) {
        m_store->visits().change(visit);
        EXPECT_EQ(read().visits[0], visit) << code;
    };
    for (const auto& row : codesOf(VisitReason{})) {
        visit.reason = row.value;
        expectKept(row.code);
    }
    for (const auto& row : codesOf(Sky{})) {
        visit.conditions.sky = row.value;
        expectKept(row.code);
    }
    for (const auto& row : codesOf(Running{})) {
        visit.conditions.running = row.value;
        expectKept(row.code);
    }
}

TEST_F(SchemaCodesTest, OfFindings)
{
    Finding& finding = m_record.findings[0];
    const auto expectKept = [&](std::string_view code) {
        m_store->visits().put(finding);
        EXPECT_EQ(read().findings, std::vector{finding}) << code;
    };
    for (const auto& row : codesOf(Grade{})) {
        finding.sight = row.value;
        expectKept(row.code);
    }
    for (const auto& row : codesOf(NotSeenReason{})) {
        finding.sight = row.value;
        expectKept(row.code);
    }
    for (const auto& row : codesOf(Wetness{})) {
        finding.wetness = row.value;
        expectKept(row.code);
    }
    for (const auto& row : codesOf(Phase{})) {
        finding.phase = row.value;
        expectKept(row.code);
    }
}

TEST_F(SchemaCodesTest, OfReadingsTreatmentsAndCharges)
{
    Reading& reading = m_record.readings[0];
    for (const auto& row : codesOf(QuantityKind{})) {
        reading.value.kind = row.value;
        m_store->visits().put(reading);
        EXPECT_EQ(read().readings[0], reading) << row.code;
    }
    Treatment& treatment = m_record.treatments[0];
    for (const auto& row : codesOf(TreatmentKind{})) {
        treatment.kind = row.value;
        m_store->visits().put(treatment);
        EXPECT_EQ(read().treatments[0], treatment) << row.code;
    }
    ChargeEntry charge;
    charge.id = ChargeId(UuidBytes{1});
    charge.unitId = m_record.unit.id;
    charge.visitId = m_record.visits[0].id;
    charge.on = m_record.visits[0].on;
    charge.enteredAt = m_record.visits[0].openedAt;
    charge.refrigerant = "R-410A";
    charge.mass = {0, QuantityKind::mass, "kg", "0"};
    for (const auto& row : codesOf(ChargeDirection{})) {
        charge.direction = row.value;
        m_store->visits().put(charge);
        EXPECT_EQ(read().charges, std::vector{charge}) << row.code;
    }
    charge.mass.si = -0.1;
    EXPECT_NE(std::string(refusalOf([&] { m_store->visits().put(charge); }).what()).find("negative"),
              std::string::npos);
}

} // namespace padside::test
