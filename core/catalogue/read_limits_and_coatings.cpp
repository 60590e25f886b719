// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/bounded_number.h"
#include "core/catalogue/sections.h"

#include <utility>

namespace padside {

namespace {

constexpr double kilogramsInPound = 0.45359237; // international pound of 1959, exact
constexpr double zeroCelsiusK = 273.15;
constexpr double secondsInHour = 3600;

LeakDuties readDuties(JsonObject fields)
{
    LeakDuties duties;
    duties.repairDays = static_cast<int>(readAboveZero(fields, "repair_days", 3650));
    duties.repairDaysWithShutdown = static_cast<int>(readAboveZero(fields, "repair_days_with_shutdown", 3650));
    duties.recordYears = static_cast<int>(readAboveZero(fields, "record_years", 100));
    duties.reportedLoss = readAboveZero(fields, "reported_loss_percent", 10000) / 100;
    fields.nothingElse();
    return duties;
}

LeakLimit readLeakLimit(const std::string& code, JsonObject fields)
{
    LeakLimit limit;
    limit.code = code;
    limit.name = fields.text("name");
    limit.use = fields.choice<LeakUse>("use");
    limit.smallestChargeKg = readBetween(fields, "smallest_charge_lb", 0, 1e6) * kilogramsInPound;
    limit.rate = readAboveZero(fields, "limit_percent", 1000) / 100;
    limit.force = fields.choice<LeakForce>("force");
    if (fields.has("since")) {
        const std::string since = fields.text("since");
        limit.since = parseDate(since);
        if (!limit.since) {
            fields.trouble().report(fields.pathOf("since"),
                                    PADSIDE_SAY("{0}: \"{1}\" is not a date. Write it like 2026-01-01."), {since});
        }
    }
    if (fields.has("refrigerants"))
        limit.refrigerants = fields.texts("refrigerants");
    if (fields.has("duties"))
        limit.duties = readDuties(fields.object("duties"));
    limit.source = fields.text("source");
    fields.nothingElse();
    return limit;
}

Coating readCoating(const std::string& code, JsonObject fields)
{
    Coating coating;
    coating.code = code;
    coating.name = fields.text("name");
    coating.dryTimeS = readAboveZero(fields, "dry_hours", 1000) * secondsInHour;
    coating.referenceTemperatureK = readBetween(fields, "reference_celsius", -40, 60) + zeroCelsiusK;
    coating.lowestTemperatureK = readBetween(fields, "lowest_celsius", -40, 60) + zeroCelsiusK;
    coating.highestHumidity = readAboveZero(fields, "highest_humidity_percent", 100) / 100;
    coating.source = fields.text("source");
    fields.nothingElse();
    return coating;
}

} // namespace

std::vector<LeakLimit> readLeakLimits(JsonObject section)
{
    std::vector<LeakLimit> all;
    for (auto& [code, fields] : section.members())
        all.push_back(readLeakLimit(code, fields));
    return all;
}

std::vector<Coating> readCoatings(JsonObject section)
{
    std::vector<Coating> all;
    for (auto& [code, fields] : section.members())
        all.push_back(readCoating(code, fields));
    return all;
}

} // namespace padside
