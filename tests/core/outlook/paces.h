// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/pace.h"

#include <memory>

namespace padside::test {

/// The usual nodes of a pace with this spread.
[[nodiscard]] inline std::shared_ptr<const Pace> paceOf(double sigma)
{
    return std::make_shared<const Pace>(*logNormalPace(sigma));
}

} // namespace padside::test
