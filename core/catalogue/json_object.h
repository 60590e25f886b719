// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"
#include "core/record/coded.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// Keeps the first thing found wrong, with its place in the text.
class Trouble
{
public:
    /// `pattern` begins with "{0}: "; the path stands there, `more` after it. Later troubles are dropped.
    void report(const std::string& path, std::string pattern, std::vector<Argument> more = {});

    [[nodiscard]] const std::optional<Problem>& first() const { return m_first; }

private:
    std::optional<Problem> m_first;
};

/// One object of the catalogue text, read field by field. Every misfit is reported with its path, and an empty value is
/// given in its place so that reading can go on. nothingElse() reports fields that nobody asked for.
class JsonObject
{
public:
    JsonObject(const nlohmann::ordered_json& value, std::string path, Trouble& trouble);

    [[nodiscard]] const std::string& path() const { return m_path; }
    [[nodiscard]] std::string pathOf(std::string_view field) const;
    [[nodiscard]] Trouble& trouble() const { return m_trouble; }

    [[nodiscard]] bool has(std::string_view field) const;
    [[nodiscard]] std::string text(std::string_view field); ///< needed, not blank
    [[nodiscard]] double number(std::string_view field); ///< needed
    [[nodiscard]] bool flag(std::string_view field); ///< needed
    [[nodiscard]] bool flagOr(std::string_view field, bool fallback);
    [[nodiscard]] std::vector<std::string> texts(std::string_view field); ///< needed, may be empty
    [[nodiscard]] std::vector<double> numbers(std::string_view field); ///< needed, may be empty
    [[nodiscard]] JsonObject object(std::string_view field); ///< needed

    /// The members of an object keyed by codes, in the order of the text. Bad codes are reported.
    struct Member;
    [[nodiscard]] std::vector<Member> members();

    /// The value of an enum by its code; an unknown code is reported with the codes there are.
    template <typename Enum> [[nodiscard]] Enum choice(std::string_view field)
    {
        return chosen<Enum>(text(field), pathOf(field));
    }

    template <typename Enum> [[nodiscard]] std::vector<Enum> choices(std::string_view field)
    {
        std::vector<Enum> values;
        for (const std::string& code : texts(field))
            values.push_back(chosen<Enum>(code, pathOf(field)));
        return values;
    }

    void nothingElse();

private:
    [[nodiscard]] const nlohmann::ordered_json* needed(std::string_view field);
    void unknownCode(const std::string& path, const std::string& code, const std::string& known);

    template <typename Enum> [[nodiscard]] Enum chosen(const std::string& code, const std::string& path)
    {
        if (const auto value = fromCode<Enum>(code))
            return *value;
        std::string known;
        for (const auto& row : codesOf(Enum{}))
            known += (known.empty() ? "" : ", ") + std::string(row.code);
        unknownCode(path, code, known);
        return Enum{};
    }

    const nlohmann::ordered_json& m_value;
    std::string m_path;
    Trouble& m_trouble;
    std::set<std::string, std::less<>> m_asked;
};

/// A member of an object keyed by codes.
struct JsonObject::Member
{
    std::string code;
    JsonObject object;
};

} // namespace padside
