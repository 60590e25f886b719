// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/sentence.h"
#include "ui/paper/unit_line.h"
#include "ui/paper/visit_summary_content.h"

#include <QStringList>

namespace padside {

namespace {

QString weather(const SummaryView& view)
{
    const Conditions& conditions = view.visit.conditions;
    QStringList parts;
    if (conditions.airTemperatureK)
        parts << view.words.amount(*conditions.airTemperatureK, QuantityKind::temperature);
    if (conditions.relativeHumidity)
        parts << SummaryText::tr("%1 % humidity")
                     .arg(fromCore(view.input.speaker.number(*conditions.relativeHumidity * 100, 0)));
    if (conditions.sky != Sky::unknown)
        parts << view.words.word(wordOf(conditions.sky));
    return parts.isEmpty() ? view.words.word(wordOf(Sky::unknown)) : parts.join(QStringLiteral(", "));
}

void addFact(std::vector<Fact>& facts, const char* label, const QString& text)
{
    if (!text.isEmpty())
        facts.push_back({SummaryText::tr(label), text});
}

/// Until when the unit must stay off, over all of the day's coatings.
std::optional<Instant> lastDryBy(const VisitChanges& changes)
{
    std::optional<Instant> last;
    for (const Treatment& treatment : changes.treatments) {
        if (treatment.dryBy && (!last || last->utc < treatment.dryBy->utc))
            last = treatment.dryBy;
    }
    return last;
}

} // namespace

TitleBlock titleSection(const SummaryView& view)
{
    const Unit& unit = view.input.record.unit;
    const Site& site = view.input.record.site;
    TitleBlock title;
    title.contractor = view.input.contractor;
    title.kind = SummaryText::tr("Visit summary");
    title.title = QStringLiteral("%1, %2").arg(fromCore(unit.tag), fromCore(site.name));
    title.subtitle = unitLine(unit, view.input.catalogue, view.input.speaker);
    addFact(title.facts, QT_TRANSLATE_NOOP("VisitSummary", "Visit"),
            SummaryText::tr("%1, %2").arg(view.words.day(view.visit.on), view.words.word(wordOf(view.visit.reason))));
    addFact(title.facts, QT_TRANSLATE_NOOP("VisitSummary", "Technician"), fromCore(view.visit.technician));
    addFact(title.facts, QT_TRANSLATE_NOOP("VisitSummary", "Weather"), weather(view));
    addFact(title.facts, QT_TRANSLATE_NOOP("VisitSummary", "Unit on arrival"),
            view.words.word(wordOf(view.visit.conditions.running)));
    addFact(title.facts, QT_TRANSLATE_NOOP("VisitSummary", "Address"), fromCore(site.address));
    addFact(title.facts, QT_TRANSLATE_NOOP("VisitSummary", "Place of the unit"), fromCore(unit.place));
    addFact(title.facts, QT_TRANSLATE_NOOP("VisitSummary", "Installed"),
            unit.installedOn ? view.words.day(*unit.installedOn) : QString());

    QStringList notices;
    if (const auto dryBy = lastDryBy(view.changes))
        notices << SummaryText::tr("Keep the unit off and dry until %1.").arg(view.words.timeOn(*dryBy, view.visit.on));
    if (view.visit.isOpen())
        notices << SummaryText::tr("This visit is still open: the summary may change.");
    title.notice = notices.join(QLatin1Char('\n'));
    return title;
}

} // namespace padside
