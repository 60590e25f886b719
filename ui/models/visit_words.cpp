// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/visit_words.h"

#include "core/catalogue/catalogue.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QCoreApplication>

namespace padside {

using namespace Qt::Literals::StringLiterals;

QString translated(const RecordBook& book, std::string_view english)
{
    return QString::fromStdString(book.speaker().translate(std::string(english)));
}

QString partTitle(const RecordBook& book, const Part& part)
{
    const PartKind* kind = book.catalogue().partKind(part.kind);
    const QString name = translated(book, kind ? kind->name : part.kind);
    return part.position.empty() ? name : name + u", "_s + translated(book, part.position);
}

QString zoneTitle(const RecordBook& book, const Part& part, const Zone& zone)
{
    if (!zone.name.empty())
        return translated(book, zone.name);
    const ZoneKind* kind = book.catalogue().zoneKind(part.kind, zone.kind);
    return translated(book, kind ? kind->name : zone.kind);
}

QString placeTitle(const RecordBook& book, const UnitRecord& record, ZoneId zone)
{
    const Part* part = partOfZone(record, zone);
    const Zone* one = findZone(record, zone);
    if (!part || !one)
        return QCoreApplication::translate("Visit", "a zone");
    return QCoreApplication::translate("Visit", "%1: %2", "part: zone")
        .arg(partTitle(book, *part), zoneTitle(book, *part, *one));
}

QString stepName(const char* english)
{
    return QCoreApplication::translate("Visit", english);
}

QString nameOf(const RecordBook& book, const Reading& reading)
{
    for (const ReadingKind& kind : book.catalogue().readingKinds()) {
        if (kind.code == reading.kind)
            return translated(book, kind.name);
    }
    return shown(reading.kind);
}

QString nameOf(const RecordBook& book, const Treatment& work)
{
    return translated(book, wordOf(work.kind));
}

QString nameOf(const RecordBook& book, const ChargeEntry& charge)
{
    return QCoreApplication::translate("Visit", "refrigerant %1", "refrigerant added")
        .arg(translated(book, wordOf(charge.direction)));
}

} // namespace padside
