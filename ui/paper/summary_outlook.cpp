// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Next checks, cautions.

#include "core/quantity/sentence.h"
#include "ui/paper/cautions_table.h"
#include "ui/paper/visit_summary_content.h"

#include <QStringList>

#include <algorithm>

namespace padside {

namespace {

QString conditionWords(const SummaryView& view, const Check& check)
{
    QStringList words;
    for (const Condition condition : check.conditions)
        words << view.words.word(wordOf(condition));
    return words.join(QStringLiteral(", "));
}

/// The window of a check; one that is over on the day of the review is said to be overdue, not offered as a date.
QString whenWords(const SummaryView& view, const Check& check)
{
    QString latest = view.words.day(check.latest);
    if (check.latest < view.input.review.today)
        return SummaryText::tr("Overdue since %1").arg(latest);
    if (check.earliest == check.latest)
        return latest;
    return SummaryText::tr("%1 to %2").arg(view.words.day(check.earliest), latest);
}

/// Codes of the cautions that belong beside what was worked on.
std::vector<std::string> workedOnCautions(const SummaryView& view)
{
    std::vector<PartId> parts = view.changes.partsFitted;
    for (const Treatment& treatment : view.changes.treatments)
        parts.push_back(treatment.partId);
    std::vector<std::string> codes;
    if (std::ranges::count(view.changes.treatments, TreatmentKind::brushAndCoat, &Treatment::kind) > 0)
        codes.emplace_back("chemicals");
    for (const PartId id : parts) {
        const Part* part = findPart(view.input.record, id);
        const PartKind* kind = part ? view.input.catalogue.partKind(part->kind) : nullptr;
        if (kind)
            codes.insert(codes.end(), kind->cautions.begin(), kind->cautions.end());
    }
    return codes;
}

} // namespace

TableBlock nextChecksSection(const SummaryView& view)
{
    // Paper names what comes first; the whole list is a page of its own in the program.
    constexpr std::size_t mostChecks = 7;
    TableBlock table;
    table.heading = SummaryText::tr("Next checks");
    table.columns = {{SummaryText::tr("What and why"), 2.1, false}, {SummaryText::tr("When"), 1, false}};
    const auto& checks = view.input.review.checks; // by latest date
    for (std::size_t i = 0; i < std::min(checks.size(), mostChecks); ++i) {
        const Check& check = checks[i];
        table.rows.push_back({PaperCell{view.words.said(check.what), view.words.said(check.why), {}, false},
                              PaperCell{whenWords(view, check), capitalised(conditionWords(view, check)), {}, false}});
    }
    if (checks.size() > mostChecks)
        table.closing = SummaryText::tr("Later checks in the record: %1.").arg(checks.size() - mostChecks);
    return table;
}

TableBlock cautionsSection(const SummaryView& view)
{
    return cautionsTable(view.input.catalogue, view.input.speaker, workedOnCautions(view));
}

} // namespace padside
