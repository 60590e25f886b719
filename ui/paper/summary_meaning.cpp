// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What the readings mean: those past the usual or in doubt, what they may point to, and how many were as asked for.

#include "core/review/record_at.h"
#include "core/verdict/suspicion.h"
#include "core/verdict/verdicts.h"
#include "core/verdict/zone_measure.h"
#include "ui/paper/visit_summary_content.h"

#include <algorithm>

namespace padside {

namespace {

PaperCell cell(const QString& text, const QString& under = {})
{
    return PaperCell{text, under, {}, false};
}

/// Sorts what was said of the readings of one phase into rows and a count.
class Meanings
{
public:
    Meanings(const SummaryView& view, TableBlock& table)
        : m_view(view)
        , m_table(table)
    {
    }

    void tell(const Verdict& verdict, Phase phase, const QString& where = {})
    {
        if (verdict.judgement == Judgement::within)
            ++m_within;
        if (verdict.judgement == Judgement::within || verdict.judgement == Judgement::unjudged)
            return;
        QString judged = capitalised(m_view.words.word(wordOf(verdict.judgement)));
        if (phase == Phase::asLeft)
            judged += QStringLiteral(", ") + m_view.words.word(wordOf(Phase::asLeft));
        QString said = m_view.words.said(verdict.sentence);
        if (!where.isEmpty())
            said = where + QStringLiteral(": ") + said;
        m_table.rows.push_back({cell(judged), cell(said, m_view.words.word(verdict.source))});
    }

    void tellPhase(Phase phase)
    {
        const Measured measured = measuredAt(m_view.input.record, m_view.visit, phase, m_view.input.catalogue);
        const auto verdicts = verdictsOn(measured);
        for (const Verdict& verdict : verdicts)
            tell(verdict, phase);
        const auto suspicions = suspicionsFrom(verdicts, m_view.input.record.unit);
        if (suspicions.empty())
            return;
        m_table.rows.push_back({cell(SummaryText::tr("May point to")),
                                cell(SummaryText::tr("%1. What would decide: %2")
                                         .arg(capitalised(m_view.words.word(suspicions.front().name)),
                                              m_view.words.said(suspicions.front().decides)),
                                     SummaryText::tr("A hint from common practice, not a verdict."))});
    }

    void tellZones()
    {
        const UnitRecord past = recordAt(m_view.input.record, m_view.visit.on);
        for (const ReadingChange& change : m_view.changes.readings) {
            const Reading& reading = change.reading;
            const Part* part = reading.zoneId ? partOfZone(past, *reading.zoneId) : nullptr;
            const Zone* zone = reading.zoneId ? findZone(past, *reading.zoneId) : nullptr;
            if (part == nullptr || zone == nullptr)
                continue;
            if (const auto measure = zoneMeasure(past, m_view.input.catalogue, *part, *zone, reading.kind))
                tell(measure->verdict, reading.phase, m_view.words.zone(zone->id));
        }
    }

    [[nodiscard]] int within() const { return m_within; }

private:
    const SummaryView& m_view;
    TableBlock& m_table;
    int m_within = 0;
};

} // namespace

TableBlock meaningSection(const SummaryView& view)
{
    TableBlock table;
    table.heading = SummaryText::tr("What the readings mean");
    table.columns = {{{}, 0.5, false}, {{}, 2.5, false}};
    Meanings meanings(view, table);
    const bool anyLeft = std::ranges::any_of(view.changes.readings, [](const ReadingChange& change) {
        return change.reading.phase == Phase::asLeft && !change.reading.zoneId;
    });
    meanings.tellPhase(Phase::asFound);
    if (anyLeft)
        meanings.tellPhase(Phase::asLeft);
    meanings.tellZones();
    if (!table.rows.empty() && meanings.within() > 0)
        table.closing = SummaryText::tr("Other readings, as asked for: %1.").arg(meanings.within());
    return table;
}

} // namespace padside
