// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <string>
#include <vector>

namespace padside::test {

/// Builds a UnitRecord for a test, line by line: one site, one unit, parts with zones, visits with findings.
///
///     auto record = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"})
///                       .visit("2024-05-02", VisitReason::spring).graded("bottom", 2)
///                       .visit("2025-05-06", VisitReason::spring).graded("bottom", 3).notSeen("crown",
///                       NotSeenReason::covered) .build();
class RecordBuilder
{
public:
    explicit RecordBuilder(const std::string& tag);

    RecordBuilder& kind(const std::string& unitKind);
    RecordBuilder& installed(const std::string& date);
    RecordBuilder& withPart(const std::string& partKind, const std::vector<std::string>& zones,
                            const std::string& fittedOn = {}, const std::string& position = {});
    RecordBuilder& visit(const std::string& date, VisitReason reason = VisitReason::spring, bool closed = true);
    RecordBuilder& graded(const std::string& zoneKind, int grade, Phase phase = Phase::asFound);
    RecordBuilder& notSeen(const std::string& zoneKind, NotSeenReason reason);
    RecordBuilder& wet(Wetness wetness); ///< of the finding entered last
    RecordBuilder& noted(const std::string& note); ///< of the finding entered last
    RecordBuilder& treated(const std::string& zoneKind, TreatmentKind kind, const std::string& product = {});
    RecordBuilder& read(const std::string& readingKind, double si, QuantityKind kind, const std::string& unitCode);
    RecordBuilder& charged(ChargeDirection direction, double kilograms, const std::string& because = {},
                           const std::string& cylinder = {}, const std::string& refrigerant = "R-410A");
    RecordBuilder& factoryCharge(double kilograms); ///< on the nameplate
    RecordBuilder& replacedPart(const std::string& partKind, const std::string& date); ///< the zones start again
    RecordBuilder& followUp(const std::string& zoneKind, const std::string& earliest, const std::string& latest,
                            const std::string& why);
    RecordBuilder& corrected(int grade, const std::string& reason); ///< a correction of the finding entered last

    [[nodiscard]] UnitRecord build() const;
    [[nodiscard]] ZoneId zone(const std::string& zoneKind) const; ///< of the part fitted last

private:
    [[nodiscard]] Instant noonOfVisit() const;
    template <typename AnyEntry> AnyEntry entry();

    UnitRecord m_record;
    IdMaker m_ids;
};

[[nodiscard]] inline RecordBuilder aUnit(const std::string& tag)
{
    return RecordBuilder(tag);
}

/// A date that the test knows to be right.
[[nodiscard]] Date day(const std::string& iso);

} // namespace padside::test
