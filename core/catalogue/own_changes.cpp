// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/own_changes.h"

#include "core/catalogue/catalogue_text.h"
#include "core/catalogue/cost_figures.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

namespace padside {

namespace {

using Json = nlohmann::ordered_json;
using Path = std::vector<std::string>;

const std::string partKindsSection = "part_kinds";
const std::string costsSection = "costs";

const Json* find(const Json& top, const Path& path)
{
    const Json* at = &top;
    for (const std::string& key : path) {
        if (!at->is_object())
            return nullptr;
        const auto next = at->find(key);
        if (next == at->end())
            return nullptr;
        at = &*next;
    }
    return at;
}

std::optional<CatalogueValue> valueAt(const Json& top, const Path& path)
{
    const Json* found = find(top, path);
    if (found != nullptr && found->is_string())
        return found->get<std::string>();
    if (found != nullptr && found->is_number())
        return found->get<double>();
    return std::nullopt;
}

/// Takes the value away, and the objects that are empty without it.
void erase(Json& top, std::span<const std::string> path)
{
    if (path.empty() || !top.is_object() || !top.contains(path.front()))
        return;
    Json& next = top[path.front()];
    if (path.size() > 1)
        erase(next, path.subspan(1));
    if (path.size() == 1 || (next.is_object() && next.empty()))
        top.erase(path.front());
}

std::set<Consequence> consequencesIn(const Json* list)
{
    std::set<Consequence> read;
    if (list == nullptr || !list->is_array())
        return read;
    for (const Json& code : *list) {
        if (const auto one = code.is_string() ? fromCode<Consequence>(code.get<std::string>()) : std::nullopt)
            read.insert(*one);
    }
    return read;
}

Word gradeWord(int number)
{
    return Word{std::string(wordOf(static_cast<Grade>(number)))};
}

/// The fields of one part kind, in the order a person reads them.
class Fields
{
public:
    Fields(const Json& ours, const Json& own, std::string partKind)
        : m_ours(ours)
        , m_own(own)
        , m_base{partKindsSection, std::move(partKind)}
    {
    }

    std::vector<OwnField> all()
    {
        add({"name"}, {PADSIDE_SAY("Name"), {}});
        for (int grade = 1; grade <= 5; ++grade)
            add({"grades", std::to_string(grade)},
                {PADSIDE_SAY("Grade {0} {1}"), {std::int64_t{grade}, gradeWord(grade)}});
        addZones();
        addTasks();
        add({"preserves"}, {PADSIDE_SAY("What keeps it alive"), {}});
        add({"median_life", "years"}, {PADSIDE_SAY("Median life in years"), {}}, true);
        add({"median_life", "source"}, {PADSIDE_SAY("Source of the median life"), {}});
        return std::move(m_fields);
    }

private:
    void add(const Path& inside, Sentence label, bool isNumber = false)
    {
        Path path = m_base;
        path.insert(path.end(), inside.begin(), inside.end());
        m_fields.push_back({path, std::move(label), isNumber, valueAt(m_ours, path), valueAt(m_own, path)});
    }

    const Json* inside(const std::string& section) const
    {
        Path path = m_base;
        path.push_back(section);
        return find(m_ours, path);
    }

    void addZones()
    {
        const Json* zones = inside("zones");
        if (zones == nullptr)
            return;
        for (const auto& [code, zone] : zones->items()) {
            const Word name{zone.value("name", code)};
            add({"zones", code, "name"}, {PADSIDE_SAY("Zone “{0}”"), {name}});
            if (!zone.contains("grades"))
                continue;
            for (int grade = 1; grade <= 5; ++grade)
                add({"zones", code, "grades", std::to_string(grade)},
                    {PADSIDE_SAY("Zone “{0}”, grade {1} {2}"), {name, std::int64_t{grade}, gradeWord(grade)}});
        }
    }

    void addTasks()
    {
        const Json* tasks = inside("tasks");
        if (tasks == nullptr)
            return;
        for (const auto& [code, task] : tasks->items()) {
            const bool spring = task.value("season", "") == codeOf(VisitReason::spring);
            add({"tasks", code, "sentence"},
                {spring ? PADSIDE_SAY("Task in spring") : PADSIDE_SAY("Task in fall"), {}});
        }
    }

    const Json& m_ours;
    const Json& m_own;
    Path m_base;
    std::vector<OwnField> m_fields;
};

/// Where the life of a part kind stands in the catalogue.
struct LearntFields
{
    LearntFields(const std::string& partKind, bool soils)
        : life(path(partKind, soils ? "soiling_life_years" : "median_life_years"))
        , shares(path(partKind, soils ? "soiling_grade_shares" : "grade_shares"))
        , day(path(partKind, soils ? "soiling_learned_on" : "learned_on"))
    {
    }

    Path life;
    Path shares;
    Path day;

private:
    static Path path(const std::string& partKind, const std::string& field)
    {
        return {"outlook", partKindsSection, partKind, field};
    }
};

double threeFigures(double value)
{
    const double step = std::pow(10, std::floor(std::log10(value)) - 2);
    return std::round(value / step) * step;
}

/// Ten-thousandths that add up to one; none below the thousandth that a catalogue asks for.
std::array<double, 4> wholeShares(const std::array<double, 4>& shares)
{
    constexpr int whole = 10000;
    constexpr int least = 10;
    std::array<int, 4> parts{};
    int sum = 0;
    for (std::size_t grade = 0; grade < parts.size(); ++grade) {
        parts[grade] = std::max(least, static_cast<int>(std::lround(shares[grade] * whole)));
        sum += parts[grade];
    }
    *std::ranges::max_element(parts) += whole - sum;
    std::array<double, 4> rounded{};
    for (std::size_t grade = 0; grade < parts.size(); ++grade)
        rounded[grade] = static_cast<double>(parts[grade]) / whole;
    return rounded;
}

} // namespace

OwnChanges::OwnChanges(std::vector<std::string> shipped, Json ours, Json own)
    : m_shipped(std::move(shipped))
    , m_ours(std::move(ours))
    , m_own(std::move(own))
{
}

Result<OwnChanges> OwnChanges::read(std::span<const std::string> shipped, const std::string& patch)
{
    auto ours = shippedCatalogueText(shipped);
    if (!ours)
        return tl::unexpected(ours.error());
    if (const auto merged = withOwnChanges(*ours, patch); !merged) // says what is wrong with the patch's text
        return tl::unexpected(merged.error());
    Json own = patch.empty() ? Json::object() : Json::parse(patch);
    return OwnChanges({shipped.begin(), shipped.end()}, *std::move(ours), std::move(own));
}

std::vector<std::string> OwnChanges::partKinds() const
{
    std::vector<std::string> codes;
    if (const Json* kinds = find(m_ours, {partKindsSection})) {
        for (const auto& [code, kind] : kinds->items())
            codes.push_back(code);
    }
    return codes;
}

bool OwnChanges::differs(const std::string& partKind) const
{
    return find(m_own, {partKindsSection, partKind}) != nullptr || find(m_own, {costsSection, partKind}) != nullptr;
}

std::vector<OwnField> OwnChanges::fieldsOf(const std::string& partKind) const
{
    return Fields(m_ours, m_own, partKind).all();
}

OwnField OwnChanges::numberField(Path path, Sentence label) const
{
    auto ours = valueAt(m_ours, path);
    auto own = valueAt(m_own, path);
    return {std::move(path), std::move(label), true, std::move(ours), std::move(own)};
}

std::vector<OwnField> OwnChanges::costFieldsOf(const std::string& partKind) const
{
    std::vector<OwnField> fields;
    fields.reserve(costFields().size());
    for (const CostField& field : costFields())
        fields.push_back(numberField({costsSection, partKind, std::string(field.code)}, {field.label, {}}));
    return fields;
}

std::vector<OwnField>
OwnChanges::moneyFields(const std::vector<std::pair<std::string, std::string>>& refrigerants) const
{
    std::vector<OwnField> fields;
    fields.reserve(refrigerants.size() + padside::moneyFields().size());
    for (const auto& [code, written] : refrigerants) {
        fields.push_back(
            numberField({"refrigerant_prices", code, "per_kg"}, {PADSIDE_SAY("Price of {0} per kg"), {written}}));
    }
    for (const MoneyField& field : padside::moneyFields()) {
        Sentence label{field.label, {}};
        if (field.unit == MoneyField::Unit::percent)
            label = {PADSIDE_SAY("{0}, in %"), {Word{field.label}}};
        fields.push_back(numberField({"money", std::string(field.code)}, std::move(label)));
    }
    return fields;
}

std::set<Consequence> OwnChanges::ourConsequences(const std::string& partKind) const
{
    return consequencesIn(find(m_ours, {partKindsSection, partKind, "consequences"}));
}

std::set<Consequence> OwnChanges::consequences(const std::string& partKind) const
{
    const Json* own = find(m_own, {partKindsSection, partKind, "consequences"});
    return own != nullptr ? consequencesIn(own) : ourConsequences(partKind);
}

void OwnChanges::put(const Path& path, const Json& value)
{
    const Json* ours = find(m_ours, path);
    if (ours != nullptr && *ours == value) {
        putBack(path);
        return;
    }
    Json* at = &m_own;
    for (const std::string& key : path) {
        if (!at->is_object())
            *at = Json::object();
        at = &(*at)[key];
    }
    *at = value;
}

void OwnChanges::set(const Path& path, const CatalogueValue& value)
{
    put(path, std::visit([](const auto& plain) { return Json(plain); }, value));
}

void OwnChanges::setConsequences(const std::string& partKind, const std::set<Consequence>& consequences)
{
    const Path path{partKindsSection, partKind, "consequences"};
    if (consequences == ourConsequences(partKind)) { // in another order they are still ours
        putBack(path);
        return;
    }
    Json codes = Json::array();
    for (const Consequence one : consequences)
        codes.push_back(std::string(codeOf(one)));
    put(path, codes);
}

void OwnChanges::putBack(const Path& path)
{
    erase(m_own, path);
}

void OwnChanges::putBackPartKind(const std::string& partKind)
{
    putBack({partKindsSection, partKind});
    putBack({costsSection, partKind});
}

void OwnChanges::setLearntLife(const std::string& partKind, bool soils, const LearntLife& life)
{
    const LearntFields fields(partKind, soils);
    put(fields.life, Json(threeFigures(std::clamp(life.medianLifeYears, 0.1, 200.0))));
    Json shares = Json::array();
    for (const double share : wholeShares(life.gradeShares))
        shares.push_back(share);
    put(fields.shares, shares);
    put(fields.day, Json(isoText(life.learntOn)));
}

void OwnChanges::putBackLearntLife(const std::string& partKind, bool soils)
{
    const LearntFields fields(partKind, soils);
    putBack(fields.life);
    putBack(fields.shares);
    putBack(fields.day);
}

std::string OwnChanges::patch() const
{
    return m_own.empty() ? std::string() : m_own.dump();
}

Result<Catalogue> OwnChanges::catalogue() const
{
    return Catalogue::load(m_shipped, patch());
}

} // namespace padside
