// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/visit_log.h"

#include "core/store/drafts.h"
#include "core/store/photo_files.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/transaction.h"
#include "core/store/visit_book.h"
#include "ui/models/photo_intake.h"
#include "ui/models/record_book.h"

#include <algorithm>

namespace padside {

namespace {

StoreError refusal(const char* pattern)
{
    return StoreError(Problem{ProblemKind::refused, Sentence{pattern, {}}});
}

} // namespace

VisitId startVisit(RecordBook& book, UnitId unit, VisitReason reason)
{
    std::optional<Visit> open;
    if (!book.attempt([&] { open = book.store().visits().openVisitOf(unit); }))
        return {};
    if (open)
        return open->id;
    Visit visit;
    visit.id = book.ids().make<VisitId>();
    visit.unitId = unit;
    visit.on = book.today();
    visit.reason = reason;
    visit.technician = book.surroundings().technician.toStdString();
    visit.openedAt = book.now();
    if (!book.change(unit, [&] { book.store().visits().open(visit); }))
        return {};
    return visit.id;
}

VisitLog::VisitLog(RecordBook& book)
    : m_book(book)
{
}

bool VisitLog::turnTo(VisitId id)
{
    return m_book.attempt([&] {
        const std::optional<Visit> visit = m_book.store().visits().visit(id);
        if (!visit)
            throw refusal(PADSIDE_SAY("This visit is no longer in the file. Go back to the unit and choose another."));
        if (visit->id != m_visit.id)
            m_reason.clear();
        m_visit = *visit;
    });
}

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

template <typename AnyEntry> bool VisitLog::putEntry(AnyEntry entry)
{
    return m_book.change(m_visit.unitId, [&] { m_book.store().visits().put(prepared(std::move(entry))); });
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

bool VisitLog::putFinding(const Look& look, const Finding& finding)
{
    return m_book.change(m_visit.unitId, [&] {
        Transaction together(m_book.store());
        m_book.store().visits().put(prepared(finding));
        if (!look.standing) {
            m_book.store().drafts().remove(QString::fromStdString(lookKey(look, "wetness")));
            m_book.store().drafts().remove(QString::fromStdString(lookKey(look, "note")));
        }
        together.commit();
    });
}

bool VisitLog::see(const Look& look, Grade grade)
{
    Finding finding = findingOf(look);
    finding.sight = grade;
    return putFinding(look, finding);
}

bool VisitLog::notSee(const Look& look, NotSeenReason reason)
{
    Finding finding = findingOf(look);
    finding.sight = reason;
    return putFinding(look, finding);
}

bool VisitLog::setWetness(const Look& look, Wetness wetness)
{
    if (!look.standing && m_visit.isOpen())
        return m_book.change(m_visit.unitId, [&] {
            m_book.store().drafts().setText(
                QString::fromStdString(lookKey(look, "wetness")),
                QString::fromUtf8(codeOf(wetness).data(), static_cast<qsizetype>(codeOf(wetness).size())));
        });
    Finding finding = findingOf(look);
    finding.wetness = wetness;
    return putFinding(look, finding);
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
        Transaction together(m_book.store());
        Finding finding = findingOf(look);
        finding.note = note;
        m_book.store().visits().put(prepared(finding));
        m_book.store().drafts().remove(QString::fromStdString(lookKey(look, "note")));
        together.commit();
    });
}

bool VisitLog::put(Reading reading)
{
    return putEntry(std::move(reading));
}
bool VisitLog::put(Treatment treatment)
{
    return putEntry(std::move(treatment));
}
bool VisitLog::put(ChargeEntry charge)
{
    return putEntry(std::move(charge));
}

bool VisitLog::put(FollowUp followUp)
{
    return m_book.change(m_visit.unitId, [&] {
        followUp.unitId = m_visit.unitId;
        if (followUp.id.isNull()) {
            followUp.id = m_book.ids().make<FollowUpId>();
            followUp.madeAt = m_visit.id;
        }
        m_book.store().visits().put(followUp);
    });
}

bool VisitLog::remove(const Reading& reading)
{
    return m_book.change(m_visit.unitId, [&] { m_book.store().visits().remove(reading); });
}

bool VisitLog::remove(const Treatment& treatment)
{
    return m_book.change(m_visit.unitId, [&] { m_book.store().visits().remove(treatment); });
}

bool VisitLog::remove(const ChargeEntry& charge)
{
    return m_book.change(m_visit.unitId, [&] { m_book.store().visits().remove(charge); });
}

bool VisitLog::remove(const FollowUp& followUp)
{
    return m_book.change(m_visit.unitId, [&] { m_book.store().visits().remove(followUp); });
}

bool VisitLog::remove(const Photo& photo)
{
    return m_book.change(m_visit.unitId, [&] { m_book.store().visits().remove(photo); });
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
        Transaction together(m_book.store());
        m_book.store().visits().put(photo);
        m_book.store().photos().setThumbnail(photo.id, taken.thumbnail);
        together.commit();
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
        Transaction together(m_book.store());
        m_book.store().visits().put(prepared(work));
        m_book.store().sites().replacePart(old.id, m_visit.on, work.note, fresh);
        together.commit();
    });
}

bool VisitLog::changeVisit(const Visit& visit)
{
    return m_book.change(m_visit.unitId, [&] {
        m_book.store().visits().change(visit);
        m_visit = visit;
    });
}

bool VisitLog::setConditions(const Conditions& conditions)
{
    Visit visit = m_visit;
    visit.conditions = conditions;
    return changeVisit(visit);
}

bool VisitLog::setTechnician(const std::string& name)
{
    Visit visit = m_visit;
    visit.technician = name;
    return changeVisit(visit);
}

bool VisitLog::setReason(VisitReason reason)
{
    Visit visit = m_visit;
    visit.reason = reason;
    return changeVisit(visit);
}

bool VisitLog::setVisitNote(const std::string& note)
{
    Visit visit = m_visit;
    visit.note = note;
    return changeVisit(visit);
}

bool VisitLog::close()
{
    const Instant at = m_book.now();
    return m_book.change(m_visit.unitId, [&] {
        m_book.store().visits().close(m_visit.id, at);
        m_visit.closedAt = at;
    });
}

} // namespace padside
