// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/exchange/unit_columns.h"
#include "core/quantity/measure.h"
#include "core/quantity/unit_choice.h"
#include "core/record/site.h"
#include "core/record/unit.h"

#include <QString>

#include <map>
#include <set>

namespace padside {

/// The fields of a site's form.
enum class SiteField {
    name,
    address,
    contact,
    access,
    altitude,
    temperature,
    humidity,
    sulphurDioxide,
    chloride,
    springFirst,
    springLast,
    fallFirst,
    fallLast,
    note,
};

using SiteInput = std::map<SiteField, QString>;
using UnitInput = std::map<UnitField, QString>;

/// How the person writes numbers and which units a bare number is in.
struct InputStyle
{
    NumberStyle numbers;
    UnitChoice units;
};

class RecordBook;
[[nodiscard]] InputStyle inputStyleOf(const RecordBook& book);

/// A site as typed: what could be understood, and what is wrong beside which field.
struct CheckedSite
{
    Site site;
    std::map<SiteField, Sentence> problems;
};

struct CheckedUnit
{
    Unit unit;
    std::map<UnitField, Sentence> problems;
};

/// How a site is shown in its form.
[[nodiscard]] SiteInput inputOf(const Site& site, const InputStyle& style);
/// `before` gives the key and what the form does not show; a value whose text was left alone stays exactly as it was. A
/// field that is not in `input` stays too.
[[nodiscard]] CheckedSite checkedSite(const SiteInput& input, const Site& before, const InputStyle& style);

[[nodiscard]] UnitInput inputOf(const Unit& unit);
/// `taken` are the tags of the other units.
[[nodiscard]] CheckedUnit checkedUnit(const UnitInput& input, const Unit& before, const std::set<std::string>& taken,
                                      Date today);

} // namespace padside
