// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/toll.h"

#include <algorithm>

namespace padside {

namespace {

Toll tollOfOne(Consequence consequence)
{
    switch (consequence) {
    case Consequence::looks:
        return Toll::looks;
    case Consequence::nuisance:
        return Toll::nuisance;
    case Consequence::lossOfCooling:
    case Consequence::safety:
        return Toll::cooling;
    case Consequence::lossOfCharge:
    case Consequence::compressorAtRisk:
        return Toll::charge;
    case Consequence::endsUnit:
        return Toll::unit;
    }
    return Toll::looks;
}

} // namespace

Toll tollOf(const PartKind& kind)
{
    Toll worst = Toll::looks;
    for (const Consequence consequence : kind.consequences)
        worst = std::max(worst, tollOfOne(consequence));
    return worst;
}

} // namespace padside
