// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/timeline.h"

namespace padside::test {

/// The history of a unit up to the end of 2024.
[[nodiscard]] inline Timeline timelineTo2024(const UnitRecord& record)
{
    return timelineOf(record, smallCatalogue(), day("2024-12-31"));
}

} // namespace padside::test
