// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/visit.h"

#include <QString>

#include <optional>

namespace padside {

/// Where in the window the person is: a unit's page, one of its visits or that visit's summary, the season, the
/// fleet, the track record or the rates beside it. The unit is the one chosen in the list, also where the list is
/// hidden.
struct Place
{
    enum class Page { unit, visit, summary, season, fleet, track, rates };

    Page page = Page::unit;
    UnitId unit;
    VisitId visit; ///< null where the page is not a visit's

    friend bool operator==(const Place&, const Place&) = default;
};

/// One word for the settings file: "visit/<unit>/<visit>".
[[nodiscard]] QString placeText(const Place& place);

/// Reads what placeText writes; anything else is empty.
[[nodiscard]] std::optional<Place> parsePlace(const QString& text);

} // namespace padside
