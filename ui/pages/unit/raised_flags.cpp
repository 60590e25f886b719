// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/raised_flags.h"

#include "core/review/unit_review.h"

#include <algorithm>
#include <utility>

namespace padside {

RaisedFlags::RaisedFlags(const UnitRecord& record, const Catalogue& catalogue,
                         std::shared_ptr<const OutlookModel> model)
    : m_record(record)
    , m_catalogue(catalogue)
    , m_model(std::move(model))
{
}

std::vector<Sentence> RaisedFlags::of(const TimelineMark& mark)
{
    if (mark.findings.empty())
        return {};
    const auto [day, isNew] = m_byDay.try_emplace(mark.on);
    if (isNew) {
        for (const Flag& flag : review(m_record, m_catalogue, *m_model, mark.on).flags) {
            if (!flag.evidence.empty())
                day->second.push_back(Raised{flag.evidence.back(), flag.sentence});
        }
    }
    std::vector<Sentence> sentences;
    for (const Raised& raised : day->second) {
        if (std::ranges::find(mark.findings, raised.finding) != mark.findings.end())
            sentences.push_back(raised.sentence);
    }
    return sentences;
}

} // namespace padside
