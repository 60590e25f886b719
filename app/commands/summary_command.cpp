// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "app/commands/paper_words.h"
#include "core/store/record_reader.h"
#include "ui/paper/visit_summary.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>
#include <ostream>

namespace padside {

namespace {

struct SummaryWords : PaperWords
{
    std::string visit;
};

/// The days of the latest visits, newest first, for a sentence.
std::string someDaysOf(const UnitRecord& record)
{
    constexpr std::size_t mostDays = 6;
    const std::vector<Visit>& visits = record.visits;
    std::string days;
    for (std::size_t back = 1; back <= std::min(mostDays, visits.size()); ++back)
        days += (days.empty() ? "" : ", ") + isoText(visits[visits.size() - back].on);
    if (visits.size() > mostDays)
        days += ", …";
    return days;
}

/// The visit of `day`, or the last closed one if `day` is empty.
const Visit& visitFor(const UnitRecord& record, const std::string& day, const Instant& now)
{
    if (record.visits.empty())
        throw StoreError(
            Problem{ProblemKind::refused, {PADSIDE_SAY("Unit “{0}” has no visits yet."), {record.unit.tag}}});
    const auto wanted
        = [&](const Visit& visit) { return day.empty() ? !visit.isOpen() : visit.on == dayFor(day, now); };
    const auto found = std::find_if(record.visits.rbegin(), record.visits.rend(), wanted);
    if (found != record.visits.rend())
        return *found;
    if (day.empty())
        throw StoreError(
            Problem{ProblemKind::refused,
                    {PADSIDE_SAY("Unit “{0}” has no closed visit yet. Name the open one with --visit {1}."),
                     {record.unit.tag, record.visits.back().on}}});
    throw StoreError(Problem{ProblemKind::refused,
                             {PADSIDE_SAY("Unit “{0}” was not visited on {1}. Its visits: {2}."),
                              {record.unit.tag, day, someDaysOf(record)}}});
}

int writeSummary(const SummaryWords& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    UnitRecord record = store->records().unitRecord(unitsFor(*store, words.unit).front().id);
    const Visit visit = visitFor(record, words.visit, surroundings.now());
    const KnownUnit asOfVisit = knownUnit(record, catalogue, OutlookModel(catalogue), visit.on);
    const SummaryInput input{record,
                             review(asOfVisit, catalogue),
                             visit.id,
                             catalogue,
                             plainEnglish(),
                             photosFor(*store, record),
                             QString::fromStdString(words.contractor),
                             words.size,
                             localDate(surroundings.now()),
                             unitForecast(asOfVisit, catalogue)};
    if (const auto written = exportVisitSummary(input, QString::fromStdString(words.out)); !written)
        throw StoreError(written.error());
    surroundings.out << "Wrote " << words.out << ": visit summary of " << record.unit.tag << ", " << isoText(visit.on)
                     << ".\n";
    return exitDone;
}

} // namespace

void addSummaryCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<SummaryWords>();
    CLI::App* command = app.add_subcommand("summary", "Write a visit summary as PDF");
    addPaperWords(*command, *words);
    command->add_option("--visit", words->visit, "the day of the visit (default: the last closed one)")
        ->type_name("DATE");
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return writeSummary(*words, surroundings); };
    });
}

} // namespace padside
