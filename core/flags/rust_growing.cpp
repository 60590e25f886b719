// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/measured_zone.h"
#include "core/flags/rules.h"
#include "core/flags/wording.h"

namespace padside {

std::optional<Worry> rustGrowing(const ZoneView& zone)
{
    const auto measure = zoneMeasure(zone.record, zone.catalogue, zone.part, zone.zone, "rust-share");
    if (!measure || measure->points.size() < 2)
        return std::nullopt;
    const auto& summary = measure->summary;
    const auto rate = summary.ratePerYear ? summary.ratePerYear : summary.lastRatePerYear;
    if (!rate || *rate < zone.catalogue.assumption("rust-growing-share"))
        return std::nullopt;
    const double now = measure->points.back().value;
    Worry worry;
    worry.severity = measure->verdict.judgement == Judgement::outside ? Severity::plan : Severity::look;
    worry.sentence = about(subjectOf(zone), PADSIDE_SAY("{0}{1}, {2}: rusted {3}, {4} more a year."),
                           {Amount{now, QuantityKind::ratio}, Amount{*rate, QuantityKind::ratio}});
    worry.clears = {PADSIDE_SAY("Brushed and coated, or a share that no longer grows."), {}};
    worry.extent = now;
    worry.readings = readingsOf(zone, "rust-share");
    return worry;
}

} // namespace padside
