// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/json_object.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

namespace padside {

namespace {

using Json = nlohmann::ordered_json;

const Json& emptyObject()
{
    static const Json empty = Json::object();
    return empty;
}

bool isBlank(const std::string& text)
{
    return text.find_first_not_of(" \t\r\n") == std::string::npos;
}

/// Codes are kept in people's files for decades: lower-case ASCII words joined by hyphens, nothing that can be
/// mistyped.
bool isCode(const std::string& text)
{
    return !text.empty() && std::ranges::all_of(text, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

} // namespace

void Trouble::report(const std::string& path, std::string pattern, std::vector<Argument> more)
{
    if (m_first)
        return;
    more.insert(more.begin(), path);
    m_first = Problem{ProblemKind::cannotRead, Sentence{std::move(pattern), std::move(more)}};
}

JsonObject::JsonObject(const Json& value, std::string path, Trouble& trouble)
    : m_value(value.is_object() ? value : emptyObject())
    , m_path(std::move(path))
    , m_trouble(trouble)
{
    if (!value.is_object())
        m_trouble.report(m_path, PADSIDE_SAY("{0}: fields in curly braces are needed here."));
}

std::string JsonObject::pathOf(std::string_view field) const
{
    return m_path.empty() ? std::string(field) : m_path + "/" + std::string(field);
}

bool JsonObject::has(std::string_view field) const
{
    return m_value.contains(std::string(field));
}

const Json* JsonObject::needed(std::string_view field)
{
    m_asked.emplace(field);
    const auto found = m_value.find(std::string(field));
    if (found != m_value.end())
        return &*found;
    m_trouble.report(pathOf(field), PADSIDE_SAY("{0}: this is missing."));
    return nullptr;
}

std::string JsonObject::text(std::string_view field)
{
    const Json* value = needed(field);
    if (value == nullptr)
        return {};
    if (value->is_string() && !isBlank(value->get<std::string>()))
        return value->get<std::string>();
    m_trouble.report(pathOf(field), PADSIDE_SAY("{0}: words in quotation marks are needed here."));
    return {};
}

double JsonObject::number(std::string_view field)
{
    const Json* value = needed(field);
    if (value == nullptr)
        return 0;
    if (value->is_number() && std::isfinite(value->get<double>()))
        return value->get<double>();
    m_trouble.report(pathOf(field), PADSIDE_SAY("{0}: a number without quotation marks is needed here."));
    return 0;
}

bool JsonObject::flag(std::string_view field)
{
    const Json* value = needed(field);
    if (value == nullptr)
        return false;
    if (value->is_boolean())
        return value->get<bool>();
    m_trouble.report(pathOf(field), PADSIDE_SAY("{0}: true or false is needed here, without quotation marks."));
    return false;
}

bool JsonObject::flagOr(std::string_view field, bool fallback)
{
    return has(field) ? flag(field) : fallback;
}

std::vector<std::string> JsonObject::texts(std::string_view field)
{
    const Json* value = needed(field);
    if (value == nullptr)
        return {};
    const bool fits = value->is_array() && std::ranges::all_of(*value, [](const Json& item) {
                          return item.is_string() && !isBlank(item.get<std::string>());
                      });
    if (fits)
        return value->get<std::vector<std::string>>();
    m_trouble.report(pathOf(field), PADSIDE_SAY("{0}: a list of words in square brackets is needed here."));
    return {};
}

std::vector<double> JsonObject::numbers(std::string_view field)
{
    const Json* value = needed(field);
    if (value == nullptr)
        return {};
    const bool fits = value->is_array() && std::ranges::all_of(*value, [](const Json& item) {
                          return item.is_number() && std::isfinite(item.get<double>());
                      });
    if (fits)
        return value->get<std::vector<double>>();
    m_trouble.report(pathOf(field), PADSIDE_SAY("{0}: a list of numbers in square brackets is needed here."));
    return {};
}

JsonObject JsonObject::object(std::string_view field)
{
    const Json* value = needed(field);
    return {value != nullptr ? *value : emptyObject(), pathOf(field), m_trouble};
}

std::vector<JsonObject::Member> JsonObject::members()
{
    std::vector<Member> all;
    for (const auto& [code, value] : m_value.items()) {
        m_asked.insert(code);
        if (!isCode(code)) {
            m_trouble.report(pathOf(code),
                             PADSIDE_SAY("{0}: a code has only small letters a to z, digits and hyphens."));
        }
        all.push_back({code, JsonObject(value, pathOf(code), m_trouble)});
    }
    return all;
}

void JsonObject::nothingElse()
{
    for (const auto& [field, value] : m_value.items()) {
        if (!m_asked.contains(field))
            m_trouble.report(pathOf(field), PADSIDE_SAY("{0}: the catalogue knows no such field here."));
    }
}

void JsonObject::unknownCode(const std::string& path, const std::string& code, const std::string& known)
{
    m_trouble.report(path, PADSIDE_SAY("{0}: \"{1}\" is not known here. It can be: {2}."), {code, known});
}

} // namespace padside
