// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/own_changes.h"

#include "core/catalogue/catalogue_text.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace padside {

namespace {

using Json = nlohmann::ordered_json;

const std::string partKindsSection = "part_kinds";

/// Where a person's own words and figures of one part kind stand; what was learned of its life is kept apart.
constexpr std::array sectionsOfPartKind{"part_kinds", "supply", "costs"};

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

/// Where the life of a part kind stands in the catalogue.
struct LearntFields
{
    LearntFields(const std::string& partKind, bool soils)
        : life(path(partKind, soils ? "soiling_life_years" : "median_life_years"))
        , shares(path(partKind, soils ? "soiling_grade_shares" : "grade_shares"))
        , day(path(partKind, soils ? "soiling_learned_on" : "learned_on"))
    {
    }

    JsonPath life;
    JsonPath shares;
    JsonPath day;

private:
    static JsonPath path(const std::string& partKind, const std::string& field)
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
    if (const Json* kinds = valueAt(m_ours, {partKindsSection})) {
        for (const auto& [code, kind] : kinds->items())
            codes.push_back(code);
    }
    return codes;
}

bool OwnChanges::differs(const std::string& partKind) const
{
    return std::ranges::any_of(sectionsOfPartKind, [&](const char* section) {
        return valueAt(m_own, {section, partKind}) != nullptr;
    });
}

OwnFields OwnChanges::fields() const
{
    return {m_ours, m_own};
}

std::set<Consequence> OwnChanges::ourConsequences(const std::string& partKind) const
{
    return consequencesIn(valueAt(m_ours, {partKindsSection, partKind, "consequences"}));
}

std::set<Consequence> OwnChanges::consequences(const std::string& partKind) const
{
    const Json* own = valueAt(m_own, {partKindsSection, partKind, "consequences"});
    return own != nullptr ? consequencesIn(own) : ourConsequences(partKind);
}

void OwnChanges::put(const JsonPath& path, const Json& value)
{
    const Json* ours = valueAt(m_ours, path);
    if (ours != nullptr && *ours == value)
        putBack(path);
    else
        putAt(m_own, path, value);
}

void OwnChanges::set(const JsonPath& path, const CatalogueValue& value)
{
    put(path, std::visit([](const auto& plain) { return Json(plain); }, value));
}

void OwnChanges::setConsequences(const std::string& partKind, const std::set<Consequence>& consequences)
{
    const JsonPath path{partKindsSection, partKind, "consequences"};
    if (consequences == ourConsequences(partKind)) { // in another order they are still ours
        putBack(path);
        return;
    }
    Json codes = Json::array();
    for (const Consequence one : consequences)
        codes.push_back(std::string(codeOf(one)));
    put(path, codes);
}

void OwnChanges::putBack(const JsonPath& path)
{
    eraseAt(m_own, path);
}

void OwnChanges::putBackPartKind(const std::string& partKind)
{
    for (const char* section : sectionsOfPartKind)
        putBack({section, partKind});
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
