// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/quantity/sentence.h"

#include <array>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace padside {

/// A text or a figure of the catalogue.
using CatalogueValue = std::variant<std::string, double>;

/// One thing of a part kind that a person may put their own way.
struct OwnField
{
    std::vector<std::string> path; ///< "part_kinds", "pad", "grades", "3"
    Sentence label; ///< "Grade 3 marked"
    bool isNumber = false;
    std::optional<CatalogueValue> ours; ///< empty: our catalogue says nothing here
    std::optional<CatalogueValue> own; ///< empty: ours holds
};

/// The life of a part kind as it was learned from records.
struct LearntLife
{
    double medianLifeYears = 0;
    std::array<double, 4> gradeShares{}; ///< of the life spent in grades 1 to 4
    Date learntOn{};
};

/// A person's own changes to part kinds, edited one by one over what we ship. What they changed elsewhere in the
/// catalogue, by hand, stays as it is.
class OwnChanges
{
public:
    /// `patch` is the JSON merge patch (RFC 7396) kept in the file; empty if there is none.
    [[nodiscard]] static Result<OwnChanges> read(std::span<const std::string> shipped, const std::string& patch);

    /// Codes of our part kinds, in our order.
    [[nodiscard]] std::vector<std::string> partKinds() const;
    [[nodiscard]] bool differs(const std::string& partKind) const;
    [[nodiscard]] std::vector<OwnField> fieldsOf(const std::string& partKind) const;
    [[nodiscard]] std::vector<OwnField> costFieldsOf(const std::string& partKind) const; ///< ours say nothing there
    /// General figures and prices; that of each of these refrigerants (codes and how they are written) by the kilogram.
    [[nodiscard]] std::vector<OwnField> moneyFields(const std::vector<std::pair<std::string, std::string>>& refrigerants
                                                    = {}) const;
    [[nodiscard]] std::set<Consequence> ourConsequences(const std::string& partKind) const;
    [[nodiscard]] std::set<Consequence> consequences(const std::string& partKind) const; ///< the person's, else ours

    /// Puts the value in place of ours. The same as ours is no change.
    void set(const std::vector<std::string>& path, const CatalogueValue& value);
    void setConsequences(const std::string& partKind, const std::set<Consequence>& consequences);
    void putBack(const std::vector<std::string>& path);
    void putBackPartKind(const std::string& partKind);

    /// Keeps what was learned of the life of one part kind (of its zones that get dirty, if `soils`) in place of ours.
    /// Shares are rounded to four places and add up to 1, lives to three figures; both within what a catalogue takes.
    void setLearntLife(const std::string& partKind, bool soils, const LearntLife& life);
    void putBackLearntLife(const std::string& partKind, bool soils);

    /// The merge patch to be kept; empty if nothing differs.
    [[nodiscard]] std::string patch() const;

    /// What the catalogue becomes, or the first thing wrong: its path is the sentence's first argument.
    [[nodiscard]] Result<Catalogue> catalogue() const;

private:
    OwnChanges(std::vector<std::string> shipped, nlohmann::ordered_json ours, nlohmann::ordered_json own);
    void put(const std::vector<std::string>& path, const nlohmann::ordered_json& value);
    [[nodiscard]] OwnField numberField(std::vector<std::string> path, Sentence label) const;

    std::vector<std::string> m_shipped;
    nlohmann::ordered_json m_ours;
    nlohmann::ordered_json m_own;
};

} // namespace padside
