// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/assumption.h"
#include "core/catalogue/json_path.h"
#include "core/quantity/sentence.h"

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace padside {

/// A text of the catalogue, a figure, a yes or no, or several figures that belong together.
using CatalogueValue = std::variant<std::string, double, bool, std::vector<double>>;

/// One thing of the catalogue that a person may put their own way.
struct OwnField
{
    enum class Form { text, number, yesNo, numbers };

    JsonPath path;
    Sentence label; ///< "Grade 3 marked", "Lead time of a spare, in days"
    Form form = Form::text;
    std::optional<CatalogueValue> ours; ///< empty: our catalogue says nothing here
    std::optional<CatalogueValue> own; ///< empty: ours holds
    double shownTimes = 1; ///< a share is written as 0.02 and shown as 2 %: 100
    std::string sentence; ///< what it decides, in English; may be empty
    std::string source; ///< where ours comes from, in English; may be empty
};

/// What a person may put their own way, read from our texts and their changes; both outlive it.
class OwnFields
{
public:
    OwnFields(const nlohmann::ordered_json& ours, const nlohmann::ordered_json& own);

    [[nodiscard]] std::vector<OwnField> ofPartKind(const std::string& partKind) const; ///< texts and life
    [[nodiscard]] std::vector<OwnField>
    supply(const std::string& partKind) const; ///< none where no spare is thought of
    [[nodiscard]] std::vector<OwnField> costs(const std::string& partKind) const; ///< ours say nothing there
    /// General figures and prices; that of each of these refrigerants (codes and how they are written) by the kilogram.
    [[nodiscard]] std::vector<OwnField>
    money(const std::vector<std::pair<std::string, std::string>>& refrigerants) const;
    [[nodiscard]] std::vector<OwnField> assumptions(AssumptionTopic topic) const;
    [[nodiscard]] std::vector<OwnField> outlook() const;

private:
    [[nodiscard]] OwnField field(JsonPath path, Sentence label, OwnField::Form form) const;
    [[nodiscard]] std::string ourText(const JsonPath& path) const;
    void addZones(const JsonPath& kind, std::vector<OwnField>& fields) const;
    void addTasks(const JsonPath& kind, std::vector<OwnField>& fields) const;
    void addProtections(std::vector<OwnField>& fields) const;

    const nlohmann::ordered_json& m_ours;
    const nlohmann::ordered_json& m_own;
};

/// What is wrong with a value, told about the label the person knows the field by (in their language) and in the
/// figures they see there.
[[nodiscard]] Sentence troubleWith(const OwnField& field, const std::string& label, Sentence trouble);

} // namespace padside
