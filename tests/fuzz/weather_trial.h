// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <string_view>

namespace padside::test {

/// Reads any bytes as a weather file, takes the means of its year and says all there is to say. Answers what is wrong
/// with the answer; empty if all is well: either a year of finite, possible numbers, or one sentence.
[[nodiscard]] std::string faultOfWeather(std::string_view bytes);

} // namespace padside::test
