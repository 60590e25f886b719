// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/json_path.h"

namespace padside {

const nlohmann::ordered_json* valueAt(const nlohmann::ordered_json& top, const JsonPath& path)
{
    const nlohmann::ordered_json* at = &top;
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

void putAt(nlohmann::ordered_json& top, const JsonPath& path, const nlohmann::ordered_json& value)
{
    nlohmann::ordered_json* at = &top;
    for (const std::string& key : path) {
        if (!at->is_object())
            *at = nlohmann::ordered_json::object();
        at = &(*at)[key];
    }
    *at = value;
}

void eraseAt(nlohmann::ordered_json& top, std::span<const std::string> path)
{
    if (path.empty() || !top.is_object() || !top.contains(path.front()))
        return;
    nlohmann::ordered_json& next = top[path.front()];
    if (path.size() > 1)
        eraseAt(next, path.subspan(1));
    if (path.size() == 1 || (next.is_object() && next.empty()))
        top.erase(path.front());
}

} // namespace padside
