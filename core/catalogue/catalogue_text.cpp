// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/catalogue_text.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace padside {

namespace {

using Json = nlohmann::ordered_json;

// Deeper than any text of ours by far; merging walks the levels by recursion, so it needs a bound.
constexpr int deepestLevel = 16;

/// Watches the parser for what it would let pass: the same field twice, and endless nesting.
class Watch
{
public:
    bool operator()(int depth, Json::parse_event_t event, Json& parsed)
    {
        if (depth > deepestLevel)
            m_tooDeep = true;
        if (event == Json::parse_event_t::object_start)
            m_open.emplace_back();
        else if (event == Json::parse_event_t::object_end && !m_open.empty())
            m_open.pop_back();
        else if (event == Json::parse_event_t::key && !m_open.empty()) {
            const auto& key = parsed.get_ref<const std::string&>();
            if (std::ranges::find(m_open.back(), key) == m_open.back().end())
                m_open.back().push_back(key);
            else if (m_twice.empty())
                m_twice = key;
        }
        return !m_tooDeep; // what is thrown away here is never used: the text is refused
    }

    [[nodiscard]] bool tooDeep() const { return m_tooDeep; }
    [[nodiscard]] const std::string& twice() const { return m_twice; }

private:
    std::vector<std::vector<std::string>> m_open; ///< the fields of each open level; few, so searched one by one
    std::string m_twice;
    bool m_tooDeep = false;
};

Result<Json> parsed(const std::string& text, const Word& whose)
{
    Watch watch;
    Json value;
    try {
        value = Json::parse(
            text, [&watch](int depth, Json::parse_event_t event, Json& part) { return watch(depth, event, part); });
    } catch (const Json::parse_error& error) {
        return problem(ProblemKind::cannotRead,
                       PADSIDE_SAY("{0}: this is not JSON; it breaks off near character {1}. Correct it there."),
                       {whose, static_cast<std::int64_t>(error.byte)});
    } catch (const Json::out_of_range&) {
        return problem(ProblemKind::cannotRead, PADSIDE_SAY("{0}: one of its numbers is too large to be meant."),
                       {whose});
    }
    if (watch.tooDeep()) {
        return problem(ProblemKind::cannotRead,
                       PADSIDE_SAY("{0}: the text is nested deeper than {1} levels; the catalogue never is."),
                       {whose, std::int64_t{deepestLevel}});
    }
    if (!watch.twice().empty()) {
        return problem(ProblemKind::cannotRead,
                       PADSIDE_SAY("{0}: the field \"{1}\" stands twice in one place. Keep one of the two."),
                       {whose, watch.twice()});
    }
    if (!value.is_object()) {
        return problem(ProblemKind::cannotRead,
                       PADSIDE_SAY("{0}: a JSON object is needed here, beginning with a curly brace."), {whose});
    }
    return value;
}

/// In a merge patch null takes a field away.
std::optional<std::string> removedAssumption(const Json& patch)
{
    const auto section = patch.find("assumptions");
    if (section == patch.end() || !section->is_object())
        return std::nullopt;
    for (const auto& [code, value] : section->items()) {
        if (value.is_null())
            return code;
    }
    return std::nullopt;
}

} // namespace

Result<Json> shippedCatalogueText(std::span<const std::string> shipped)
{
    Json merged = Json::object();
    for (const std::string& text : shipped) {
        const auto next = parsed(text, Word{PADSIDE_SAY("A text of the catalogue")});
        if (!next)
            return tl::unexpected(next.error());
        merged.merge_patch(*next);
    }
    return merged;
}

Result<Json> withOwnChanges(Json ours, const std::string& ownChanges)
{
    if (ownChanges.empty())
        return ours;
    const auto own = parsed(ownChanges, Word{PADSIDE_SAY("Your own changes to the catalogue")});
    if (!own)
        return tl::unexpected(own.error());
    if (const auto removed = removedAssumption(*own)) {
        return problem(ProblemKind::cannotRead,
                       PADSIDE_SAY("{0}: an assumption can be changed but not taken away; rules need it."),
                       {"assumptions/" + *removed});
    }
    ours.merge_patch(*own);
    return ours;
}

Result<Json> mergedCatalogueText(std::span<const std::string> shipped, const std::string& ownChanges)
{
    auto ours = shippedCatalogueText(shipped);
    if (!ours)
        return ours;
    return withOwnChanges(*std::move(ours), ownChanges);
}

} // namespace padside
