// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/id.h"

#include <string>

namespace padside {

class Connection;

/// The SHA-256 (64 hexadecimal digits) over a visit and everything entered at it, corrections left out: kept when the
/// visit is closed, so that verify can tell whether a closed visit was changed behind the program's back.
[[nodiscard]] std::string sealOf(Connection& connection, UnitId unit, VisitId visit);

} // namespace padside
