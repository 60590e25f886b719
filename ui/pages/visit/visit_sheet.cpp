// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/visit_sheet.h"

#include "core/review/record_at.h"

#include <algorithm>
#include <ranges>

namespace padside {

namespace {

/// Whether the part stood in the unit when the visit began, or came in at it.
bool belongsTo(const Part& part, const Visit& visit, bool lookedAt)
{
    if (lookedAt)
        return true;
    if (part.fittedOn && *part.fittedOn > visit.on)
        return false;
    return !part.removedOn || *part.removedOn > visit.on;
}

/// Visits in the order they happened: an earlier place in the record is before.
class Before
{
public:
    Before(const UnitRecord& record, const Visit& visit)
        : m_visit(visit)
    {
        for (const Visit& one : record.visits) {
            if (one.id == visit.id)
                break;
            m_earlier.push_back(one.id);
        }
    }
    template <typename AnyEntry> [[nodiscard]] bool operator()(const AnyEntry& entry) const
    {
        return entry.visitId != m_visit.id && entry.on <= m_visit.on
            && std::ranges::find(m_earlier, entry.visitId) != m_earlier.end();
    }

private:
    const Visit& m_visit;
    std::vector<VisitId> m_earlier;
};

void takeFindings(ZoneLine& line, const std::vector<Finding>& findings, const Visit& visit, const Before& before)
{
    for (const Finding& finding : findings) {
        if (finding.zoneId != line.zone.id)
            continue;
        if (finding.visitId == visit.id)
            (finding.phase == Phase::asFound ? line.found : line.left) = finding;
        else if (before(finding) && finding.phase == Phase::asFound) {
            line.lastLook = finding;
            if (finding.seen())
                line.lastSeen = finding;
        }
    }
}

} // namespace

int VisitSheet::zonesToLookAt() const
{
    return static_cast<int>(std::ranges::count_if(zones, [](const ZoneLine& line) { return !line.fittedToday; }));
}

int VisitSheet::zonesLookedAt() const
{
    return static_cast<int>(
        std::ranges::count_if(zones, [](const ZoneLine& line) { return !line.fittedToday && line.found; }));
}

std::optional<Reading> VisitSheet::readingBefore(const std::string& kind, std::optional<PartId> part,
                                                 std::optional<ZoneId> zone) const
{
    const Before before(record, visit);
    std::optional<Reading> last;
    for (const Reading& reading : standing(record.readings)) {
        if (reading.kind == kind && reading.partId == part && reading.zoneId == zone && before(reading))
            last = reading;
    }
    return last;
}

std::optional<Reading> VisitSheet::readingToday(const std::string& kind, std::optional<PartId> part, Phase phase,
                                                std::optional<ZoneId> zone) const
{
    for (const Reading& reading : readings) {
        if (reading.kind == kind && reading.partId == part && reading.zoneId == zone && reading.phase == phase)
            return reading;
    }
    return std::nullopt;
}

VisitSheet visitSheet(UnitRecord record, VisitId id, const Catalogue& catalogue)
{
    VisitSheet sheet;
    const Visit* visit = findVisit(record, id);
    if (!visit)
        return sheet;
    sheet.visit = *visit;
    const auto ofToday = [id](const auto& entry) { return entry.visitId == id; };
    const std::vector<Finding> findings = standing(record.findings);
    const std::vector<Treatment> treatments = standing(record.treatments);
    const std::vector<Photo> photos = standing(record.photos);
    const Before before(record, sheet.visit);

    std::vector<Part> parts = record.parts;
    putInCatalogueOrder(parts, record.unit, catalogue);
    for (const Part& part : parts) {
        const bool lookedAt = std::ranges::any_of(findings, [&](const Finding& finding) {
            return ofToday(finding)
                && std::ranges::any_of(part.zones, [&](const Zone& zone) { return zone.id == finding.zoneId; });
        });
        if (!belongsTo(part, sheet.visit, lookedAt))
            continue;
        for (const Zone& zone : part.zones) {
            ZoneLine line;
            line.part = part;
            line.zone = zone;
            line.fittedToday = part.replaces && part.fittedOn == sheet.visit.on;
            takeFindings(line, findings, sheet.visit, before);
            for (const Photo& photo : photos) {
                if (photo.zoneId != zone.id)
                    continue;
                if (ofToday(photo))
                    line.photos.push_back(photo);
                else if (before(photo))
                    line.lastPhoto = photo;
            }
            std::ranges::copy_if(treatments, std::back_inserter(line.work), [&](const Treatment& work) {
                return ofToday(work) && work.partId == part.id && (!work.zoneId || *work.zoneId == zone.id);
            });
            sheet.zones.push_back(std::move(line));
        }
    }
    std::ranges::copy_if(standing(record.readings), std::back_inserter(sheet.readings), ofToday);
    std::ranges::copy_if(standing(record.charges), std::back_inserter(sheet.charges), ofToday);
    std::ranges::copy_if(record.followUps, std::back_inserter(sheet.followUps),
                         [id](const FollowUp& one) { return one.madeAt == id; });
    sheet.record = std::move(record);
    return sheet;
}

} // namespace padside
