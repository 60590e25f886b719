// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/review/random_record.h"

#include "tests/support/record_builder.h"

#include <algorithm>
#include <random>

namespace padside::test {

namespace {

const std::vector<std::pair<std::string, std::vector<std::string>>> kinds{
    {"suction-accumulator", {"crown", "shell", "bottom"}},
    {"fan-blade", {"root"}},
    {"fins", {"face"}},
    {"base-pan", {"corners"}},
    {"run-capacitor", {"case"}},
    {"ice-guard", {"mesh"}}};

class Dice
{
public:
    explicit Dice(std::uint32_t seed)
        : m_random(seed)
    {
    }
    int upTo(int most) { return static_cast<int>(m_random() % static_cast<std::uint32_t>(most + 1)); }
    bool oneIn(int count) { return upTo(count - 1) == 0; }

private:
    std::mt19937 m_random;
};

void look(RecordBuilder& unit, Dice& dice, const std::string& zone)
{
    if (dice.oneIn(5)) {
        unit.notSeen(zone, static_cast<NotSeenReason>(dice.upTo(6)));
    } else if (!dice.oneIn(6)) {
        unit.graded(zone, 1 + dice.upTo(4)).wet(static_cast<Wetness>(dice.upTo(2)));
        if (dice.oneIn(12))
            unit.corrected(1 + dice.upTo(4), "read wrongly");
    }
    if (dice.oneIn(4)) {
        unit.treated(zone, static_cast<TreatmentKind>(dice.upTo(5)));
        if (dice.oneIn(2))
            unit.graded(zone, 1 + dice.upTo(4), Phase::asLeft);
    }
}

} // namespace

UnitRecord randomRecord(std::uint32_t seed)
{
    Dice dice(seed);
    auto unit = aUnit("HB-01");
    std::vector<std::string> zones;
    for (const auto& [kind, zonesOfKind] : kinds) {
        if (dice.oneIn(4))
            continue;
        unit.withPart(kind, zonesOfKind, dice.oneIn(2) ? "2015-02-28" : std::string());
        zones.insert(zones.end(), zonesOfKind.begin(), zonesOfKind.end());
    }
    Date on = day("2018-02-28");
    const int visits = dice.upTo(12);
    for (int i = 0; i < visits; ++i) {
        on += std::chrono::days(dice.oneIn(5) ? 0 : dice.upTo(480));
        unit.visit(isoText(on), static_cast<VisitReason>(dice.upTo(2)), i + 1 < visits || dice.oneIn(2));
        for (const std::string& zone : zones)
            look(unit, dice, zone);
        if (!zones.empty() && dice.oneIn(6))
            unit.followUp(zones.front(), isoText(on), isoText(on + std::chrono::days(dice.upTo(200))), "look");
        if (!zones.empty() && dice.oneIn(8))
            unit.replacedPart(unit.build().parts.front().kind, isoText(on));
    }
    return unit.build();
}

UnitRecord shuffled(UnitRecord record, std::uint32_t seed)
{
    std::mt19937 random(seed);
    std::ranges::shuffle(record.findings, random);
    std::ranges::shuffle(record.treatments, random);
    return record;
}

} // namespace padside::test
