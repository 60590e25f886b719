// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/installed_day.h"

namespace padside {

namespace {

constexpr int firstYear = 1900; // no outdoor unit is older; "0208" is a slip

} // namespace

Result<Date> readInstalledDay(std::string_view text, Date today)
{
    std::string whole(text);
    if (whole.size() == 4)
        whole += "-01-01";
    else if (whole.size() == 7)
        whole += "-01";
    const std::optional<Date> day = parseDate(whole);
    if (!day)
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("“{0}” is not a date that can be read: write it like 2008-06-14, 2008-06 or 2008."),
                       {std::string(text)});
    if (*day > today)
        return problem(ProblemKind::badInput, PADSIDE_SAY("{0} lies in the future: check the date."), {*day});
    if (yearOf(*day) < firstYear)
        return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” lies before 1900: check the year."),
                       {std::string(text)});
    return *day;
}

} // namespace padside
