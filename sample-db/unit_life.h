// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "sample-db/dice.h"
#include "sample-db/photo_painter.h"
#include "sample-db/scenario.h"
#include "sample-db/visit_calendar.h"
#include "sample-db/zone_nature.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string_view>
#include <vector>

namespace padside {

/// What is true of a zone, whether anyone looks or not.
struct ZoneState
{
    const ZoneNature* nature = nullptr;
    ZoneId id;
    PartId partId;
    double decay = 1; ///< 1 .. 5, in between too
    double pace = 1; ///< this zone's own, multiplied with its nature's
    double coat = 0; ///< 1 fresh .. 0 gone
    std::optional<Date> treatedOn;
    std::optional<Grade> lastSeen;
    std::optional<Date> lastSeenOn; ///< the day it was last seen, or fitted
    bool fresh = true; ///< not yet seen since it was fitted or treated: a better grade is no contradiction

    /// What an honest eye sees: a sound coating hides what is below.
    [[nodiscard]] Grade shown() const;
};

/// A unit's life as it is told: what is recorded, and what the photographs are to show. Nothing here touches a store.
struct UnitLife
{
    const ScenarioUnit* scenario = nullptr;
    const ScenarioSite* place = nullptr;
    std::size_t block = 0; ///< 0: the story told in full, with photographs; higher: a repetition
    bool photographed = false;
    Date lastDay{};

    UnitRecord record;
    std::vector<PhotoOrder> orders; ///< one for each of record.photos, in the same order

    std::vector<ZoneState> zones; ///< of fitted parts
    std::uint64_t skin = 0; ///< where this unit's photographs get their shapes from
    double missingCharge = 0; ///< share of the charge that has leaked
    double leakPerYear = 0.22; ///< share of the charge, for the unit that leaks
    double chargeKg = 0;
    double capacitorUf = 0;
    double fanCapacitorUf = 0;
    double capacitorDrift = 0; ///< share lost
    double ratedAmps = 0;
    double wallMm = 3.2; ///< of the accumulator's bottom

    [[nodiscard]] const Part* fitted(std::string_view partKind) const;
    [[nodiscard]] ZoneState* zone(std::string_view partKind, std::string_view zoneKind);
};

/// What the functions that tell one visit share.
struct Telling
{
    UnitLife& life;
    const Visit& visit;
    IdMaker& ids;
    Dice& dice;
    std::function<Instant()> tick; ///< the next moment of the visit

    template <typename AnyEntry, typename AnyId> [[nodiscard]] AnyEntry entry()
    {
        AnyEntry made;
        made.id = ids.make<AnyId>();
        made.unitId = life.record.unit.id;
        made.visitId = visit.id;
        made.on = visit.on;
        made.enteredAt = tick();
        return made;
    }
    [[nodiscard]] bool metric() const; ///< which units this technician types
};

/// The site, unit, parts and nameplate, with zones aged up to `firstDay`.
[[nodiscard]] UnitLife beginLife(const Catalogue& catalogue, std::size_t index, Date firstDay, Date lastDay,
                                 const Site& site, IdMaker& ids, std::uint64_t seed);
/// Fits a part (with the catalogue's zones), new on `on`.
Part& fitPart(UnitLife& life, const Catalogue& catalogue, const std::string& kind, const std::string& position,
              std::optional<Date> on, IdMaker& ids, Dice& dice);
/// Lets time pass for all zones, the charge and the capacitor.
void ageLife(UnitLife& life, Date from, Date to);

// One per file: what is entered at a visit, in the order it happens.
void tellFindings(Telling& telling);
void tellReadings(Telling& telling);
void tellWork(Telling& telling, const Catalogue& catalogue); ///< treatments, replacements, refrigerant, promises
void tellPhotosAsFound(Telling& telling); ///< before the work
void tellPhotosAsLeft(Telling& telling); ///< after it
/// Somebody typed the wrong key once: the record keeps both grades and the reason.
void tellCorrection(UnitLife& life, IdMaker& ids);

/// What is made good where it stands once it is spent, rather than exchanged.
struct Mending
{
    std::string_view part;
    std::string_view zone;
    std::string_view how;
    double cost;
};
/// Null where nothing can be mended.
[[nodiscard]] const Mending* mendingOf(std::string_view part, std::string_view zone);

/// The call-out at which the slow leak is found and brazed.
[[nodiscard]] bool isLeakFound(const Telling& telling);

/// The bottom of the seafront unit's accumulator follows a script; `visitIndex` of `visitCount`.
void followVesselScript(UnitLife& life, std::size_t visitIndex, std::size_t visitCount);
[[nodiscard]] bool vesselScriptTreats(std::size_t visitIndex, std::size_t visitCount);

/// A measured value as this technician types it; `si` is rounded to what was typed.
[[nodiscard]] Measure typedMeasure(double si, const MeasuringUnit& unit, int decimals);

/// The whole life. `index` counts through the scenario again and again; same arguments, same life.
[[nodiscard]] UnitLife tellLife(const Catalogue& catalogue, std::size_t index, int years, Date lastDay,
                                const Site& site, std::uint64_t seed);

} // namespace padside
