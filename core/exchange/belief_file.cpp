// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/belief_file.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <nlohmann/json.hpp>

namespace padside {

namespace {

using Json = nlohmann::json;

constexpr int deepestNesting = 8;

/// Reads fields of one file; the first misfit is kept, and empty values stand in for what did not fit.
class Reader
{
public:
    explicit Reader(const std::string& name)
        : m_name(name)
    {
    }

    [[nodiscard]] const std::optional<Problem>& trouble() const { return m_trouble; }

    void refuse(const std::string& place, std::string pattern, std::vector<Argument> more = {})
    {
        if (m_trouble)
            return;
        more.insert(more.begin(), {m_name, place});
        m_trouble = Problem{ProblemKind::badInput, Sentence{std::move(pattern), std::move(more)}};
    }

    double number(const Json& value, const std::string& place)
    {
        if (value.is_number() && std::isfinite(value.get<double>()))
            return value.get<double>();
        refuse(place, PADSIDE_SAY("{0}, {1}: a number is needed here."));
        return 0;
    }

    std::optional<Grade> grade(const Json& value, const std::string& place)
    {
        if (value.is_number_integer()) {
            const auto numeral = value.get<std::int64_t>();
            if (numeral >= 1 && numeral <= 5)
                return gradeFromNumeral(static_cast<int>(numeral));
        }
        refuse(place, PADSIDE_SAY("{0}, {1}: a grade is a whole number from 1 to 5."));
        return std::nullopt;
    }

    bool flag(const Json& value, const std::string& place)
    {
        if (value.is_boolean())
            return value.get<bool>();
        refuse(place, PADSIDE_SAY("{0}, {1}: true or false is needed here."));
        return true;
    }

    const Json* field(const Json& object, const std::string& key, const std::string& place, bool needed = true)
    {
        const auto found = object.find(key);
        if (found != object.end())
            return &*found;
        if (needed)
            refuse(place, PADSIDE_SAY("{0}, {1}: this is missing."));
        return nullptr;
    }

    void onlyKnown(const Json& object, const std::string& place, std::initializer_list<const char*> known)
    {
        for (const auto& [key, value] : object.items()) {
            if (std::find(known.begin(), known.end(), key) == known.end())
                refuse(place + key, PADSIDE_SAY("{0}, {1}: no such field is known here. Is it misspelt?"));
        }
    }

    std::vector<double> numbers(const Json& value, const std::string& place)
    {
        std::vector<double> all;
        if (!value.is_array())
            refuse(place, PADSIDE_SAY("{0}, {1}: a list of numbers in square brackets is needed here."));
        else
            for (std::size_t at = 0; at < value.size(); ++at)
                all.push_back(number(value[at], place + "/" + std::to_string(at + 1)));
        return all;
    }

private:
    const std::string& m_name;
    std::optional<Problem> m_trouble;
};

void readRates(Reader& reader, const Json& root, Rates& rates)
{
    const Json* value = reader.field(root, "rates_per_year", "rates_per_year");
    if (value == nullptr)
        return;
    const std::vector<double> all = reader.numbers(*value, "rates_per_year");
    if (all.size() != rates.size())
        reader.refuse("rates_per_year", PADSIDE_SAY("{0}, {1}: four rates are needed, out of grades 1 to 4."));
    else
        std::copy(all.begin(), all.end(), rates.begin());
}

void readStart(Reader& reader, const Json& root, BeliefQuestion& question)
{
    const Json* start = reader.field(root, "start", "start");
    if (start == nullptr || (start->is_string() && *start == "unknown"))
        return;
    if (!start->is_object()) {
        reader.refuse("start",
                      PADSIDE_SAY("{0}, {1}: \"unknown\" or an object with grade and exposure is needed here."));
        return;
    }
    ClockObservation known;
    if (const Json* grade = reader.field(*start, "grade", "start/grade"))
        known.grade = reader.grade(*grade, "start/grade");
    if (const Json* exposure = reader.field(*start, "exposure", "start/exposure"))
        known.exposureYears = reader.number(*exposure, "start/exposure");
    reader.onlyKnown(*start, "start/", {"grade", "exposure"});
    if (known.grade)
        question.start = known;
}

ClockObservation readObservation(Reader& reader, const Json& value, const std::string& place)
{
    ClockObservation seen;
    if (!value.is_object()) {
        reader.refuse(place, PADSIDE_SAY("{0}, {1}: an object with exposure and grade is needed here."));
        return seen;
    }
    if (const Json* exposure = reader.field(value, "exposure", place + "/exposure"))
        seen.exposureYears = reader.number(*exposure, place + "/exposure");
    const Json* said = reader.field(value, "seen", place, false);
    const bool wasSeen = said == nullptr || reader.flag(*said, place + "/seen");
    const Json* grade = reader.field(value, "grade", place + "/grade", wasSeen);
    if (grade != nullptr && !wasSeen)
        reader.refuse(place, PADSIDE_SAY("{0}, {1}: what was not seen has no grade. Leave one of them out."));
    else if (grade != nullptr)
        seen.grade = reader.grade(*grade, place + "/grade");
    if (const Json* works = reader.field(value, "works", place, false))
        seen.works = reader.flag(*works, place + "/works");
    reader.onlyKnown(value, place + "/", {"exposure", "grade", "seen", "works"});
    return seen;
}

void readObservations(Reader& reader, const Json& root, BeliefQuestion& question)
{
    const Json* list = reader.field(root, "observations", "observations");
    if (list == nullptr)
        return;
    if (!list->is_array()) {
        reader.refuse("observations", PADSIDE_SAY("{0}, {1}: a list in square brackets is needed here."));
        return;
    }
    for (std::size_t at = 0; at < list->size(); ++at) {
        question.observations.push_back(readObservation(reader, (*list)[at], "observations/" + std::to_string(at + 1)));
    }
}

/// Counts the nesting before anything is built, so that no depth can exhaust the stack.
Json parsed(std::string_view text)
{
    return Json::parse(
        text, [](int depth, Json::parse_event_t /*event*/, Json& /*value*/) { return depth <= deepestNesting; }, false);
}

} // namespace

Result<BeliefQuestion> readBeliefFile(std::string_view text, const std::string& name)
{
    const Json root = parsed(text);
    if (root.is_discarded() || !root.is_object()) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("{0} is no JSON object. It must begin with a curly brace and be complete."), {name});
    }
    Reader reader(name);
    BeliefQuestion question;
    readRates(reader, root, question.rates);
    if (const Json* sigma = reader.field(root, "frailty_sigma", "frailty_sigma"))
        question.paceSigma = reader.number(*sigma, "frailty_sigma");
    if (const Json* nodes = reader.field(root, "frailty_nodes", "frailty_nodes", false)) {
        const double count = reader.number(*nodes, "frailty_nodes");
        if (count < 1 || count > mostPaceNodes || count != std::floor(count)) {
            reader.refuse("frailty_nodes", PADSIDE_SAY("{0}, {1}: a whole number from 1 to {2} is needed here."),
                          {std::int64_t{mostPaceNodes}});
        } else {
            question.paceNodes = static_cast<int>(count);
        }
    }
    readStart(reader, root, question);
    readObservations(reader, root, question);
    if (const Json* horizons = reader.field(root, "horizons", "horizons", false))
        question.horizons = reader.numbers(*horizons, "horizons");
    reader.onlyKnown(root, "",
                     {"rates_per_year", "frailty_sigma", "frailty_nodes", "start", "observations", "horizons"});
    if (reader.trouble())
        return tl::unexpected(*reader.trouble());
    return question;
}

} // namespace padside
