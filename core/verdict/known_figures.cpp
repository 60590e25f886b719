// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/verdict/known_figures.h"

#include <algorithm>
#include <cassert>

namespace padside {

double limitOf(const Catalogue& catalogue, std::string_view code)
{
    const ReadingLimit* found = catalogue.readingLimit(code);
    assert(found != nullptr && "a limit that is asked for must be in the catalogue");
    return found->si;
}

std::optional<double> plateOf(const Unit& unit, std::string_view item)
{
    const auto found = std::ranges::find(unit.nameplate, item, &NameplateValue::item);
    return found == unit.nameplate.end() ? std::nullopt : std::optional(found->value.si);
}

} // namespace padside
