// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/flags/flag.h"
#include "core/flags/unit_view.h"
#include "core/flags/zone_view.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace padside {

/// What a rule has to say of one zone or unit: a Flag without the names of rule, unit, part and zone.
struct Worry
{
    Severity severity = Severity::look;
    Sentence sentence; ///< what and why
    Sentence clears; ///< what would clear it
    std::vector<FindingId> evidence; ///< oldest first
    std::vector<ChargeId> charges; ///< oldest first
    std::vector<ReadingId> readings; ///< oldest first
    std::optional<PartId> partId; ///< the part it is about, where a rule about the unit knows one
    std::string aspect{}; ///< see Flag
    std::optional<double> extent{}; ///< see Flag
    /// Of the zone that a rule about the unit judged by; its flag then stands behind those of the zones.
    std::optional<Grade> grade{};
};

/// A rule: its id and the function that looks at one zone and may worry.
struct Rule
{
    std::string_view id;
    std::optional<Worry> (*judge)(const ZoneView& zone);
};

/// A rule about the unit as a whole, not about one of its zones.
struct UnitRule
{
    std::string_view id;
    std::vector<Worry> (*judge)(const UnitView& unit);
};

/// All rules, each in a file of its own; rules.cpp is their list.
[[nodiscard]] std::span<const Rule> allRules();
[[nodiscard]] std::span<const UnitRule> allUnitRules();

} // namespace padside
