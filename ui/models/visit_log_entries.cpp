// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What is entered at a visit: findings, readings, work, refrigerant, promises, photographs.

#include "core/store/drafts.h"
#include "core/store/photo_files.h"
#include "core/store/store.h"
#include "ui/models/photo_intake.h"
#include "ui/models/record_book.h"
#include "ui/models/refusal.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_log.h"
#include "ui/models/visit_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace padside {

namespace {

template <typename AnyRow> std::optional<AnyRow> rowOf(const std::vector<AnyRow>& rows, const AnyRow& wanted)
{
    const auto found = std::ranges::find(rows, wanted.id, [](const AnyRow& row) { return row.id; });
    return found == rows.end() ? std::nullopt : std::optional<AnyRow>(*found);
}

} // namespace

std::string VisitLog::draftKey(const std::string& what) const
{
    return "visit/" + m_visit.id.text() + "/" + what;
}

std::string VisitLog::lookKey(const Look& look, const std::string& what) const
{
    return draftKey(what + "/" + look.zoneId.text() + "/" + std::string(codeOf(look.phase)));
}

std::optional<std::string> VisitLog::draft(const Look& look, const std::string& what) const
{
    std::optional<QString> text;
    m_book.attempt([&] { text = m_book.store().drafts().text(QString::fromStdString(lookKey(look, what))); });
    if (!text)
        return std::nullopt;
    return text->toStdString();
}

std::optional<Wetness> VisitLog::waitingWetness(const Look& look) const
{
    const auto code = draft(look, "wetness");
    return code ? fromCode<Wetness>(*code) : std::nullopt;
}

std::optional<std::string> VisitLog::waitingNote(const Look& look) const
{
    return draft(look, "note");
}

/// Fills in what every entry carries, and at a closed visit turns it into a correction.
template <typename AnyEntry> AnyEntry VisitLog::prepared(AnyEntry entry) const
{
    using EntryId = decltype(entry.id);
    entry.unitId = m_visit.unitId;
    entry.visitId = m_visit.id;
    entry.on = m_visit.on;
    entry.enteredAt = m_book.now();
    if (!m_visit.isOpen()) {
        if (m_reason.empty())
            throw refusal(
                PADSIDE_SAY("This visit is closed. Choose “Correct an entry” and say why, then enter it again."));
        if (entry.id.isNull())
            throw refusal(PADSIDE_SAY(
                "Nothing was entered here at this visit, so there is nothing to correct. Enter it at a new visit."));
        entry.correction = Correction<EntryId>{entry.id, m_reason};
        entry.id = EntryId{};
    }
    if (entry.id.isNull())
        entry.id = m_book.ids().template make<EntryId>();
    return entry;
}

template <typename AnyEntry>
bool VisitLog::putEntry(AnyEntry entry, std::vector<AnyEntry> UnitRecord::*all, VisitPlace place)
{
    return m_book.change(m_visit.unitId, [&] {
        const auto before = m_visit.isOpen() ? rowOf(m_book.record(m_visit.unitId).*all, entry) : std::nullopt;
        const AnyEntry after = prepared(std::move(entry));
        enter({RowChange<AnyEntry>{before, after}}, {nameOf(m_book, after), std::move(place), {}});
    });
}

template <typename AnyRow> bool VisitLog::removeRow(const AnyRow& row, const QString& name, VisitPlace place)
{
    return m_book.change(m_visit.unitId, [&] {
        enter({RowChange<AnyRow>{row, std::nullopt}},
              {stepName(QT_TRANSLATE_NOOP("Visit", "removal of %1")).arg(name), std::move(place), {}});
    });
}

Finding VisitLog::findingOf(const Look& look) const
{
    if (look.standing)
        return *look.standing;
    Finding finding;
    finding.zoneId = look.zoneId;
    finding.phase = look.phase;
    finding.wetness = waitingWetness(look);
    finding.note = waitingNote(look).value_or(std::string());
    return finding;
}

DraftChange VisitLog::taken(const Look& look, const std::string& what) const
{
    const QString key = QString::fromStdString(lookKey(look, what));
    return DraftChange{key, m_book.store().drafts().text(key), std::nullopt};
}

bool VisitLog::putFinding(const Look& look, const Finding& finding, const QString& name)
{
    return m_book.change(m_visit.unitId, [&] {
        VisitEdit edit{RowChange<Finding>{m_visit.isOpen() ? look.standing : std::nullopt, prepared(finding)}};
        if (!look.standing) {
            edit.emplace_back(taken(look, "wetness"));
            edit.emplace_back(taken(look, "note"));
        }
        const QString where = placeTitle(m_book, m_book.record(m_visit.unitId), look.zoneId);
        enter(edit, {name.arg(where), {VisitPlace::Part::zone, look.zoneId, look.phase, {}}, {}});
    });
}

bool VisitLog::see(const Look& look, Grade grade)
{
    Finding finding = findingOf(look);
    finding.sight = grade;
    return putFinding(look, finding, stepName(QT_TRANSLATE_NOOP("Visit", "grade %1 on %2")).arg(numeral(grade)));
}

bool VisitLog::notSee(const Look& look, NotSeenReason reason)
{
    Finding finding = findingOf(look);
    finding.sight = reason;
    return putFinding(look, finding, stepName(QT_TRANSLATE_NOOP("Visit", "“not seen” on %1")));
}

bool VisitLog::setWetness(const Look& look, Wetness wetness)
{
    const QString name = stepName(QT_TRANSLATE_NOOP("Visit", "“%1” on %2")).arg(translated(m_book, wordOf(wetness)));
    if (look.standing || !m_visit.isOpen()) {
        Finding finding = findingOf(look);
        finding.wetness = wetness;
        return putFinding(look, finding, name);
    }
    return m_book.change(m_visit.unitId, [&] {
        DraftChange waiting = taken(look, "wetness");
        waiting.after = shown(codeOf(wetness));
        const QString where = placeTitle(m_book, m_book.record(m_visit.unitId), look.zoneId);
        enter({waiting}, {name.arg(where), {VisitPlace::Part::zone, look.zoneId, look.phase, {}}, {}});
    });
}

bool VisitLog::draftNote(const Look& look, const std::string& note)
{
    return m_book.attempt([&] {
        m_book.store().drafts().setText(QString::fromStdString(lookKey(look, "note")), QString::fromStdString(note));
    });
}

bool VisitLog::setNote(const Look& look, const std::string& note)
{
    if (!look.standing && m_visit.isOpen())
        return note.empty()
            ? m_book.attempt([&] { m_book.store().drafts().remove(QString::fromStdString(lookKey(look, "note"))); })
            : draftNote(look, note);
    return m_book.change(m_visit.unitId, [&] {
        Finding finding = findingOf(look);
        finding.note = note;
        const std::string key = lookKey(look, "note");
        // What was being typed has become this note: taking it back brings the old note, not the typing.
        VisitEdit edit{RowChange<Finding>{m_visit.isOpen() ? look.standing : std::nullopt, prepared(finding)},
                       DraftChange{QString::fromStdString(key), std::nullopt, std::nullopt}};
        const QString where = placeTitle(m_book, m_book.record(m_visit.unitId), look.zoneId);
        if (changesNothing(edit))
            m_book.store().drafts().remove(QString::fromStdString(key));
        enter(edit,
              {stepName(QT_TRANSLATE_NOOP("Visit", "note on %1")).arg(where),
               {VisitPlace::Part::zone, look.zoneId, look.phase, {}},
               key});
    });
}

bool VisitLog::put(Reading reading)
{
    VisitPlace place{VisitPlace::Part::readings, reading.zoneId, reading.phase, reading.kind};
    return putEntry(std::move(reading), &UnitRecord::readings, std::move(place));
}

bool VisitLog::put(Treatment treatment)
{
    VisitPlace place{VisitPlace::Part::work, treatment.zoneId, Phase::asFound, {}};
    return putEntry(std::move(treatment), &UnitRecord::treatments, std::move(place));
}

bool VisitLog::put(ChargeEntry charge)
{
    return putEntry(std::move(charge), &UnitRecord::charges, {VisitPlace::Part::refrigerant, {}, {}, {}});
}

bool VisitLog::put(FollowUp followUp)
{
    return m_book.change(m_visit.unitId, [&] {
        followUp.unitId = m_visit.unitId;
        if (followUp.id.isNull()) {
            followUp.id = m_book.ids().make<FollowUpId>();
            followUp.madeAt = m_visit.id;
        }
        const auto before = rowOf(m_book.record(m_visit.unitId).followUps, followUp);
        enter({RowChange<FollowUp>{before, followUp}},
              {stepName(QT_TRANSLATE_NOOP("Visit", "promise to look again")),
               {VisitPlace::Part::work, followUp.zoneId, Phase::asFound, {}},
               {}});
    });
}

bool VisitLog::put(Photo photo)
{
    return m_book.change(m_visit.unitId, [&] {
        const QByteArray thumbnail = m_book.store().photos().thumbnail(photo.id);
        const auto row = rowOf(m_book.record(m_visit.unitId).photos, photo);
        std::optional<KeptPhoto> before;
        if (row && m_visit.isOpen())
            before = KeptPhoto{*row, thumbnail};
        const Photo after = prepared(std::move(photo));
        enter({RowChange<KeptPhoto>{std::move(before), KeptPhoto{after, thumbnail}}},
              {stepName(QT_TRANSLATE_NOOP("Visit", "where a photo belongs")),
               {VisitPlace::Part::zone, after.zoneId, after.phase, {}},
               {}});
    });
}

bool VisitLog::remove(const Reading& reading)
{
    return removeRow(reading, nameOf(m_book, reading),
                     {VisitPlace::Part::readings, reading.zoneId, reading.phase, reading.kind});
}

bool VisitLog::remove(const Treatment& treatment)
{
    return removeRow(treatment, nameOf(m_book, treatment), {VisitPlace::Part::work, treatment.zoneId, {}, {}});
}

bool VisitLog::remove(const ChargeEntry& charge)
{
    return removeRow(charge, nameOf(m_book, charge), {VisitPlace::Part::refrigerant, {}, {}, {}});
}

bool VisitLog::remove(const FollowUp& followUp)
{
    return removeRow(followUp, stepName(QT_TRANSLATE_NOOP("Visit", "promise to look again")),
                     {VisitPlace::Part::work, followUp.zoneId, {}, {}});
}

bool VisitLog::remove(const Photo& photo)
{
    KeptPhoto kept{photo, {}};
    return m_book.attempt([&] { kept.thumbnail = m_book.store().photos().thumbnail(photo.id); })
        && removeRow(kept, stepName(QT_TRANSLATE_NOOP("Visit", "photo")),
                     {VisitPlace::Part::zone, photo.zoneId, photo.phase, {}});
}

bool VisitLog::addPhoto(const TakenPhoto& taken, std::optional<ZoneId> zone, Phase phase)
{
    return m_book.change(m_visit.unitId, [&] {
        Photo photo;
        photo.zoneId = zone;
        photo.phase = phase;
        photo.mediaType = taken.mediaType;
        photo.originalName = taken.originalName.toStdString();
        photo.width = taken.size.width();
        photo.height = taken.size.height();
        photo = prepared(std::move(photo));
        const PhotoFiles::Kept kept = m_book.store().photos().keep(taken.content, taken.mediaType);
        photo.sha256 = kept.sha256;
        photo.bytes = kept.bytes;
        enter({RowChange<KeptPhoto>{std::nullopt, KeptPhoto{photo, taken.thumbnail}}},
              {stepName(QT_TRANSLATE_NOOP("Visit", "photo")), {VisitPlace::Part::zone, zone, phase, {}}, {}});
    });
}

bool VisitLog::replacePart(const Part& old, Treatment work, const std::string& maker, const std::string& model)
{
    return m_book.change(m_visit.unitId, [&] {
        Part fresh = old;
        fresh.id = m_book.ids().make<PartId>();
        fresh.maker = maker;
        fresh.model = model;
        fresh.fittedOn = m_visit.on;
        fresh.removedOn.reset();
        fresh.removedBecause.clear();
        fresh.replaces = old.id;
        fresh.note.clear();
        for (Zone& zone : fresh.zones)
            zone = Zone{m_book.ids().make<ZoneId>(), fresh.id, zone.kind, zone.name};
        work.kind = TreatmentKind::replace;
        work.partId = old.id;
        work.zoneId.reset();
        const auto at = old.zones.empty() ? std::nullopt : std::optional<ZoneId>(old.zones.front().id);
        enter({RowChange<Treatment>{std::nullopt, prepared(work)},
               RowChange<PartReplacement>{std::nullopt, PartReplacement{old.id, m_visit.on, work.note, fresh}}},
              {stepName(QT_TRANSLATE_NOOP("Visit", "new part for %1")).arg(partTitle(m_book, old)),
               {VisitPlace::Part::work, at, Phase::asFound, {}},
               {}});
    });
}

} // namespace padside
