// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"

#include <string>

namespace padside::test {

/// A catalogue of five part kinds, small enough to hold in the head, with the assumptions at known values:
///   suction-accumulator  crown, shell, bottom   loss of charge, ends the unit; spare fair
///   fan-blade            root                   safety; spare easy
///   fins                 face (dirt)            loss of cooling; no spare
///   base-pan             corners                nuisance; no spare
///   run-capacitor        case                   loss of cooling; spare easy
/// `ownChanges` is a JSON merge patch laid over it.
[[nodiscard]] Catalogue smallCatalogue(const std::string& ownChanges = {});

} // namespace padside::test
