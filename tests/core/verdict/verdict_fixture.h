// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/verdict/suspicion.h"
#include "core/verdict/verdicts.h"
#include "resources/resources.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <optional>
#include <string>
#include <vector>

namespace padside::test {

/// Readings typed as people type them, on a unit with R-22 and a fixed orifice that runs cooling at sea level, judged
/// by the shipped catalogue.
class VerdictTest : public ::testing::Test
{
protected:
    VerdictTest()
    {
        const auto loaded = Catalogue::load(shippedCatalogue());
        EXPECT_TRUE(loaded) << (loaded ? std::string() : say(loaded.error().what));
        if (loaded)
            m_catalogue = *loaded;
        m_unit.refrigerant = "R-22";
        m_unit.metering = Metering::fixedOrifice;
        m_conditions.running = Running::cooling;
    }

    void read(const std::string& kind, const std::string& typed) { m_taken.push_back(taken(kind, typed)); }
    void readBefore(const std::string& kind, const std::string& typed) { m_before.push_back(taken(kind, typed)); }
    void onPlate(const std::string& item, const std::string& typed)
    {
        const NameplateItem* known = m_catalogue.nameplateItem(item);
        ASSERT_NE(known, nullptr) << item;
        m_unit.nameplate.push_back({item, *parseMeasure(typed, known->quantity)});
    }

    [[nodiscard]] Measured measured() const
    {
        return {m_taken, m_before, m_unit, m_altitudeM, m_conditions, m_catalogue};
    }
    [[nodiscard]] std::vector<Verdict> verdicts() const { return verdictsOn(measured()); }
    [[nodiscard]] std::optional<Verdict> verdict(const std::string& code) const
    {
        const auto all = verdicts();
        const auto found = std::ranges::find(all, code, &Verdict::code);
        return found == all.end() ? std::nullopt : std::optional(*found);
    }
    [[nodiscard]] std::string said(const std::string& code) const
    {
        const auto found = verdict(code);
        return found ? say(found->sentence) : std::string();
    }
    [[nodiscard]] Judgement judgementOf(const std::string& code) const
    {
        const auto found = verdict(code);
        EXPECT_TRUE(found) << code << " says nothing";
        return found ? found->judgement : Judgement::unjudged;
    }

    Catalogue m_catalogue;
    Unit m_unit;
    Conditions m_conditions;
    double m_altitudeM = 0;

private:
    [[nodiscard]] Taken taken(const std::string& kind, const std::string& typed) const
    {
        const ReadingKind* known = m_catalogue.readingKind(kind);
        EXPECT_NE(known, nullptr) << kind;
        const auto measure = parseMeasure(typed, known != nullptr ? known->quantity : QuantityKind::count);
        EXPECT_TRUE(measure) << typed;
        return {kind, std::nullopt, measure ? measure->si : 0, std::nullopt};
    }

    std::vector<Taken> m_taken;
    std::vector<Taken> m_before;
};

constexpr double fahrenheitStep = 5.0 / 9; // K

} // namespace padside::test
