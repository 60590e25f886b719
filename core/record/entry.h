// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/quantity/measure.h"
#include "core/record/coded.h"
#include "core/record/grade.h"
#include "core/record/id.h"

#include <optional>
#include <string>
#include <variant>

namespace padside {

/// A correction points at the entry it stands for and says why; both stay in the record.
template <typename EntryId> struct Correction
{
    EntryId of;
    std::string reason; ///< never empty

    friend bool operator==(const Correction&, const Correction&) = default;
};

/// What each entry of a visit carries. The date is that of its visit.
template <typename EntryId> struct Entry
{
    EntryId id;
    UnitId unitId;
    VisitId visitId;
    Date on{};
    Instant enteredAt;
    std::optional<Correction<EntryId>> correction;

    friend bool operator==(const Entry&, const Entry&) = default;
};

/// What was seen of one zone on one visit: a grade, or an honest "not seen" with its reason.
struct Finding : Entry<FindingId>
{
    ZoneId zoneId;
    Phase phase = Phase::asFound;
    std::variant<Grade, NotSeenReason> sight = NotSeenReason::other;
    std::optional<Wetness> wetness;
    std::string note;

    [[nodiscard]] bool seen() const { return std::holds_alternative<Grade>(sight); }
    [[nodiscard]] std::optional<Grade> grade() const
    {
        const Grade* grade = std::get_if<Grade>(&sight);
        return grade ? std::optional<Grade>(*grade) : std::nullopt;
    }

    friend bool operator==(const Finding&, const Finding&) = default;
};

/// A measured quantity.
struct Reading : Entry<ReadingId>
{
    std::string kind; ///< code of a reading kind in the catalogue ("suction-pressure")
    std::optional<PartId> partId;
    std::optional<ZoneId> zoneId;
    Phase phase = Phase::asFound;
    Measure value;
    std::string note;

    friend bool operator==(const Reading&, const Reading&) = default;
};

enum class TreatmentKind { clean, brushAndCoat, grease, lubricate, repair, replace };

[[nodiscard]] constexpr auto codesOf(TreatmentKind)
{
    return std::array{Coded<TreatmentKind>{TreatmentKind::clean, "clean", "clean"},
                      Coded<TreatmentKind>{TreatmentKind::brushAndCoat, "brush-and-coat", "brush and coat"},
                      Coded<TreatmentKind>{TreatmentKind::grease, "grease", "grease"},
                      Coded<TreatmentKind>{TreatmentKind::lubricate, "lubricate", "lubricate"},
                      Coded<TreatmentKind>{TreatmentKind::repair, "repair", "repair"},
                      Coded<TreatmentKind>{TreatmentKind::replace, "replace", "replace"}};
}

/// Work that changes how a zone (or a whole part) decays.
struct Treatment : Entry<TreatmentId>
{
    TreatmentKind kind = TreatmentKind::clean;
    PartId partId;
    std::optional<ZoneId> zoneId; ///< empty: the whole part
    std::string product;
    std::string note;
    std::optional<Instant> dryBy; ///< until then it must not get wet and the unit must stay off
    std::optional<double> cost; ///< in the person's own currency

    friend bool operator==(const Treatment&, const Treatment&) = default;
};

/// A photograph; the file lies beside the database under its SHA-256.
struct Photo : Entry<PhotoId>
{
    std::optional<ZoneId> zoneId;
    Phase phase = Phase::asFound;
    std::string sha256; ///< 64 lower-case hexadecimal digits
    std::string mediaType; ///< "image/jpeg"
    std::string originalName;
    std::int64_t bytes = 0;
    int width = 0;
    int height = 0;
    std::optional<Instant> takenAt;
    std::string caption;

    friend bool operator==(const Photo&, const Photo&) = default;
};

enum class ChargeDirection { added, recovered, lost };

[[nodiscard]] constexpr auto codesOf(ChargeDirection)
{
    return std::array{Coded<ChargeDirection>{ChargeDirection::added, "added", "added"},
                      Coded<ChargeDirection>{ChargeDirection::recovered, "recovered", "recovered"},
                      Coded<ChargeDirection>{ChargeDirection::lost, "lost", "lost"}};
}

/// Refrigerant put in or taken out.
struct ChargeEntry : Entry<ChargeId>
{
    ChargeDirection direction = ChargeDirection::added;
    std::string refrigerant;
    Measure mass; ///< never negative
    std::string cylinder;
    std::string because; ///< leak, repair, first charge

    friend bool operator==(const ChargeEntry&, const ChargeEntry&) = default;
};

/// A thing a person promised to look at again (beside the checks the program works out).
struct FollowUp
{
    FollowUpId id;
    UnitId unitId;
    std::optional<ZoneId> zoneId;
    VisitId madeAt; ///< the visit at which it was promised
    Date earliest{};
    Date latest{}; ///< not before earliest
    std::string conditions; ///< codes of Condition (core/schedule), separated by spaces
    std::string why;
    std::optional<VisitId> settledAt;
    std::string settledNote;

    friend bool operator==(const FollowUp&, const FollowUp&) = default;
};

} // namespace padside
