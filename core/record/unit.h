// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/quantity/measure.h"
#include "core/record/coded.h"
#include "core/record/id.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// How refrigerant is let into the evaporator; decides which charge test holds.
enum class Metering { unknown, fixedOrifice, thermostaticValve, electronicValve };

[[nodiscard]] constexpr auto codesOf(Metering)
{
    return std::array{Coded<Metering>{Metering::unknown, "unknown", "unknown"},
                      Coded<Metering>{Metering::fixedOrifice, "fixed-orifice", "fixed orifice"},
                      Coded<Metering>{Metering::thermostaticValve, "thermostatic-valve", "thermostatic valve"},
                      Coded<Metering>{Metering::electronicValve, "electronic-valve", "electronic valve"}};
}

/// One line of the nameplate: an item of the catalogue ("charge", "compressor-rla") and its value as printed.
struct NameplateValue
{
    std::string item;
    Measure value;

    friend bool operator==(const NameplateValue&, const NameplateValue&) = default;
};

/// The outdoor machine.
struct Unit
{
    UnitId id;
    SiteId siteId;
    std::string tag; ///< what people call it, unique in the file ("HB-03")
    std::string kind; ///< code of a unit kind in the catalogue
    std::string maker;
    std::string model;
    std::string serial;
    std::string place; ///< where on the site ("north wall, by the dryer vent")
    std::string refrigerant; ///< "R-410A"
    Metering metering = Metering::unknown;
    std::optional<Date> installedOn;
    std::optional<Date> retiredOn;
    std::vector<NameplateValue> nameplate;
    std::string note;

    friend bool operator==(const Unit&, const Unit&) = default;
};

/// A region of a part that decays on its own.
struct Zone
{
    ZoneId id;
    PartId partId;
    std::string kind; ///< code of a zone of the part kind ("crown")
    std::string name; ///< as shown; the catalogue's name unless the person gave another

    friend bool operator==(const Zone&, const Zone&) = default;
};

/// A part as fitted: a replacement is a new Part in the same position, with its own life.
struct Part
{
    PartId id;
    UnitId unitId;
    std::string kind; ///< code of a part kind in the catalogue ("suction-accumulator")
    std::string position; ///< which one, where a unit has several; the same for a part and its replacement
    std::string maker;
    std::string model;
    std::optional<Date> fittedOn; ///< empty: unknown
    std::optional<Date> removedOn; ///< empty: still fitted
    std::string removedBecause;
    std::optional<PartId> replaces;
    std::string note;
    std::vector<Zone> zones;

    friend bool operator==(const Part&, const Part&) = default;
};

} // namespace padside
