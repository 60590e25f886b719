// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/record/unit_record.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace padside {

/// What went out of one cylinder into units, and from units into it. A cylinder that held two refrigerants has two
/// lines.
struct CylinderLine
{
    std::string cylinder; ///< as written on the entries; empty: none was noted
    std::string refrigerant; ///< as written first, in reading order
    double outKg = 0; ///< added to units
    double intoKg = 0; ///< recovered from units
    int units = 0; ///< how many units
    Date first{};
    Date last{};
    bool mixed = false; ///< refrigerants that differ were recovered into it

    friend bool operator==(const CylinderLine&, const CylinderLine&) = default;
};

/// Cylinders over one or many units; what was lost from a unit went into none.
class CylinderLedger
{
public:
    /// Takes the standing entries of one unit up to and including `today`. Each unit is taken once.
    void take(const UnitRecord& record, Date today);

    /// By cylinder, then refrigerant, in reading order; whatever order the units came in.
    [[nodiscard]] std::vector<CylinderLine> lines() const;

private:
    struct Moved
    {
        std::set<std::string> names;
        std::vector<double> out;
        std::vector<double> into;
        std::set<UnitId> units;
        Date first{};
        Date last{};
    };

    std::map<std::pair<std::string, std::string>, Moved> m_moved; ///< by cylinder and refrigerant, made comparable
};

/// "Out of it 2.40 kg, into it 0.00 kg, at 3 units", and a warning where refrigerants were mixed in it.
[[nodiscard]] Sentence cylinderSentence(const CylinderLine& line);

} // namespace padside
