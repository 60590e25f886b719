// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/drawing/twenty_years.h"

#include "tests/support/record_builder.h"

#include <array>

namespace padside::test {

namespace {

constexpr std::size_t partCount = 20;
constexpr std::size_t zonesPerPart = 2;
constexpr int firstYear = 2005;
constexpr int lastYear = 2024;

/// Builds the record by hand: the builder finds zones by their kind, and here all parts have the same.
class Years
{
public:
    Years()
        : m_builder(aUnit("TY-01"))
    {
        for (std::size_t i = 0; i < partCount; ++i)
            m_builder.withPart("suction-accumulator", {"crown", "bottom"}, {}, std::to_string(i + 1));
        m_grades.fill(1);
    }

    UnitRecord built()
    {
        for (int year = firstYear; year <= lastYear; ++year) {
            visit(std::to_string(year) + "-04-10", VisitReason::spring);
            if (year % 6 == 0)
                callOut(std::to_string(year) + "-07-19");
            visit(std::to_string(year) + "-10-10", VisitReason::fall);
        }
        m_builder.replacedPart("suction-accumulator", "2015-10-10");
        UnitRecord record = m_builder.build();
        record.findings = std::move(m_findings);
        record.treatments = std::move(m_treatments);
        record.charges = std::move(m_charges);
        return record;
    }

private:
    template <typename AnyEntry> AnyEntry entry(const Visit& visit)
    {
        AnyEntry made;
        made.id = m_ids.make<decltype(made.id)>();
        made.unitId = visit.unitId;
        made.visitId = visit.id;
        made.on = visit.on;
        return made;
    }

    void visit(const std::string& date, VisitReason reason)
    {
        m_builder.visit(date, reason);
        const UnitRecord record = m_builder.build();
        const Visit& visit = record.visits.back();
        ++m_count;
        for (std::size_t part = 0; part < partCount; ++part) {
            for (std::size_t zone = 0; zone < zonesPerPart; ++zone)
                look(visit, record.parts[part], zone, part * zonesPerPart + zone);
        }
    }

    void look(const Visit& visit, const Part& part, std::size_t zone, std::size_t lane)
    {
        auto finding = entry<Finding>(visit);
        finding.zoneId = part.zones[zone].id;
        if ((m_count + lane) % 17 == 0) {
            finding.sight = NotSeenReason::covered;
            m_findings.push_back(finding);
            return;
        }
        int& grade = m_grades[lane];
        if (m_count % (3 + lane % 7) == 0 && grade < 5)
            ++grade;
        finding.sight = static_cast<Grade>(grade);
        m_findings.push_back(finding);
        if (grade < 4 || lane % 3 == 0)
            return;
        auto treatment = entry<Treatment>(visit);
        treatment.kind = TreatmentKind::brushAndCoat;
        treatment.partId = part.id;
        treatment.zoneId = part.zones[zone].id;
        treatment.product = "zinc primer";
        m_treatments.push_back(treatment);
        grade = 2;
        finding.id = m_ids.make<FindingId>();
        finding.phase = Phase::asLeft;
        finding.sight = Grade::worn;
        m_findings.push_back(finding);
    }

    void callOut(const std::string& date)
    {
        m_builder.visit(date, VisitReason::callOut);
        auto charge = entry<ChargeEntry>(m_builder.build().visits.back());
        charge.mass = Measure{0.45, QuantityKind::mass, "kg", "0.45 kg"};
        charge.refrigerant = "R-410A";
        charge.because = "leak at the flare";
        m_charges.push_back(charge);
    }

    RecordBuilder m_builder;
    IdMaker m_ids{[] { return std::int64_t{1'790'000'000'000}; }, 7};
    std::array<int, partCount * zonesPerPart> m_grades{};
    std::size_t m_count = 0;
    std::vector<Finding> m_findings;
    std::vector<Treatment> m_treatments;
    std::vector<ChargeEntry> m_charges;
};

} // namespace

UnitRecord twentyYears()
{
    return Years().built();
}

} // namespace padside::test
