// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit.h"

#include <QString>

namespace padside {

class Speaker;

/// "Heat pump  ·  Maker Model  ·  serial 123  ·  R-410A  ·  charge 3.2 kg": what is known of it, on one line.
[[nodiscard]] QString unitLine(const Unit& unit, const Catalogue& catalogue, const Speaker& speaker);

} // namespace padside
