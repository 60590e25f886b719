// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/corrosion/metal.h"

namespace padside {

/// Corrosivity of an atmosphere, ISO 9223:2012. A loss above the limit of CX lies outside the standard's table and is
/// said so, never called CX.
enum class CorrosionCategory { c1, c2, c3, c4, c5, cx, aboveCx };

[[nodiscard]] constexpr auto codesOf(CorrosionCategory)
{
    using enum CorrosionCategory;
    return std::array{Coded<CorrosionCategory>{c1, "C1", "C1"},
                      Coded<CorrosionCategory>{c2, "C2", "C2"},
                      Coded<CorrosionCategory>{c3, "C3", "C3"},
                      Coded<CorrosionCategory>{c4, "C4", "C4"},
                      Coded<CorrosionCategory>{c5, "C5", "C5"},
                      Coded<CorrosionCategory>{cx, "CX", "CX"},
                      Coded<CorrosionCategory>{aboveCx, "above CX", "above CX"}};
}

/// The category of a first-year loss in µm (steel, zinc, copper): the limits of ISO 9223:2012 table 2, the upper one of
/// each category included. `micrometres` >= 0. Aluminium has no limits in µm (its attack is local, a mean depth
/// misleads) and must not be asked for.
[[nodiscard]] CorrosionCategory categoryByDepth(Metal metal, double micrometres);

/// The category of a first-year loss in g/m² (all four). The standard rounds its two sets of limits apart from each
/// other, so neither is worked out from the other. Aluminium: C1 is "negligible" (no loss at all here), and CX has no
/// upper limit.
[[nodiscard]] CorrosionCategory categoryByMass(Metal metal, double gramsPerM2);

} // namespace padside
