// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What was found, done and spent, year by year.

#include "core/quantity/sentence.h"
#include "ui/paper/owner_history_content.h"

#include <algorithm>
#include <map>

namespace padside {

namespace {

constexpr qsizetype mostNames = 4; ///< of one kind of work or of what got worse; the rest is counted

/// Names in the order they came, each once.
void addOnce(QStringList& names, const QString& name)
{
    if (!name.isEmpty() && !names.contains(name))
        names << name;
}

QString listed(const QStringList& names)
{
    if (names.size() <= mostNames)
        return names.join(QStringLiteral("; "));
    return OwnerText::tr("%1 and %2 more", "names, number")
        .arg(names.mid(0, mostNames - 1).join(QStringLiteral("; ")))
        .arg(names.size() - mostNames + 1);
}

struct Year
{
    QStringList visits;
    QStringList worse;
    std::map<TreatmentKind, QStringList> work;
    QStringList fitted;
    std::map<std::string, double> addedKg; ///< by refrigerant
    std::optional<double> spent;
};

/// A zone's grade as found, visit by visit: what rose to marked or worse is named in its year.
void addWhatGotWorse(const OwnerView& view, std::map<int, Year>& years)
{
    std::map<ZoneId, Grade> last;
    for (const Finding& finding : standing(view.record.findings)) {
        const auto grade = finding.grade();
        if (!grade)
            continue;
        const auto before = last.find(finding.zoneId);
        const bool isWorse = before != last.end() && numeral(*grade) > numeral(before->second);
        if (isWorse && finding.phase == Phase::asFound && *grade >= Grade::marked) {
            addOnce(years[yearOf(finding.on)].worse,
                    OwnerText::tr("%1 %2 → %3", "zone, grade before, grade found")
                        .arg(view.words.zone(finding.zoneId))
                        .arg(numeral(before->second))
                        .arg(numeral(*grade)));
        }
        last[finding.zoneId] = *grade;
    }
}

void addWork(const OwnerView& view, std::map<int, Year>& years)
{
    for (const Treatment& treatment : standing(view.record.treatments)) {
        Year& year = years[yearOf(treatment.on)];
        addOnce(year.work[treatment.kind],
                treatment.zoneId ? view.words.zone(*treatment.zoneId) : view.words.part(treatment.partId));
        if (treatment.cost)
            year.spent = year.spent.value_or(0) + *treatment.cost;
    }
    for (const Part& part : view.record.parts) {
        if (part.replaces && part.fittedOn)
            addOnce(years[yearOf(*part.fittedOn)].fitted, view.words.part(part.id));
    }
    for (const ChargeEntry& charge : standing(view.record.charges)) {
        if (charge.direction == ChargeDirection::added)
            years[yearOf(charge.on)].addedKg[charge.refrigerant] += charge.mass.si;
    }
}

QString workText(const OwnerView& view, const Year& year)
{
    QStringList said;
    for (const auto& [kind, names] : year.work) {
        if (kind != TreatmentKind::replace || year.fitted.isEmpty()) // else the new parts say it
            said << OwnerText::tr("%1: %2.", "what was done, where")
                        .arg(capitalised(view.words.word(wordOf(kind))), listed(names));
    }
    if (!year.fitted.isEmpty())
        said << OwnerText::tr("New: %1.").arg(listed(year.fitted));
    for (const auto& [refrigerant, kilograms] : year.addedKg) {
        said << OwnerText::tr("%1 put in: %2.", "refrigerant, mass")
                    .arg(fromCore(refrigerant), view.words.amount(kilograms, QuantityKind::mass));
    }
    return said.join(u' ');
}

} // namespace

TableBlock yearsSection(const OwnerView& view)
{
    std::map<int, Year> years;
    for (const Visit& visit : view.record.visits)
        years[yearOf(visit.on)].visits << OwnerText::tr("%1 %2", "reason, day")
                                              .arg(capitalised(view.words.word(wordOf(visit.reason))),
                                                   view.words.day(visit.on));
    addWhatGotWorse(view, years);
    addWork(view, years);

    TableBlock table;
    table.heading = OwnerText::tr("Year by year");
    table.columns = {{OwnerText::tr("Year"), 0.3, false},
                     {OwnerText::tr("What was done"), 2.4, false},
                     {OwnerText::tr("Got worse"), 1.6, false},
                     {OwnerText::tr("Paid"), 0.45, false}};
    double sum = 0;
    for (const auto& [number, year] : years) {
        PaperCell worse;
        worse.text = listed(year.worse);
        worse.small = true;
        const QString work = workText(view, year);
        table.rows.push_back(
            {PaperCell{QString::number(number)},
             PaperCell{work.isEmpty() ? OwnerText::tr("Looked at.") : work, year.visits.join(QStringLiteral(", "))},
             worse, PaperCell{year.spent ? moneyText(view, *year.spent) : QString()}});
        sum += year.spent.value_or(0);
    }
    if (sum > 0)
        table.closing
            = OwnerText::tr("Paid for work in all: %1, in the owner's own money, where a cost was written down.")
                  .arg(moneyText(view, sum));
    return table;
}

} // namespace padside
