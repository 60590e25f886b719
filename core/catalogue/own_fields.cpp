// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/own_fields.h"

#include "core/catalogue/cost_figures.h"
#include "core/catalogue/outlook_figures.h"
#include "core/record/grade.h"
#include "core/record/visit.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace padside {

namespace {

using Json = nlohmann::ordered_json;
using Form = OwnField::Form;

constexpr double shownInPercent = 100;

JsonPath below(JsonPath path, std::initializer_list<std::string> inside)
{
    path.insert(path.end(), inside);
    return path;
}

std::optional<CatalogueValue> read(const Json& top, const JsonPath& path)
{
    const Json* found = valueAt(top, path);
    if (found == nullptr)
        return std::nullopt;
    if (found->is_string())
        return found->get<std::string>();
    if (found->is_number())
        return found->get<double>();
    if (found->is_boolean())
        return found->get<bool>();
    if (found->is_array() && std::ranges::all_of(*found, [](const Json& one) { return one.is_number(); }))
        return found->get<std::vector<double>>();
    return std::nullopt;
}

Word gradeWord(int number)
{
    return Word{std::string(wordOf(static_cast<Grade>(number)))};
}

Sentence assumptionLabel(const std::string& name, AssumptionUnit unit)
{
    if (unit == AssumptionUnit::number)
        return {name, {}};
    return {PADSIDE_SAY("{0}, in {1}"), {Word{name}, Word{std::string(wordOf(unit))}}};
}

} // namespace

OwnFields::OwnFields(const Json& ours, const Json& own)
    : m_ours(ours)
    , m_own(own)
{
}

OwnField OwnFields::field(JsonPath path, Sentence label, Form form) const
{
    OwnField made;
    made.label = std::move(label);
    made.form = form;
    made.ours = read(m_ours, path);
    made.own = read(m_own, path);
    made.path = std::move(path);
    return made;
}

std::string OwnFields::ourText(const JsonPath& path) const
{
    const Json* found = valueAt(m_ours, path);
    return found != nullptr && found->is_string() ? found->get<std::string>() : std::string();
}

std::vector<OwnField> OwnFields::ofPartKind(const std::string& partKind) const
{
    const JsonPath kind{"part_kinds", partKind};
    std::vector<OwnField> fields{field(below(kind, {"name"}), {PADSIDE_SAY("Name"), {}}, Form::text)};
    for (int grade = 1; grade <= 5; ++grade) {
        fields.push_back(field(below(kind, {"grades", std::to_string(grade)}),
                               {PADSIDE_SAY("Grade {0} {1}"), {std::int64_t{grade}, gradeWord(grade)}}, Form::text));
    }
    addZones(kind, fields);
    addTasks(kind, fields);
    fields.push_back(field(below(kind, {"preserves"}), {PADSIDE_SAY("What keeps it alive"), {}}, Form::text));
    const JsonPath life = below(kind, {"median_life"});
    fields.push_back(field(below(life, {"years"}), {PADSIDE_SAY("Median life in years"), {}}, Form::number));
    fields.push_back(field(below(life, {"source"}), {PADSIDE_SAY("Source of the median life"), {}}, Form::text));
    return fields;
}

void OwnFields::addZones(const JsonPath& kind, std::vector<OwnField>& fields) const
{
    const Json* zones = valueAt(m_ours, below(kind, {"zones"}));
    if (zones == nullptr)
        return;
    for (const auto& [code, zone] : zones->items()) {
        const Word name{zone.value("name", code)};
        fields.push_back(field(below(kind, {"zones", code, "name"}), {PADSIDE_SAY("Zone “{0}”"), {name}}, Form::text));
        if (!zone.contains("grades"))
            continue;
        for (int grade = 1; grade <= 5; ++grade) {
            fields.push_back(field(
                below(kind, {"zones", code, "grades", std::to_string(grade)}),
                {PADSIDE_SAY("Zone “{0}”, grade {1} {2}"), {name, std::int64_t{grade}, gradeWord(grade)}}, Form::text));
        }
    }
}

void OwnFields::addTasks(const JsonPath& kind, std::vector<OwnField>& fields) const
{
    const Json* tasks = valueAt(m_ours, below(kind, {"tasks"}));
    if (tasks == nullptr)
        return;
    for (const auto& [code, task] : tasks->items()) {
        const bool spring = task.value("season", "") == codeOf(VisitReason::spring);
        fields.push_back(field(below(kind, {"tasks", code, "sentence"}),
                               {spring ? PADSIDE_SAY("Task in spring") : PADSIDE_SAY("Task in fall"), {}}, Form::text));
    }
}

std::vector<OwnField> OwnFields::supply(const std::string& partKind) const
{
    const JsonPath kind{"supply", partKind};
    if (valueAt(m_ours, kind) == nullptr)
        return {};
    std::vector<OwnField> fields{
        field(below(kind, {"lead_days"}), {PADSIDE_SAY("Lead time of a spare, in days"), {}}, Form::number),
        field(below(kind, {"made"}), {PADSIDE_SAY("Spares are still made, yes or no"), {}}, Form::yesNo)};
    fields[0].sentence
        = PADSIDE_SAY("From ordering a spare to having it at hand; it is to be ordered so long before the "
                      "part may be spent.");
    fields[1].sentence = PADSIDE_SAY("Where a spare is no longer made, the parts to order say so.");
    for (OwnField& one : fields)
        one.source = ourText(below(kind, {"source"}));
    return fields;
}

std::vector<OwnField> OwnFields::costs(const std::string& partKind) const
{
    std::vector<OwnField> fields;
    fields.reserve(costFields().size());
    for (const CostField& cost : costFields())
        fields.push_back(field({"costs", partKind, std::string(cost.code)}, {cost.label, {}}, Form::number));
    return fields;
}

std::vector<OwnField> OwnFields::money(const std::vector<std::pair<std::string, std::string>>& refrigerants) const
{
    std::vector<OwnField> fields;
    fields.reserve(refrigerants.size() + moneyFields().size());
    for (const auto& [code, written] : refrigerants) {
        fields.push_back(field({"refrigerant_prices", code, "per_kg"}, {PADSIDE_SAY("Price of {0} per kg"), {written}},
                               Form::number));
    }
    for (const MoneyField& figure : moneyFields()) {
        Sentence label{figure.label, {}};
        if (figure.unit == MoneyField::Unit::percent)
            label = {PADSIDE_SAY("{0}, in %"), {Word{figure.label}}};
        fields.push_back(field({"money", std::string(figure.code)}, std::move(label), Form::number));
        if (figure.ours != nullptr)
            fields.back().source = ourText({"money", "source"});
    }
    return fields;
}

std::vector<OwnField> OwnFields::assumptions(AssumptionTopic topic) const
{
    std::vector<OwnField> fields;
    const Json* all = valueAt(m_ours, {"assumptions"});
    if (all == nullptr)
        return fields;
    for (const auto& [code, assumption] : all->items()) {
        if (assumption.value("topic", "") != codeOf(topic))
            continue;
        const auto unit = fromCode<AssumptionUnit>(assumption.value("unit", "")).value_or(AssumptionUnit::number);
        OwnField one = field({"assumptions", code, "value"}, assumptionLabel(assumption.value("name", code), unit),
                             Form::number);
        if (unit == AssumptionUnit::share)
            one.shownTimes = shownInPercent;
        one.sentence = assumption.value("sentence", "");
        one.source = assumption.value("source", "");
        fields.push_back(std::move(one));
    }
    return fields;
}

std::vector<OwnField> OwnFields::outlook() const
{
    std::vector<OwnField> fields;
    for (const OutlookField& figure : outlookFields()) {
        fields.push_back(field({"outlook", std::string(figure.code)}, {figure.label, {}}, Form::number));
        fields.back().sentence = figure.sentence;
    }
    fields.push_back(
        field({"outlook", "grade_shares"}, {PADSIDE_SAY("Shares of a life at grades 1 to 4"), {}}, Form::numbers));
    fields.back().sentence
        = PADSIDE_SAY("How a life is split over the grades before spent; four shares that add up to 1.");
    addProtections(fields);
    for (OwnField& one : fields)
        one.source = ourText({"outlook", "source"});
    return fields;
}

void OwnFields::addProtections(std::vector<OwnField>& fields) const
{
    const JsonPath protections{"outlook", "protections"};
    const Json* all = valueAt(m_ours, protections);
    if (all == nullptr)
        return;
    for (const auto& [code, one] : all->items()) {
        const auto kind = fromCode<TreatmentKind>(code);
        const Word work{kind ? std::string(wordOf(*kind)) : code};
        OwnField effect = field(below(protections, {code, "effect"}),
                                {PADSIDE_SAY("How much “{0}” slows decay, in %"), {work}}, Form::number);
        effect.shownTimes = shownInPercent;
        effect.sentence = PADSIDE_SAY("While this work holds, decay is slower by this much; at 0 it does nothing.");
        fields.push_back(std::move(effect));
        OwnField years = field(below(protections, {code, "years"}),
                               {PADSIDE_SAY("How long “{0}” holds, in years"), {work}}, Form::number);
        years.sentence = PADSIDE_SAY("After this time the zone decays as if the work had not been done.");
        fields.push_back(std::move(years));
    }
}

Sentence troubleWith(const OwnField& field, const std::string& label, Sentence trouble)
{
    if (trouble.arguments.empty())
        return trouble;
    trouble.arguments.front() = label;
    const int fewer = static_cast<int>(std::lround(std::log10(field.shownTimes)));
    for (Argument& argument : trouble.arguments) {
        if (auto* number = std::get_if<Number>(&argument))
            *number = {number->value * field.shownTimes, std::max(0, number->decimals - fewer)};
    }
    return trouble;
}

} // namespace padside
