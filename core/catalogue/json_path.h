// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json.hpp>
#include <span>
#include <string>
#include <vector>

namespace padside {

/// The codes that lead to a value: "part_kinds", "pad", "grades", "3".
using JsonPath = std::vector<std::string>;

/// What stands there, or nullptr.
[[nodiscard]] const nlohmann::ordered_json* valueAt(const nlohmann::ordered_json& top, const JsonPath& path);

/// Puts a value there; what is no object on the way becomes one.
void putAt(nlohmann::ordered_json& top, const JsonPath& path, const nlohmann::ordered_json& value);

/// Takes the value away, and the objects that are empty without it.
void eraseAt(nlohmann::ordered_json& top, std::span<const std::string> path);

} // namespace padside
