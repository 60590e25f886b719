// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/catalogue/own_fields.h"

#include <array>
#include <nlohmann/json.hpp>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace padside {

/// The life of a part kind as it was learned from records.
struct LearntLife
{
    double medianLifeYears = 0;
    std::array<double, 4> gradeShares{}; ///< of the life spent in grades 1 to 4
    Date learntOn{};
};

/// A person's own changes to the catalogue, edited one by one over what we ship. What they changed by hand where there
/// is no field for it stays as it is.
class OwnChanges
{
public:
    /// `patch` is the JSON merge patch (RFC 7396) kept in the file; empty if there is none.
    [[nodiscard]] static Result<OwnChanges> read(std::span<const std::string> shipped, const std::string& patch);

    /// Codes of our part kinds, in our order.
    [[nodiscard]] std::vector<std::string> partKinds() const;
    [[nodiscard]] bool differs(const std::string& partKind) const;
    /// All that can be edited, with ours and the person's own; valid as long as these changes stay as they are.
    [[nodiscard]] OwnFields fields() const;
    [[nodiscard]] std::set<Consequence> ourConsequences(const std::string& partKind) const;
    [[nodiscard]] std::set<Consequence> consequences(const std::string& partKind) const; ///< the person's, else ours

    /// Puts the value in place of ours. The same as ours is no change.
    void set(const JsonPath& path, const CatalogueValue& value);
    void setConsequences(const std::string& partKind, const std::set<Consequence>& consequences);
    void putBack(const JsonPath& path);
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
    void put(const JsonPath& path, const nlohmann::ordered_json& value);

    std::vector<std::string> m_shipped;
    nlohmann::ordered_json m_ours;
    nlohmann::ordered_json m_own;
};

} // namespace padside
