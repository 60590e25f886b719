// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/measure.h"

namespace padside::test {

inline const NumberStyle englishNumbers{'.', ","};
inline const NumberStyle germanNumbers{',', "."};

} // namespace padside::test
