// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/owner_history.h"

#include "core/quantity/amounts.h"
#include "core/review/record_at.h"
#include "ui/paper/cautions_table.h"
#include "ui/paper/owner_history_content.h"
#include "ui/paper/page_maker.h"
#include "ui/paper/sheet.h"
#include "ui/paper/unit_line.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

void addKnown(std::vector<Fact>& facts, const QString& label, const QString& text)
{
    if (!text.isEmpty())
        facts.push_back({label, text});
}

/// What the treatments of the record cost in all; empty where no cost was written down.
std::optional<double> spentInAll(const UnitRecord& record)
{
    std::optional<double> sum;
    for (const Treatment& treatment : standing(record.treatments)) {
        if (treatment.cost)
            sum = sum.value_or(0) + *treatment.cost;
    }
    return sum;
}

QString installedText(const OwnerView& view)
{
    const auto& installed = view.record.unit.installedOn;
    if (!installed)
        return {};
    const double age = yearsBetween(*installed, view.input.today);
    return OwnerText::tr("%1, %2 years ago")
        .arg(view.words.day(*installed), fromCore(view.input.speaker.number(std::floor(age), 0)));
}

QString visitsText(const OwnerView& view)
{
    const auto& visits = view.record.visits;
    if (visits.empty())
        return OwnerText::tr("none yet");
    return OwnerText::tr("%1, %2 to %3", "number of visits, first day, last day")
        .arg(QString::number(visits.size()), view.words.day(visits.front().on), view.words.day(visits.back().on));
}

TitleBlock ownerTitle(const OwnerView& view)
{
    const Unit& unit = view.record.unit;
    const Site& site = view.record.site;
    TitleBlock title;
    title.contractor = view.input.contractor;
    title.kind = OwnerText::tr("Owner's history");
    title.title = QStringLiteral("%1, %2").arg(fromCore(unit.tag), fromCore(site.name));
    title.subtitle = unitLine(unit, view.input.catalogue, view.input.speaker);
    addKnown(title.facts, OwnerText::tr("Installed"), installedText(view));
    addKnown(title.facts, OwnerText::tr("Visits"), visitsText(view));
    QStringList where{fromCore(site.address), fromCore(unit.place)};
    where.removeAll(QString());
    addKnown(title.facts, OwnerText::tr("Where it stands"), where.join(QStringLiteral("; ")));
    if (const auto spent = spentInAll(view.record))
        addKnown(title.facts, OwnerText::tr("Paid for work"), moneyText(view, *spent));
    if (unit.retiredOn && *unit.retiredOn <= view.input.today)
        title.notice = OwnerText::tr("This unit was retired on %1.").arg(view.words.day(*unit.retiredOn));
    return title;
}

TableBlock ownerCautions(const OwnerView& view)
{
    std::vector<std::string> codes;
    for (const LeadingOutlook& zone : view.input.forecast.leading) {
        const Part* part = findPart(view.record, zone.partId);
        const PartKind* kind = part != nullptr ? view.input.catalogue.partKind(part->kind) : nullptr;
        if (kind != nullptr && zone.spent[static_cast<std::size_t>(Horizon::oneYear)].chance >= 0.1)
            codes.insert(codes.end(), kind->cautions.begin(), kind->cautions.end());
    }
    return cautionsTable(view.input.catalogue, view.input.speaker, codes);
}

} // namespace

QString moneyText(const OwnerView& view, double amount)
{
    return fromCore(view.input.speaker.money(roundMoney(amount)));
}

PaperContent ownerHistoryContent(const OwnerHistoryInput& input)
{
    const UnitRecord record = recordAt(input.record, input.today);
    const OwnerView view{input, record, PartWords(record, input.catalogue, input.speaker)};
    const QString tag = fromCore(record.unit.tag);
    const QString on = view.words.day(input.today);
    PaperContent content;
    content.documentTitle = OwnerText::tr("%1, owner's history, %2").arg(tag, on);
    content.runningHead = QStringLiteral("%1  ·  %2  ·  %3").arg(tag, fromCore(record.site.name), on);
    content.footer = OwnerText::tr("As of %1").arg(on);
    if (!input.contractor.isEmpty())
        content.footer = QStringLiteral("%1  ·  %2").arg(input.contractor, content.footer);

    content.blocks.emplace_back(ownerTitle(view));
    content.blocks.emplace_back(unitPicture(view));
    content.blocks.emplace_back(comesNextSection(view));
    for (PaperBlock& block : worthSections(view))
        content.blocks.push_back(std::move(block));
    if (!record.visits.empty()) {
        content.blocks.emplace_back(timelinePicture(view));
        content.blocks.emplace_back(photoYearsSection(view));
        content.blocks.emplace_back(yearsSection(view));
    }
    content.blocks.emplace_back(ownerCautions(view));
    return content;
}

PaperDocument layOwnerHistory(const OwnerHistoryInput& input)
{
    return makePages(ownerHistoryContent(input), input.size);
}

QString ownerHistoryFileName(const UnitRecord& record)
{
    return pdfFileName(OwnerText::tr("%1 owner's history").arg(fromCore(record.unit.tag)));
}

} // namespace padside
