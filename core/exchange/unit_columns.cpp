// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/unit_columns.h"

#include <algorithm>
#include <cctype>

namespace padside {

namespace {

struct Heading
{
    std::string_view text; ///< lower case, letters and digits only
    UnitField field;
};

constexpr std::array otherHeadings{
    Heading{"customer", UnitField::site},
    Heading{"sitename", UnitField::site},
    Heading{"building", UnitField::site},
    Heading{"siteaddress", UnitField::address},
    Heading{"street", UnitField::address},
    Heading{"unit", UnitField::tag},
    Heading{"unittag", UnitField::tag},
    Heading{"name", UnitField::tag},
    Heading{"type", UnitField::kind},
    Heading{"unitkind", UnitField::kind},
    Heading{"unittype", UnitField::kind},
    Heading{"make", UnitField::maker},
    Heading{"manufacturer", UnitField::maker},
    Heading{"brand", UnitField::maker},
    Heading{"modelno", UnitField::model},
    Heading{"modelnumber", UnitField::model},
    Heading{"serialno", UnitField::serial},
    Heading{"serialnumber", UnitField::serial},
    Heading{"sn", UnitField::serial},
    Heading{"location", UnitField::place},
    Heading{"position", UnitField::place},
    Heading{"where", UnitField::place},
    Heading{"charge", UnitField::refrigerant},
    Heading{"gas", UnitField::refrigerant},
    Heading{"meteringdevice", UnitField::metering},
    Heading{"installedon", UnitField::installed},
    Heading{"installdate", UnitField::installed},
    Heading{"dateinstalled", UnitField::installed},
    Heading{"year", UnitField::installed},
    Heading{"yearinstalled", UnitField::installed},
    Heading{"notes", UnitField::note},
    Heading{"remark", UnitField::note},
    Heading{"remarks", UnitField::note},
    Heading{"comment", UnitField::note},
};

std::string bare(std::string_view text)
{
    std::string letters;
    for (const char character : text) {
        const auto byte = static_cast<unsigned char>(character);
        if (std::isalnum(byte) != 0)
            letters += static_cast<char>(std::tolower(byte));
    }
    return letters;
}

std::optional<UnitField> fieldOf(const std::string& heading)
{
    for (const auto& row : codesOf(UnitField{})) {
        if (heading == row.code)
            return row.value;
    }
    const auto found = std::ranges::find(otherHeadings, std::string_view(heading), &Heading::text);
    return found == otherHeadings.end() ? std::nullopt : std::optional(found->field);
}

} // namespace

UnitColumns recognisedColumns(std::span<const std::string> headings)
{
    UnitColumns columns;
    for (std::size_t i = 0; i < headings.size(); ++i) {
        if (const auto field = fieldOf(bare(headings[i])))
            columns.emplace(*field, i);
    }
    return columns;
}

} // namespace padside
