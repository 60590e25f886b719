// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/acknowledge.h"

#include <algorithm>

namespace padside {

namespace {

/// The rule as acknowledgements name it: with the aspect behind a stroke, where it has several.
std::string nameOfRule(const Flag& flag)
{
    return flag.aspect.empty() ? flag.rule : flag.rule + "/" + flag.aspect;
}

} // namespace

Acknowledgement acknowledgementOf(const Flag& flag)
{
    Acknowledgement acknowledgement;
    acknowledgement.unitId = flag.unitId;
    acknowledgement.rule = nameOfRule(flag);
    acknowledgement.partId = flag.partId;
    acknowledgement.zoneId = flag.zoneId;
    acknowledgement.severity = flag.severity;
    acknowledgement.grade = flag.grade;
    acknowledgement.extent = flag.extent;
    return acknowledgement;
}

bool stillHolds(const Acknowledgement& acknowledgement, const Flag& flag, const Catalogue& catalogue)
{
    if (acknowledgement.takenBackAt || acknowledgement.rule != nameOfRule(flag) || acknowledgement.partId != flag.partId
        || acknowledgement.zoneId != flag.zoneId)
        return false;
    const bool severer = flag.severity > acknowledgement.severity;
    const bool worse = flag.grade && (!acknowledgement.grade || *flag.grade > *acknowledgement.grade);
    const double share = std::max(0.0, catalogue.assumption("acknowledged-worse-share"));
    const bool larger = flag.extent && acknowledgement.extent && *flag.extent > *acknowledgement.extent * (1 + share);
    return !severer && !worse && !larger;
}

void markAcknowledged(std::vector<Flag>& flags, std::span<const Acknowledgement> acknowledgements,
                      const Catalogue& catalogue)
{
    for (Flag& flag : flags) {
        for (const Acknowledgement& one : acknowledgements) { // by the time they were made
            if (stillHolds(one, flag, catalogue))
                flag.acknowledged = FlagAcknowledged{one.id, localDate(one.at), one.technician, one.reason};
        }
    }
    std::ranges::stable_sort(flags, {}, [](const Flag& flag) { return flag.acknowledged.has_value(); });
}

std::size_t standingFlags(std::span<const Flag> flags)
{
    return static_cast<std::size_t>(std::ranges::count_if(flags, [](const Flag& flag) { return !flag.acknowledged; }));
}

} // namespace padside
