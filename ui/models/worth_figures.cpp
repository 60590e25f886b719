// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/worth_figures.h"

#include "core/store/own_catalogue.h"
#include "core/store/store.h"
#include "resources/resources.h"

namespace padside {

CostFigures costsIn(Store& store)
{
    const auto shipped = shippedCatalogue();
    if (auto costs = costFigures(shipped, store.ownCatalogue().changes()))
        return *std::move(costs);
    return costFigures(shipped).value(); // ours is built in and tested
}

} // namespace padside
