// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/date.h"

#include <cstdint>
#include <functional>

namespace padside {

class Catalogue;
class Store;

/// What sample to build.
struct SampleOptions
{
    int units = 14; ///< at least 1
    int years = 8; ///< at least 1
    std::uint64_t seed = 20261120;
    Date lastDay = std::chrono::sys_days(std::chrono::year{2026} / 11 / 20); ///< "today" in the sample
    bool photographs = true;
};

/// Fills an empty store with the invented record of Merrowmouth, a harbour town with a contractor of two: sites between
/// the harbour wall and a hill farm, units with their stories, visits each spring and fall, photographs drawn by code.
/// The same options give the same content, whatever the day and the machine's clock.
///
/// From two years before the last day on, forecasts rest on lives learned from the record and accepted (in the own
/// catalogue, with costs), where it has at least five years.
///
/// Beyond 14 units the scenario repeats with other tags, dates and grades; only the first 14 units have photographs
/// and a track record, so that thousands of units build quickly. The catalogue must be the shipped one or one laid over
/// it. `progress` gets 0..1 and answers false to stop early: what is then in the store is whole as far as it goes.
/// Throws StoreError.
void buildSample(Store& store, const Catalogue& catalogue, const SampleOptions& options,
                 const std::function<bool(double)>& progress);

} // namespace padside
