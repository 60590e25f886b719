// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/assumption.h"
#include "core/catalogue/coating.h"
#include "core/catalogue/leak_limit.h"
#include "core/catalogue/outlook_figures.h"
#include "core/catalogue/refrigerant.h"
#include "core/catalogue/supply.h"
#include "core/quantity/problem.h"
#include "core/quantity/quantity_kind.h"
#include "core/record/coded.h"
#include "core/record/grade.h"
#include "core/record/visit.h"

#include <array>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// What a spent part takes with it. A part may carry several.
enum class Consequence { looks, nuisance, lossOfCooling, lossOfCharge, compressorAtRisk, endsUnit, safety };

[[nodiscard]] constexpr auto codesOf(Consequence)
{
    return std::array{Coded<Consequence>{Consequence::looks, "looks", "looks"},
                      Coded<Consequence>{Consequence::nuisance, "nuisance", "nuisance"},
                      Coded<Consequence>{Consequence::lossOfCooling, "loss-of-cooling", "loss of cooling or heating"},
                      Coded<Consequence>{Consequence::lossOfCharge, "loss-of-charge", "loss of refrigerant charge"},
                      Coded<Consequence>{Consequence::compressorAtRisk, "compressor-at-risk", "compressor at risk"},
                      Coded<Consequence>{Consequence::endsUnit, "ends-unit", "normally ends the unit"},
                      Coded<Consequence>{Consequence::safety, "safety", "safety"}};
}

/// Whether a spare can be had for as long as the unit lasts.
enum class Spare { easy, fair, scarce, none };

[[nodiscard]] constexpr auto codesOf(Spare)
{
    return std::array{Coded<Spare>{Spare::easy, "easy", "easy to get"},
                      Coded<Spare>{Spare::fair, "fair", "usually to be had"},
                      Coded<Spare>{Spare::scarce, "scarce", "scarce late in the unit's life"},
                      Coded<Spare>{Spare::none, "none", "no separate spare"}};
}

/// What a check or task needs of the day.
enum class Condition { dry, off, running, cold, hot, hotEnoughForCharge };

[[nodiscard]] constexpr auto codesOf(Condition)
{
    return std::array{Coded<Condition>{Condition::dry, "dry", "dry"},
                      Coded<Condition>{Condition::off, "off", "unit off"},
                      Coded<Condition>{Condition::running, "running", "unit running"},
                      Coded<Condition>{Condition::cold, "cold", "cold season"},
                      Coded<Condition>{Condition::hot, "hot", "cooling season"},
                      Coded<Condition>{Condition::hotEnoughForCharge, "above-13C", "outdoors at least 13 °C (55 °F)"}};
}

/// A region of a part kind. Sentences are given where the part's own do not fit this zone.
struct ZoneKind
{
    std::string code;
    std::string name;
    bool soiling = false; ///< dirt rather than decay: cleaning brings it back to sound
    std::optional<Consequence> toleratedAs; ///< whose tolerance it has; empty: that of the part's gravest consequence
    std::optional<std::array<std::string, 5>> gradeSentences;
};

/// A figure and where it comes from.
struct SourcedNumber
{
    double value = 0;
    std::string source; ///< a published source, or "common practice, no source"
};

/// One thing to do at a visit.
struct Task
{
    std::string code; ///< unique in the catalogue
    VisitReason season = VisitReason::spring; ///< spring or fall
    std::string sentence;
    bool required = true;
    std::vector<Condition> needs;
    std::vector<std::string> bring; ///< tools and materials for it beyond what is always in the bag
};

/// A kind of part.
struct PartKind
{
    std::string code;
    std::string name;
    std::vector<std::string> unitKinds; ///< codes of the unit kinds that have it
    std::vector<ZoneKind> zones;
    std::array<std::string, 5> gradeSentences; ///< sound .. spent
    std::vector<Task> tasks;
    std::vector<std::string> failureModes;
    std::string preserves; ///< what keeps it alive
    std::vector<std::string> bring; ///< tools and materials to look after it where it is no longer sound
    std::set<Consequence> consequences;
    Spare spare = Spare::easy;
    bool outlivesUnit = false; ///< the fitted part usually outlasts the unit
    std::optional<SourcedNumber> medianLifeYears; ///< empty: lasts as long as the unit
    std::vector<std::string> cautions; ///< codes of cautions that belong beside work on it
};

/// A kind of unit and the positions its parts stand in.
struct UnitKind
{
    struct Fitted
    {
        std::string partKind;
        std::string position;
    };

    std::string code;
    std::string name;
    std::vector<std::string> alsoCalled; ///< other names lists of units use for it
    std::vector<Fitted> parts;
};

/// A quantity people measure.
struct ReadingKind
{
    std::string code;
    std::string name;
    QuantityKind quantity = QuantityKind::count;
    std::string metricUnit; ///< unit code used when none is typed
    std::string customaryUnit;
    std::string partKind; ///< the part it belongs to; empty: the unit, or zones
    std::vector<std::string> zonesOf; ///< it is taken zone by zone, at parts of these kinds
    std::vector<Condition> needs;
    double lowest = 0; ///< SI; outside lowest..highest the value is questioned, not refused
    double highest = 0;
    std::string where; ///< where and how to take it, one sentence
    std::vector<VisitReason> seasons; ///< when it is usually taken
};

/// A line of a nameplate.
struct NameplateItem
{
    std::string code;
    std::string name;
    QuantityKind quantity = QuantityKind::count;
    std::string metricUnit;
    std::string customaryUnit;
};

/// A caution that belongs on screen and paper.
struct Caution
{
    std::string code;
    std::string sentence;
    bool always = false; ///< printed on every summary
};

/// A bound on what readings are asked for; ours to start with, theirs to change.
struct ReadingLimit
{
    std::string code; ///< "superheat-tolerance"
    double si = 0;
    std::string unit; ///< code of the measuring unit it is written in
    std::string sentence;
    std::string source;
};

/// What is known about parts and units in general. Read from our data with the person's own changes laid over it.
class Catalogue
{
public:
    /// Reads our catalogue (several JSON texts, merged in order) and lays `ownChanges` over it, a JSON merge patch
    /// (RFC 7396). A bad field is named with its path in the Problem.
    [[nodiscard]] static Result<Catalogue> load(std::span<const std::string> shipped,
                                                const std::string& ownChanges = {});

    [[nodiscard]] const std::vector<UnitKind>& unitKinds() const { return m_unitKinds; }
    [[nodiscard]] const std::vector<PartKind>& partKinds() const { return m_partKinds; }
    [[nodiscard]] const std::vector<ReadingKind>& readingKinds() const { return m_readingKinds; }
    [[nodiscard]] const std::vector<NameplateItem>& nameplateItems() const { return m_nameplateItems; }
    [[nodiscard]] const std::vector<Refrigerant>& refrigerants() const { return m_refrigerants; }
    [[nodiscard]] const std::vector<Caution>& cautions() const { return m_cautions; }
    [[nodiscard]] const std::vector<Assumption>& assumptions() const { return m_assumptions; }
    [[nodiscard]] const std::vector<ReadingLimit>& readingLimits() const { return m_readingLimits; }
    [[nodiscard]] const std::vector<LeakLimit>& leakLimits() const { return m_leakLimits; }
    [[nodiscard]] const std::vector<Coating>& coatings() const { return m_coatings; }
    [[nodiscard]] const OutlookFigures& outlook() const { return m_outlook; }
    [[nodiscard]] const std::map<std::string, Supply, std::less<>>& supply() const { return m_supply; }

    /// The entry with this code, or nullptr.
    [[nodiscard]] const UnitKind* unitKind(std::string_view code) const;
    [[nodiscard]] const PartKind* partKind(std::string_view code) const;
    [[nodiscard]] const ZoneKind* zoneKind(std::string_view partCode, std::string_view zoneCode) const;
    [[nodiscard]] const ReadingKind* readingKind(std::string_view code) const;
    [[nodiscard]] const NameplateItem* nameplateItem(std::string_view code) const;
    [[nodiscard]] const Caution* caution(std::string_view code) const;
    [[nodiscard]] const LeakLimit* leakLimit(std::string_view code) const;
    [[nodiscard]] const Coating* coating(std::string_view code) const;

    [[nodiscard]] const ReadingLimit* readingLimit(std::string_view code) const;
    /// The refrigerant somebody means who writes "R-410A", "r410a" or "R 410A", or nullptr.
    [[nodiscard]] const Refrigerant* refrigerant(std::string_view typed) const;

    /// The value of an assumption; a code that is not in the catalogue is a broken promise of the program (assert).
    [[nodiscard]] double assumption(std::string_view code) const;

    /// How a spare of this kind is to be had; the usual where nothing is said of it.
    [[nodiscard]] Supply supplyOf(std::string_view partCode) const;

    /// The consequence whose tolerance a zone has: its own, else the gravest (least tolerated) of its part; looks for a
    /// part without any.
    [[nodiscard]] Consequence toleratedAs(std::string_view partCode, std::string_view zoneCode) const;
    /// The chance of being spent unseen that is tolerated for this consequence: the assumption
    /// "spent-tolerance-<consequence>", kept between 0.01 % and 50 %.
    [[nodiscard]] double spentTolerance(Consequence consequence) const;

    /// What this grade means for this zone, in words: the zone's sentence, else the part's. Empty for unknown codes.
    [[nodiscard]] std::string gradeSentence(std::string_view partCode, std::string_view zoneCode, Grade grade) const;

private:
    std::vector<UnitKind> m_unitKinds;
    std::vector<PartKind> m_partKinds;
    std::vector<ReadingKind> m_readingKinds;
    std::vector<NameplateItem> m_nameplateItems;
    std::vector<Refrigerant> m_refrigerants;
    std::vector<Caution> m_cautions;
    std::vector<Assumption> m_assumptions;
    std::vector<ReadingLimit> m_readingLimits;
    std::vector<LeakLimit> m_leakLimits;
    std::vector<Coating> m_coatings;
    OutlookFigures m_outlook;
    std::map<std::string, Supply, std::less<>> m_supply; ///< by part kind
};

} // namespace padside
