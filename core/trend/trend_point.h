// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace padside {

/// One value of a measured series. Both numbers are finite: readings and files are checked where they come in.
struct TrendPoint
{
    double time = 0; ///< any unit; slopes are per this unit (days since 1970-01-01 in the record)
    double value = 0;

    friend bool operator==(const TrendPoint&, const TrendPoint&) = default;
};

} // namespace padside
