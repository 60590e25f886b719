// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/unit_choice.h"

#include <QString>

class QSettings;

namespace padside {

/// Which units a person chose for all quantities together; usual: those of where the computer says it is.
enum class UnitHabit { usual, metric, usCustomary };

/// What a person likes, whichever file is open. Empty means: as usual where the computer stands.
struct Preferences
{
    QString technician; ///< signs visits
    QString contractor; ///< heads the paper
    QString paperSize; ///< "a4" or "letter"
    QString currency; ///< the name or sign that amounts of money have; empty: none
    QString language; ///< a Language's code
    QString theme; ///< the code of one: "light", "dark" or "sunlight"
    bool fieldSize = false; ///< large, for touch and gloves
    UnitHabit units = UnitHabit::usual;
    std::map<QuantityKind, std::string> ownUnits; ///< unit codes

    friend bool operator==(const Preferences&, const Preferences&) = default;
};

/// Reads what is kept; what can't be understood counts as not chosen.
[[nodiscard]] Preferences readPreferences(const QSettings& settings);
void keepPreferences(const Preferences& preferences, QSettings& settings);

/// The units that follow from the habit where `usual` is the custom.
[[nodiscard]] UnitChoice unitChoice(const Preferences& preferences, UnitSystem usual);

} // namespace padside
