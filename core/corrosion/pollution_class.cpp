// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/pollution_class.h"

#include <algorithm>
#include <array>

namespace padside {

namespace {

int classIn(const std::array<double, 4>& upperLimits, double deposition)
{
    return static_cast<int>(std::ranges::lower_bound(upperLimits, deposition) - upperLimits.begin());
}

} // namespace

// ISO 9223:1992 as printed in a handbook of corrosion engineering; ISO 9223:2012 tables B.3 and B.4 in a transcription.
int sulphurDioxideClass(double deposition, StandardEdition edition)
{
    return edition == StandardEdition::of1992 ? classIn({10, 35, 80, 200}, deposition)
                                              : classIn({4, 24, 80, 200}, deposition);
}

int chlorideClass(double deposition)
{
    return classIn({3, 60, 300, 1500}, deposition);
}

} // namespace padside
