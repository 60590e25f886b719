// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/fleet_field.h"
#include "ui/models/fleet_model.h"

#include <QStringList>

#include <optional>

namespace padside {

/// The tolls as they are called, mildest first.
[[nodiscard]] QStringList tollNames(const LocalSpeaker& speaker);

/// A unit's place in the field at a horizon; empty while it is not reviewed, for a retired one, and for one without an
/// outlook.
[[nodiscard]] std::optional<FieldUnit> fieldUnit(const FleetLine& line, Horizon horizon);

/// Why a unit is where it is: the part that speaks for it, its chance by a day, what that would mean, and the chance
/// that the unit stops. The line must have a place in the field.
[[nodiscard]] QString fieldSentence(const FleetLine& line, Horizon horizon, Date today, const Catalogue& catalogue,
                                    const LocalSpeaker& speaker);

} // namespace padside
