// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/sample.h"

#include "core/catalogue/catalogue.h"
#include "core/store/own_catalogue.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/transaction.h"
#include "sample-db/life_forecasts.h"
#include "sample-db/sample_costs.h"
#include "sample-db/sample_lessons.h"
#include "sample-db/unit_life.h"
#include "sample-db/write_life.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>

namespace padside {

namespace {

Site siteOf(const ScenarioSite& scenario, std::size_t block, IdMaker& ids)
{
    Site site;
    site.id = ids.make<SiteId>();
    site.name = block == 0 ? std::string(scenario.name) : fmt::format("{} {}", scenario.name, block + 1);
    site.address = scenario.address;
    site.contact = scenario.contact;
    site.access = scenario.access;
    site.altitudeM = scenario.altitudeM;
    site.air = SiteAir{scenario.temperatureC + 273.15, scenario.humidity, scenario.sulphurDioxide, scenario.chloride};
    site.spring = SeasonWeeks{14, 20};
    site.fall = SeasonWeeks{39, 45};
    site.note = scenario.note;
    return site;
}

/// What the contractor knows better than we do.
void writeOwnCatalogue(Store& store, std::optional<Date> learntOn)
{
    nlohmann::ordered_json changes = nlohmann::ordered_json::parse(costsPatch());
    if (learntOn)
        changes.merge_patch(nlohmann::ordered_json::parse(lessonsPatch(*learntOn)));
    store.ownCatalogue().setChanges(changes.dump());
}

} // namespace

void buildSample(Store& store, const Catalogue& catalogue, const SampleOptions& options,
                 const std::function<bool(double)>& progress)
{
    const std::size_t perBlock = scenarioUnits().size();
    const auto units = static_cast<std::size_t>(std::max(1, options.units));
    const Date before = mondayOfWeek(yearOf(options.lastDay) - std::max(1, options.years) + 1, 1);
    const std::int64_t millisecond
        = std::chrono::duration_cast<std::chrono::milliseconds>(before.time_since_epoch()).count();
    const std::optional<Date> learntOn = lessonsLearntOn(std::max(1, options.years), options.lastDay);
    writeOwnCatalogue(store, learntOn);
    const ForecastModels models(catalogue, learntOn);
    IdMaker siteIds([millisecond] { return millisecond; }, mixed(options.seed ^ 0x5173U));

    for (std::size_t block = 0; block * perBlock < units; ++block) {
        // One transaction for a block: quick, and a stop leaves only whole blocks.
        Transaction transaction(store);
        std::map<std::size_t, Site> sites;
        for (std::size_t index = block * perBlock; index < std::min(units, (block + 1) * perBlock); ++index) {
            const std::size_t place = scenarioUnits()[index % perBlock].site;
            if (!sites.contains(place)) {
                sites.emplace(place, siteOf(scenarioSites()[place], block, siteIds));
                store.sites().addSite(sites.at(place));
            }
            UnitLife life = tellLife(catalogue, index, std::max(1, options.years), options.lastDay, sites.at(place),
                                     options.seed);
            if (!options.photographs) {
                life.record.photos.clear();
                life.orders.clear();
            }
            writeLife(store, life, catalogue, models);
            writeAssumptions(store, life.record.unit, scenarioUnits()[index % perBlock].yearsOld);
            if (progress && !progress(static_cast<double>(index + 1) / static_cast<double>(units))) {
                transaction.commit();
                return;
            }
        }
        transaction.commit();
    }
}

} // namespace padside
