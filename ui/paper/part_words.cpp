// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/part_words.h"

#include "core/quantity/sentence.h"

namespace padside {

QString PartWords::part(PartId id) const
{
    const Part* part = findPart(m_record, id);
    if (!part)
        return {};
    const PartKind* kind = m_catalogue.partKind(part->kind);
    const QString name = capitalised(word(kind ? kind->name : part->kind));
    return part->position.empty() ? name : QStringLiteral("%1 (%2)").arg(name, word(part->position));
}

QString PartWords::zone(ZoneId id) const
{
    const Part* part = partOfZone(m_record, id);
    const Zone* zone = findZone(m_record, id);
    if (!part || !zone)
        return {};
    return QStringLiteral("%1, %2").arg(this->part(part->id), word(zone->name));
}

QString PartWords::gradeSentence(ZoneId id, Grade grade) const
{
    const Part* part = partOfZone(m_record, id);
    const Zone* zone = findZone(m_record, id);
    if (!part || !zone)
        return {};
    const std::string sentence = m_catalogue.gradeSentence(part->kind, zone->kind, grade);
    return sentence.empty() ? QString() : word(sentence);
}

QString PartWords::day(Date date) const
{
    return fromCore(m_speaker.date(date));
}

QString PartWords::timeOn(const Instant& instant, Date sameDay) const
{
    const Date on = localDate(instant);
    const auto minutes = std::chrono::floor<std::chrono::minutes>(instant.utc + instant.offset - on).count();
    const QString time
        = QStringLiteral("%1:%2").arg(minutes / 60, 2, 10, QLatin1Char('0')).arg(minutes % 60, 2, 10, QLatin1Char('0'));
    return on == sameDay ? time : QStringLiteral("%1 %2").arg(day(on), time);
}

QString PartWords::word(std::string_view english) const
{
    return fromCore(m_speaker.translate(std::string(english)));
}

QString PartWords::said(const Sentence& sentence) const
{
    return fromCore(say(sentence, m_speaker));
}

QString PartWords::amount(double si, QuantityKind kind) const
{
    return fromCore(m_speaker.amount(Amount{si, kind}));
}

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString fromCore(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace padside
