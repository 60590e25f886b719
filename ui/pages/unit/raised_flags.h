// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/outlook_model.h"
#include "core/record/unit_record.h"
#include "ui/drawing/timeline.h"

#include <map>
#include <memory>
#include <vector>

namespace padside {

/// The flags that findings raised when they were made: each visit is judged by what was known at its end.
class RaisedFlags
{
public:
    RaisedFlags(const UnitRecord& record, const Catalogue& catalogue, std::shared_ptr<const OutlookModel> model);

    /// The sentences of the flags whose newest evidence is among the mark's findings. Judged when first asked for, then
    /// kept.
    [[nodiscard]] std::vector<Sentence> of(const TimelineMark& mark);

private:
    struct Raised
    {
        FindingId finding;
        Sentence sentence;
    };

    const UnitRecord& m_record;
    const Catalogue& m_catalogue;
    std::shared_ptr<const OutlookModel> m_model;
    std::map<Date, std::vector<Raised>> m_byDay;
};

} // namespace padside
