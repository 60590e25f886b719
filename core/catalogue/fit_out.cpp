// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/fit_out.h"

namespace padside {

std::vector<Part> partsFor(const Unit& unit, const Catalogue& catalogue, IdMaker& ids,
                           const std::set<std::size_t>& leftOut, std::optional<Date> fittedOn)
{
    std::vector<Part> parts;
    const UnitKind* kind = catalogue.unitKind(unit.kind);
    if (!kind)
        return parts;
    for (std::size_t place = 0; place < kind->parts.size(); ++place) {
        const PartKind* partKind = catalogue.partKind(kind->parts[place].partKind);
        if (leftOut.contains(place) || !partKind)
            continue;
        Part part;
        part.id = ids.make<PartId>();
        part.unitId = unit.id;
        part.kind = partKind->code;
        part.position = kind->parts[place].position;
        part.fittedOn = fittedOn;
        for (const ZoneKind& zone : partKind->zones)
            part.zones.push_back(Zone{ids.make<ZoneId>(), part.id, zone.code, zone.name});
        parts.push_back(std::move(part));
    }
    return parts;
}

} // namespace padside
