// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/visit_summary_content.h"

#include <cassert>

namespace padside {

namespace {

void addTable(PaperContent& content, TableBlock table)
{
    if (!table.rows.empty() || !table.closing.isEmpty())
        content.blocks.emplace_back(std::move(table));
}

TableBlock noteSection(const SummaryView& view)
{
    TableBlock table{SummaryText::tr("Note"), {PaperColumn{}}, {}, {}};
    if (!view.visit.note.empty())
        table.rows.push_back({PaperCell{fromCore(view.visit.note), {}, {}, false}});
    return table;
}

SignatureBlock signatureSection()
{
    return {{SummaryText::tr("Technician"), SummaryText::tr("Customer"), SummaryText::tr("Date")}};
}

} // namespace

PaperContent visitSummaryContent(const SummaryInput& input)
{
    return visitSummaryContent(input, visitChanges(input.record, input.catalogue, input.visit));
}

PaperContent visitSummaryContent(const SummaryInput& input, const VisitChanges& changes)
{
    const Visit* visit = findVisit(input.record, input.visit);
    assert(visit);
    const SummaryView view{input, changes, *visit, PartWords(input.record, input.catalogue, input.speaker)};
    const QString tag = fromCore(input.record.unit.tag);
    const QString site = fromCore(input.record.site.name);
    const QString on = view.words.day(visit->on);

    PaperContent content;
    content.documentTitle = SummaryText::tr("%1, visit summary, %2").arg(tag, on);
    content.runningHead = QStringLiteral("%1  ·  %2  ·  %3").arg(tag, site, on);
    content.footer = SummaryText::tr("Printed %1").arg(view.words.day(input.printedOn));
    if (!input.contractor.isEmpty())
        content.footer = QStringLiteral("%1  ·  %2").arg(input.contractor, content.footer);

    // First what a customer has to decide on and has paid for, then the evidence.
    content.blocks.emplace_back(titleSection(view));
    addTable(content, noteSection(view));
    addTable(content, flagsSection(view));
    addTable(content, workSection(view));
    addTable(content, refrigerantSection(view));
    if (OutlookBlock outlook = outlookSection(view); !outlook.text.isEmpty())
        content.blocks.emplace_back(std::move(outlook));
    if (PhotoBlock photos = photoSection(view); !photos.pairs.empty() || !photos.closing.isEmpty())
        content.blocks.emplace_back(std::move(photos));
    addTable(content, nextChecksSection(view));
    addTable(content, changedSection(view));
    addTable(content, readingsSection(view));
    addTable(content, meaningSection(view));
    addTable(content, cautionsSection(view));
    content.blocks.emplace_back(signatureSection());
    return content;
}

} // namespace padside
