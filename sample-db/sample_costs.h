// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h"

#include <string>

namespace padside {

class Store;

/// What the contractor of Merrowmouth reckons with, a JSON merge patch as an own catalogue is kept. Every figure is
/// invented: it shows what can be done with costs, and says nothing about what anything costs anywhere.
[[nodiscard]] std::string costsPatch();

/// What they assume of one unit and of what would take its place.
void writeAssumptions(Store& store, const Unit& unit, double yearsOld);

} // namespace padside
