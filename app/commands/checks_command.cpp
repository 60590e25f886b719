// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/exchange/icalendar.h"
#include "core/review/fleet_review.h"
#include "core/review/parts_to_order.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <memory>
#include <ostream>

namespace padside {

namespace {

/// In the form asked for: the calendar, or the rows.
int printInForm(const Answer& answer, const std::vector<CalendarEntry>& calendar, AnswerForm form,
                const CommandSurroundings& surroundings)
{
    if (form == AnswerForm::icalendar)
        surroundings.out << calendarText(calendar, surroundings.now());
    else
        write(answer, form, surroundings.out);
    return exitDone;
}

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

std::string orderedPart(const PartToOrder& order, const Catalogue& catalogue)
{
    UnitRecord named; // as much of a record as it takes to name a part
    named.unit = order.unit->unit;
    named.parts = order.unit->fitted;
    return partName(named, catalogue, order.partId, std::nullopt);
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

/// The parts to order, each a row; as calendar an entry from today to the day to order by.
int printOrders(const AskedOfFile& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const OutlookModel model(catalogue);
    const Date day = dayFor(words.on, surroundings.now());
    std::vector<std::shared_ptr<const ReviewedUnit>> units;
    for (const Unit& unit : unitsFor(*store, words.unit))
        units.push_back(std::make_shared<const ReviewedUnit>(
            reviewedUnit(store->records().unitRecord(unit.id), catalogue, model, day)));
    Answer answer{{{"order_by", "ORDER BY"}, {"unit", "UNIT"}, {"part", "PART"}, {"why", "WHY"}},
                  {"order_by", "site", "unit", "part", "chance_today", "needed", "lead_days", "made", "why"},
                  {},
                  "No part to order."};
    std::vector<CalendarEntry> calendar;
    for (const PartToOrder& order : partsToOrder(units, catalogue)) {
        const Sentence what{PADSIDE_SAY("Order a spare"), {}};
        answer.rows.push_back({{"order_by", isoText(order.orderBy)},
                               {"site", order.unit->site.name},
                               {"unit", order.unit->unit.tag},
                               {"part", orderedPart(order, catalogue)},
                               {"chance_today", order.chanceToday},
                               {"needed", isoText(order.needed)},
                               {"lead_days", order.leadDays},
                               {"made", order.made},
                               {"why", say(order.why)}});
        Check check;
        check.unitId = order.unit->unit.id;
        check.partId = order.partId;
        check.what = what;
        check.why = order.why;
        check.earliest = check.latest = order.orderBy;
        calendar.push_back(CalendarEntry{check, order.orderBy, order.unit->unit.tag, order.unit->site.name});
    }
    return printInForm(answer, calendar, words.form, surroundings);
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
    return printInForm(answer, calendar, words.form, surroundings);
}

} // namespace

void addChecksCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<AskedOfFile>();
    const auto orders = std::make_shared<bool>(false);
    CLI::App* command
        = app.add_subcommand("checks", "What to look at next and when, bundled into the fewest trips per site");
    addAskedOfFile(*command, *words, {AnswerForm::table, AnswerForm::json, AnswerForm::csv, AnswerForm::icalendar});
    command->add_flag("--orders", *orders, "the parts to order in time instead of the checks");
    command->callback([words, orders, &chosen] {
        chosen = [words, orders](const CommandSurroundings& surroundings) {
            return *orders ? printOrders(*words, surroundings) : printChecks(*words, surroundings);
        };
    });
}

} // namespace padside
