// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/since_learning.h"

namespace padside {

namespace {

Sentence sinceWhen(const SinceLearning& learning, bool judged)
{
    if (learning.first == learning.last) {
        return {judged ? PADSIDE_SAY("This rests on the forecasts made with the lives in use now: those since {0}, "
                                     "when they were learned from your records.")
                       : PADSIDE_SAY("They were learned from your records on {0}."),
                {learning.first}};
    }
    return {judged ? PADSIDE_SAY("This rests on the forecasts made with the lives in use now: those since they were "
                                 "learned from your records, part kind by part kind from {0} to {1}.")
                   : PADSIDE_SAY("They were learned from your records, part kind by part kind from {0} to {1}."),
            {learning.first, learning.last}};
}

} // namespace

std::vector<Sentence> SinceLearning::told(const TrackVerdict& verdictInUse) const
{
    std::vector<Sentence> all{sinceWhen(*this, isJudged(verdictInUse.kind)), verdictBefore.sentence};
    if (someNeverLearnt)
        all.push_back({PADSIDE_SAY("Part kinds whose lives were not learned count with all their forecasts."), {}});
    all.push_back({PADSIDE_SAY("Which lives an old forecast was made with is told by its day alone."), {}});
    return all;
}

} // namespace padside
