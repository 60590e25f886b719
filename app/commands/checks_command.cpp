// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/exchange/icalendar.h"
#include "core/review/fleet_review.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <memory>
#include <ostream>

namespace padside {

namespace {

/// The reviews of one site's units, with what their rows need.
struct SiteChecks
{
    Site site;
    std::vector<UnitRecord> records;
    std::vector<UnitReview> reviews;
};

std::vector<SiteChecks> checksBySite(Store& store, const AskedOfFile& words, const Catalogue& catalogue, Date day)
{
    const OutlookModel model(catalogue);
    std::vector<SiteChecks> sites;
    for (const Unit& unit : unitsFor(store, words.unit)) {
        UnitRecord record = store.records().unitRecord(unit.id);
        if (sites.empty() || sites.back().site.id != record.site.id)
            sites.push_back(SiteChecks{record.site, {}, {}});
        sites.back().reviews.push_back(review(record, catalogue, model, day));
        sites.back().records.push_back(std::move(record));
    }
    return sites;
}

nlohmann::ordered_json rowOf(const Check& check, const SiteTrip& trip, const UnitRecord& record,
                             const Catalogue& catalogue, bool setsTheDay)
{
    auto conditions = nlohmann::ordered_json::array();
    for (const Condition condition : check.conditions)
        conditions.push_back(std::string(codeOf(condition)));
    return {{"trip", isoText(trip.on)},
            {"site", record.site.name},
            {"unit", record.unit.tag},
            {"part", partName(record, catalogue, check.partId, check.zoneId)},
            {"zone", zoneName(record, check.zoneId)},
            {"what", say(check.what)},
            {"earliest", isoText(check.earliest)},
            {"latest", isoText(check.latest)},
            {"conditions", conditions},
            {"why", say(check.why)},
            {"sets_the_day", setsTheDay}};
}

int printChecks(const AskedOfFile& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const Date day = dayFor(words.on, surroundings.now());
    Answer answer{
        {{"trip", "TRIP"},
         {"unit", "UNIT"},
         {"earliest", "FROM"},
         {"latest", "UNTIL"},
         {"what", "WHAT"},
         {"why", "WHY"}},
        {"trip", "site", "unit", "part", "zone", "what", "earliest", "latest", "conditions", "why", "sets_the_day"},
        {},
        "Nothing to look at."};
    std::vector<CalendarEntry> calendar;
    for (const SiteChecks& site : checksBySite(*store, words, catalogue, day)) {
        for (const SiteTrip& trip : siteTrips(site.site, site.reviews, day)) {
            for (std::size_t i = 0; i < trip.checks.size(); ++i) {
                const Check& check = trip.checks[i];
                const auto record = std::ranges::find_if(
                    site.records, [&](const UnitRecord& one) { return one.unit.id == check.unitId; });
                answer.rows.push_back(rowOf(check, trip, *record, catalogue, i == trip.forcedBy));
                calendar.push_back(CalendarEntry{check, trip.on, record->unit.tag, record->site.name});
            }
        }
    }
    if (words.form == AnswerForm::icalendar)
        surroundings.out << calendarText(calendar, surroundings.now());
    else
        write(answer, words.form, surroundings.out);
    return exitDone;
}

} // namespace

void addChecksCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<AskedOfFile>();
    CLI::App* command
        = app.add_subcommand("checks", "What to look at next and when, bundled into the fewest trips per site");
    addAskedOfFile(*command, *words, {AnswerForm::table, AnswerForm::json, AnswerForm::csv, AnswerForm::icalendar});
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return printChecks(*words, surroundings); };
    });
}

} // namespace padside
