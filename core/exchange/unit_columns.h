// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/coded.h"

#include <array>
#include <map>
#include <span>
#include <string>

namespace padside {

/// What a column of a list of units can hold.
enum class UnitField { site, address, tag, kind, maker, model, serial, place, refrigerant, metering, installed, note };

[[nodiscard]] constexpr auto codesOf(UnitField)
{
    return std::array{Coded<UnitField>{UnitField::site, "site", "site"},
                      Coded<UnitField>{UnitField::address, "address", "address"},
                      Coded<UnitField>{UnitField::tag, "tag", "tag"},
                      Coded<UnitField>{UnitField::kind, "kind", "kind"},
                      Coded<UnitField>{UnitField::maker, "maker", "maker"},
                      Coded<UnitField>{UnitField::model, "model", "model"},
                      Coded<UnitField>{UnitField::serial, "serial", "serial number"},
                      Coded<UnitField>{UnitField::place, "place", "place"},
                      Coded<UnitField>{UnitField::refrigerant, "refrigerant", "refrigerant"},
                      Coded<UnitField>{UnitField::metering, "metering", "metering"},
                      Coded<UnitField>{UnitField::installed, "installed", "installed"},
                      Coded<UnitField>{UnitField::note, "note", "note"}};
}

/// Which column holds what; a field without a column is left empty in every unit.
using UnitColumns = std::map<UnitField, std::size_t>;

/// Finds the columns by their headings, whichever way they are capitalised and spaced: our own names and the words
/// people commonly write over such a list ("Manufacturer", "Serial No.", "Location"). The first column that fits wins.
[[nodiscard]] UnitColumns recognisedColumns(std::span<const std::string> headings);

} // namespace padside
