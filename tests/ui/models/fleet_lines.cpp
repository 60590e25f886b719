// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/models/fleet_lines.h"

#include <algorithm>

namespace padside::test {

SiteId FleetLines::site(int number)
{
    return SiteId(UuidBytes{static_cast<std::uint8_t>(number)});
}

FleetLines& FleetLines::unit(const std::string& tag, int site, int worstGrade)
{
    UnitLine line;
    line.siteId = FleetLines::site(site);
    line.siteName = "Site " + std::to_string(site);
    line.unitId = UnitId(UuidBytes{0, static_cast<std::uint8_t>(m_lines.size() + 1)});
    line.tag = tag;
    line.kind = "split-air-conditioner";
    line.place = "north wall";
    line.worst = gradeFromNumeral(worstGrade);
    m_lines.push_back(line);
    ReviewedUnit reviewed;
    reviewed.unit.id = line.unitId;
    reviewed.unit.tag = tag;
    m_reviewed.push_back(reviewed);
    return *this;
}

FleetLines& FleetLines::kind(const std::string& code)
{
    m_lines.back().kind = code;
    return *this;
}

FleetLines& FleetLines::installed(Date day)
{
    m_lines.back().installedOn = day;
    return *this;
}

FleetLines& FleetLines::visited(Date day)
{
    m_lines.back().lastVisitOn = day;
    return *this;
}

FleetLines& FleetLines::retired()
{
    m_lines.back().retired = true;
    return *this;
}

FleetLines& FleetLines::flag(Severity severity, const std::string& says)
{
    Flag flag;
    flag.severity = severity;
    flag.sentence = Sentence{says, {}};
    m_reviewed.back().review.flags.push_back(flag);
    return *this;
}

FleetLines& FleetLines::check(Date latest)
{
    Check check;
    check.earliest = latest;
    check.latest = latest;
    m_reviewed.back().review.checks.push_back(check);
    return *this;
}

std::shared_ptr<const ReviewedFleet> FleetLines::reviewed() const
{
    auto fleet = std::make_shared<ReviewedFleet>();
    fleet->today = today;
    fleet->count = m_reviewed.size();
    for (const ReviewedUnit& unit : m_reviewed)
        fleet->units.push_back(std::make_shared<const ReviewedUnit>(unit));
    return fleet;
}

UnitId FleetLines::id(const std::string& tag) const
{
    return std::ranges::find(m_lines, tag, &UnitLine::tag)->unitId;
}

} // namespace padside::test
