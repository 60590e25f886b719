// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/corrosion_category.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace padside {

namespace {

/// The upper limits of C1 to CX.
using Limits = std::array<double, 6>;

constexpr double noLimit = std::numeric_limits<double>::infinity();

CorrosionCategory categoryIn(const Limits& limits, double loss)
{
    assert(loss >= 0);
    const auto place = std::ranges::lower_bound(limits, loss) - limits.begin(); // a limit itself belongs below it
    return static_cast<CorrosionCategory>(place);
}

} // namespace

// ISO 9223:2012, table 2. Steel and zinc up to C5 read in transcriptions of the standard; zinc CX, copper and aluminium
// from memory of it.
CorrosionCategory categoryByDepth(Metal metal, double micrometres)
{
    assert(metal != Metal::aluminium);
    switch (metal) {
    case Metal::zinc:
        return categoryIn({0.1, 0.7, 2.1, 4.2, 8.4, 25}, micrometres);
    case Metal::copper:
        return categoryIn({0.1, 0.6, 1.3, 2.8, 5.6, 10}, micrometres);
    case Metal::steel:
    case Metal::aluminium:
        break;
    }
    return categoryIn({1.3, 25, 50, 80, 200, 700}, micrometres);
}

CorrosionCategory categoryByMass(Metal metal, double gramsPerM2)
{
    switch (metal) {
    case Metal::zinc:
        return categoryIn({0.7, 5, 15, 30, 60, 180}, gramsPerM2);
    case Metal::copper:
        return categoryIn({0.9, 5, 12, 25, 50, 90}, gramsPerM2);
    case Metal::aluminium:
        return categoryIn({0, 0.6, 2, 5, 10, noLimit}, gramsPerM2);
    case Metal::steel:
        break;
    }
    return categoryIn({10, 200, 400, 650, 1500, 5500}, gramsPerM2);
}

} // namespace padside
