// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/verdict/measured.h"

#include <optional>
#include <string_view>

namespace padside {

/// Why superheat and subcooling say nothing about the charge at this visit: not cooling, or too cold outdoors. Empty if
/// they do.
[[nodiscard]] std::optional<Sentence> whyNoChargeTest(const Measured& measured);

/// Why the pressure taken has no saturation temperature: refrigerant unknown, or outside its curve. Empty where the
/// pressure was not taken, or has one.
[[nodiscard]] std::optional<Sentence> whyNoSaturation(const Measured& measured, std::string_view pressureKind);

} // namespace padside
