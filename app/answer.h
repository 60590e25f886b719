// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <iosfwd>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace CLI { // NOLINT(readability-identifier-naming): the library's own name
class App;
}

namespace padside {

enum class AnswerForm { table, json, csv, icalendar };

/// Adds "--as FORM" with the forms this command knows; a table is the default.
void addFormOption(CLI::App& command, AnswerForm& form, const std::vector<AnswerForm>& forms);

/// Rows of an answer: each a JSON object with the same keys. The table shows `shown` of them under their headings; JSON
/// and CSV carry all keys.
struct Answer
{
    struct Shown
    {
        std::string key;
        std::string heading;
    };

    std::vector<Shown> shown;
    std::vector<std::string> keys;
    std::vector<nlohmann::ordered_json> rows;
    std::string whenEmpty; ///< what the table says without rows
};

/// A value of an answer in JSON; null where there is none.
template <typename Value> [[nodiscard]] nlohmann::ordered_json orNull(const std::optional<Value>& value)
{
    return value ? nlohmann::ordered_json(*value) : nlohmann::ordered_json(nullptr);
}

/// Writes the answer as table, JSON (an array) or CSV (RFC 4180).
void write(const Answer& answer, AnswerForm form, std::ostream& out);

} // namespace padside
