// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Readings, work done, refrigerant.

#include "core/ledger/unit_ledger.h"
#include "core/quantity/unit.h"
#include "ui/paper/visit_summary_content.h"

#include <QStringList>

#include <algorithm>
#include <string_view>

namespace padside {

namespace {

PaperCell plain(const QString& text, const QString& under = {})
{
    return PaperCell{text, under, {}, false};
}

PaperCell small(const QString& text, const QString& under = {})
{
    return PaperCell{text, under, {}, false, true};
}

/// Whether the unit has another part the reading could be of.
bool couldBeOfAnother(const SummaryView& view, const PartId& id)
{
    const Part* of = findPart(view.input.record, id);
    return of != nullptr && std::ranges::any_of(view.input.record.parts, [&](const Part& part) {
               return part.kind == of->kind && part.id != id && (!part.fittedOn || *part.fittedOn <= view.visit.on)
                   && (!part.removedOn || *part.removedOn > view.visit.on);
           });
}

QString readingName(const SummaryView& view, const Reading& reading)
{
    const ReadingKind* kind = view.input.catalogue.readingKind(reading.kind);
    QString name = capitalised(view.words.word(kind ? kind->name : reading.kind));
    if (reading.zoneId)
        name += QStringLiteral(": ") + view.words.zone(*reading.zoneId);
    else if (reading.partId && couldBeOfAnother(view, *reading.partId))
        name += QStringLiteral(": ") + view.words.part(*reading.partId);
    if (reading.phase == Phase::asLeft)
        name += QStringLiteral(", ") + view.words.word(wordOf(Phase::asLeft));
    return name;
}

QString withoutSpaces(QString text)
{
    return text.remove(QLatin1Char(' ')).remove(QChar(0x00A0)).toLower();
}

/// Digits behind the point of a number as it was typed ("4.84 µF": 2).
int decimalsTyped(std::string_view typed)
{
    const std::size_t point = typed.find_first_of(".,");
    if (point == std::string_view::npos)
        return 0;
    const std::string_view behind = typed.substr(point + 1);
    const auto end = std::ranges::find_if_not(behind, [](char one) { return one >= '0' && one <= '9'; });
    return static_cast<int>(end - behind.begin());
}

/// The value in the reader's unit, and as it was typed where that was in another one. Of the same unit, what was typed
/// finer than usual is shown as fine.
QString readingValue(const SummaryView& view, const Reading& reading)
{
    QString shown = view.words.amount(reading.value.si, reading.value.kind);
    const QString typed = fromCore(reading.value.typed);
    if (typed.isEmpty() || withoutSpaces(typed) == withoutSpaces(shown))
        return shown;
    const MeasuringUnit* unit = unitByCode(reading.value.unitCode);
    if (unit && !unit->symbol.empty() && shown.endsWith(u' ' + fromCore(unit->symbol))) {
        constexpr int most = 3;
        const int decimals = std::min(decimalsTyped(reading.value.typed), most);
        if (decimals <= unit->decimals)
            return shown;
        return fromCore(view.input.speaker.number(fromSi(reading.value.si, *unit), decimals)) + u' '
            + fromCore(unit->symbol);
    }
    return SummaryText::tr("%1 (typed: %2)").arg(shown, typed);
}

const ZoneChange* changeOf(const SummaryView& view, const std::optional<ZoneId>& zone)
{
    if (!zone)
        return nullptr;
    const auto found = std::ranges::find(view.changes.zones, *zone, &ZoneChange::zoneId);
    return found == view.changes.zones.end() ? nullptr : &*found;
}

/// As found → as left; an empty outline where it was not graded.
std::vector<Mark> foundAndLeft(const SummaryView& view, const Treatment& treatment)
{
    const ZoneChange* change = changeOf(view, treatment.zoneId);
    if (!change || (!change->asFound && !change->asLeft))
        return {};
    return {change->asFound ? Mark(*change->asFound) : Mark(NoMark{}),
            change->asLeft ? Mark(*change->asLeft) : Mark(NoMark{})};
}

} // namespace

TableBlock readingsSection(const SummaryView& view)
{
    TableBlock table;
    table.heading = SummaryText::tr("Readings");
    table.columns = {{SummaryText::tr("Reading"), 1.7, false},
                     {SummaryText::tr("Today"), 1, false},
                     {SummaryText::tr("Last time"), 1, false}};
    for (const ReadingChange& change : view.changes.readings) {
        QString last = QStringLiteral("–");
        if (change.before)
            last = SummaryText::tr("%1 on %2")
                       .arg(view.words.amount(change.before->value.si, change.before->value.kind),
                            view.words.day(change.before->on));
        table.rows.push_back({small(readingName(view, change.reading)),
                              small(readingValue(view, change.reading), fromCore(change.reading.note)), small(last)});
    }
    return table;
}

TableBlock workSection(const SummaryView& view)
{
    TableBlock table;
    table.heading = SummaryText::tr("Work done");
    table.columns = {{SummaryText::tr("Where"), 1, false},
                     {SummaryText::tr("Found, left"), 1, true},
                     {SummaryText::tr("What"), 1.8, false}};
    QStringList fitted;
    for (const PartId part : view.changes.partsFitted)
        fitted << view.words.part(part);
    for (const Treatment& treatment : view.changes.treatments) {
        const QString where = treatment.zoneId ? view.words.zone(*treatment.zoneId) : view.words.part(treatment.partId);
        QString what = capitalised(view.words.word(wordOf(treatment.kind)));
        if (!treatment.product.empty())
            what += QStringLiteral(": ") + fromCore(treatment.product);
        QStringList under;
        if (treatment.kind == TreatmentKind::replace
            && fitted.removeOne(view.words.part(treatment.partId))) // old and new part in one row
            under << SummaryText::tr("New part fitted.");
        if (treatment.dryBy)
            under << SummaryText::tr("Keep off and dry until %1.")
                         .arg(view.words.timeOn(*treatment.dryBy, view.visit.on));
        if (!treatment.note.empty())
            under << fromCore(treatment.note);
        table.rows.push_back({plain(where), PaperCell{{}, {}, foundAndLeft(view, treatment), false},
                              plain(what, under.join(QLatin1Char(' ')))});
    }
    for (const QString& part : fitted)
        table.rows.push_back({plain(part), PaperCell{}, plain(SummaryText::tr("New part fitted."))});
    return table;
}

TableBlock refrigerantSection(const SummaryView& view)
{
    TableBlock table;
    table.heading = SummaryText::tr("Refrigerant");
    table.columns = {{SummaryText::tr("Entry"), 1.2, false},
                     {SummaryText::tr("Mass"), 1, false},
                     {SummaryText::tr("Cylinder, reason"), 1, false}};
    for (const ChargeEntry& charge : view.changes.charges) {
        QStringList details;
        if (!charge.cylinder.empty())
            details << fromCore(charge.cylinder);
        if (!charge.because.empty())
            details << view.words.word(charge.because);
        table.rows.push_back({plain(QStringLiteral("%1 %2").arg(fromCore(charge.refrigerant),
                                                                view.words.word(wordOf(charge.direction)))),
                              plain(view.words.amount(charge.mass.si, charge.mass.kind)),
                              plain(details.join(QStringLiteral(", ")))});
    }
    // What the account says as of this visit, where refrigerant was moved at it or a leak rate is known.
    const UnitLedger ledger = unitLedger(view.input.record, view.input.catalogue, view.visit.on);
    const bool leaks = rateSentence(ledger) && ledger.rollingToday.value_or(0) > 0;
    if (table.rows.empty() && !leaks)
        return table;
    QStringList says;
    for (const Sentence& sentence : ledgerSentences(ledger))
        says << view.words.said(sentence);
    table.closing = says.join(QLatin1Char(' '));
    return table;
}

} // namespace padside
