// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/subject.h"

#include <algorithm>

namespace padside {

namespace {

Argument partName(const Catalogue& catalogue, const Part& part)
{
    const PartKind* kind = catalogue.partKind(part.kind);
    return kind != nullptr ? Argument(Word{kind->name}) : Argument(part.kind);
}

/// " (upper)"; nothing where the kind alone says which part is meant.
Bracketed positionInBrackets(const UnitRecord& record, const Part& part)
{
    const auto sameKind = std::ranges::count_if(
        record.parts, [&](const Part& other) { return other.kind == part.kind && other.removedOn == part.removedOn; });
    return Bracketed{sameKind > 1 ? part.position : std::string()};
}

/// A name the person gave is theirs and stays as it is; the catalogue's own is a word to translate.
Argument zoneName(const Catalogue& catalogue, const Part& part, const Zone& zone)
{
    const ZoneKind* kind = catalogue.zoneKind(part.kind, zone.kind);
    if (kind != nullptr && (zone.name == kind->name || zone.name.empty()))
        return Word{kind->name};
    return zone.name.empty() ? zone.kind : zone.name;
}

} // namespace

std::vector<Argument> subjectOf(const UnitRecord& record, const Catalogue& catalogue, const Part& part,
                                const Zone* zone)
{
    std::vector<Argument> subject{partName(catalogue, part), positionInBrackets(record, part)};
    if (zone != nullptr)
        subject.push_back(zoneName(catalogue, part, *zone));
    return subject;
}

Sentence about(std::vector<Argument> subject, std::string pattern, std::vector<Argument> rest)
{
    subject.insert(subject.end(), rest.begin(), rest.end());
    return Sentence{std::move(pattern), std::move(subject)};
}

} // namespace padside
