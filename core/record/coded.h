// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace padside {

/// One row of an enum's table: the value, the code the file keeps (never changes), the English word shown.
template <typename Enum> struct Coded
{
    Enum value;
    std::string_view code;
    std::string_view word;
};

/// Each enum of the record has one table `codesOf(Enum{})`, found beside the enum.
template <typename Enum> [[nodiscard]] constexpr std::string_view codeOf(Enum value)
{
    for (const auto& row : codesOf(Enum{})) {
        if (row.value == value)
            return row.code;
    }
    return {};
}

template <typename Enum> [[nodiscard]] constexpr std::string_view wordOf(Enum value)
{
    for (const auto& row : codesOf(Enum{})) {
        if (row.value == value)
            return row.word;
    }
    return {};
}

/// The value with this code; empty if there is none.
template <typename Enum> [[nodiscard]] constexpr std::optional<Enum> fromCode(std::string_view code)
{
    for (const auto& row : codesOf(Enum{})) {
        if (row.code == code)
            return row.value;
    }
    return std::nullopt;
}

} // namespace padside
