// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace padside {

/// Minutes since 1970 of "2026-05-04 14:00", "2026-05-04T14:00:30+02:00", "2026/05/04 24:00" or "2026-05-04"; seconds
/// and what follows them are passed over. Empty for anything else, also a day or an hour that does not exist.
[[nodiscard]] std::optional<std::int64_t> weatherMinutes(std::string_view text);

/// The same where date and time stand apart.
[[nodiscard]] std::optional<std::int64_t> weatherMinutes(std::string_view date, std::string_view time);

/// Reads the times of row after row, whose day is mostly that of the row before. The texts must outlive it.
class WeatherClock
{
public:
    /// As weatherMinutes(text).
    [[nodiscard]] std::optional<std::int64_t> minutes(std::string_view text);

private:
    std::string_view m_dayText;
    std::optional<std::int64_t> m_day; ///< of m_dayText
};

} // namespace padside
