// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/coded.h"

namespace padside {

/// The condition of one zone: an ordinal scale. Only order means anything; each part kind has its own describing
/// sentences.
enum class Grade { sound = 1, worn = 2, marked = 3, poor = 4, spent = 5 };

[[nodiscard]] constexpr auto codesOf(Grade)
{
    return std::array{Coded<Grade>{Grade::sound, "1", "sound"}, Coded<Grade>{Grade::worn, "2", "worn"},
                      Coded<Grade>{Grade::marked, "3", "marked"}, Coded<Grade>{Grade::poor, "4", "poor"},
                      Coded<Grade>{Grade::spent, "5", "spent"}};
}

/// 1..5.
[[nodiscard]] constexpr int numeral(Grade grade)
{
    return static_cast<int>(grade);
}

/// The grade with this numeral; empty outside 1..5.
[[nodiscard]] constexpr std::optional<Grade> gradeFromNumeral(int value)
{
    if (value < 1 || value > 5)
        return std::nullopt;
    return static_cast<Grade>(value);
}

/// Why a zone was not seen.
enum class NotSeenReason { covered, noAccess, iceOrSnow, running, notSafe, noTime, other };

[[nodiscard]] constexpr auto codesOf(NotSeenReason)
{
    return std::array{Coded<NotSeenReason>{NotSeenReason::covered, "covered", "covered by a panel or jacket"},
                      Coded<NotSeenReason>{NotSeenReason::noAccess, "no-access", "no access"},
                      Coded<NotSeenReason>{NotSeenReason::iceOrSnow, "ice-or-snow", "under ice or snow"},
                      Coded<NotSeenReason>{NotSeenReason::running, "running", "unit had to keep running"},
                      Coded<NotSeenReason>{NotSeenReason::notSafe, "not-safe", "not safe to open"},
                      Coded<NotSeenReason>{NotSeenReason::noTime, "no-time", "no time"},
                      Coded<NotSeenReason>{NotSeenReason::other, "other", "another reason"}};
}

enum class Wetness { dry, damp, wet };

[[nodiscard]] constexpr auto codesOf(Wetness)
{
    return std::array{Coded<Wetness>{Wetness::dry, "dry", "dry"}, Coded<Wetness>{Wetness::damp, "damp", "damp"},
                      Coded<Wetness>{Wetness::wet, "wet", "wet"}};
}

/// Before or after the day's work.
enum class Phase { asFound, asLeft };

[[nodiscard]] constexpr auto codesOf(Phase)
{
    return std::array{Coded<Phase>{Phase::asFound, "as-found", "as found"},
                      Coded<Phase>{Phase::asLeft, "as-left", "as left"}};
}

} // namespace padside
