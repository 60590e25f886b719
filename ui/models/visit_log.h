// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"
#include "ui/models/visit_command.h"

#include <QUndoStack>

#include <optional>
#include <string>

namespace padside {

class RecordBook;
struct TakenPhoto;

/// Opens a visit of today at `unit`, or resumes the one that is still open there (whatever its reason). A null id if
/// the store refused; the reason was then said by RecordBook::failed.
[[nodiscard]] VisitId startVisit(RecordBook& book, UnitId unit, VisitReason reason);

/// Everything that can be entered at one visit, each as one durable write. No widgets here.
///
/// Every function answers whether it was written; if not, RecordBook::failed has said why and nothing changed. At a
/// closed visit an entry is only written while correctBecause() holds a reason, and then as a correction of the entry
/// it stands for.
///
/// At an open visit each entry is a step that can be taken back. Closing forgets the steps: from then on entries are
/// corrected.
class VisitLog
{
public:
    explicit VisitLog(RecordBook& book);

    /// Turns to a visit; false if it could not be read.
    bool turnTo(VisitId id);
    [[nodiscard]] const Visit& visit() const { return m_visit; }

    /// Takes the last step back, or takes it again. Answers where something changed; nothing if there was no such step
    /// or it could not be written (then RecordBook::failed has said why, and the step can be tried again).
    std::optional<VisitPlace> undo();
    std::optional<VisitPlace> redo();
    /// The steps with their names, for menus. Undo and redo go through the functions above.
    [[nodiscard]] const QUndoStack& steps() const { return m_steps; }

    /// Why a closed visit is being corrected; empty ends correcting.
    void correctBecause(const std::string& reason) { m_reason = reason; }
    [[nodiscard]] const std::string& correctionReason() const { return m_reason; }
    [[nodiscard]] bool mayWrite() const { return m_visit.isOpen() || !m_reason.empty(); }

    /// One zone, before or after the work, and the finding that stands there now.
    struct Look
    {
        ZoneId zoneId;
        Phase phase = Phase::asFound;
        std::optional<Finding> standing;
    };

    bool see(const Look& look, Grade grade);
    bool notSee(const Look& look, NotSeenReason reason);
    /// Wetness and note need a grade (or "not seen") to belong to: until there is one they wait as drafts.
    bool setWetness(const Look& look, Wetness wetness);
    bool setNote(const Look& look, const std::string& note);
    /// Keeps a note as it is being typed.
    bool draftNote(const Look& look, const std::string& note);
    /// What waits for a grade, or was being typed when the program ended.
    [[nodiscard]] std::optional<Wetness> waitingWetness(const Look& look) const;
    [[nodiscard]] std::optional<std::string> waitingNote(const Look& look) const;

    /// Puts an entry: the same id again replaces it (open visit) or is corrected by it (closed visit); a null id is a
    /// new entry.
    bool put(Reading reading);
    bool put(Treatment treatment);
    bool put(ChargeEntry charge);
    bool put(FollowUp followUp);
    bool put(Photo photo); ///< one that was added before: another zone, phase or caption
    bool remove(const Reading& reading);
    bool remove(const Treatment& treatment);
    bool remove(const ChargeEntry& charge);
    bool remove(const FollowUp& followUp);
    bool remove(const Photo& photo);

    /// Keeps the original bytes, then the row and its thumbnail.
    bool addPhoto(const TakenPhoto& taken, std::optional<ZoneId> zone, Phase phase);

    /// Closes `old` as of this visit, fits a like part in its position and records the replacement, all or nothing.
    bool replacePart(const Part& old, Treatment work, const std::string& maker, const std::string& model);

    bool setConditions(const Conditions& conditions);
    bool setTechnician(const std::string& name);
    bool setReason(VisitReason reason);
    bool setVisitNote(const std::string& note);
    bool close();

    /// Keys of drafts that belong to this visit: "visit/<id>/<what>".
    [[nodiscard]] std::string draftKey(const std::string& what) const;

private:
    template <typename AnyEntry> [[nodiscard]] AnyEntry prepared(AnyEntry entry) const;
    /// How a step is called and where its entry stands.
    struct Step
    {
        Step(QString called, VisitPlace at, std::string typedInto = {})
            : name(std::move(called))
            , place(std::move(at))
            , field(std::move(typedInto))
        {
        }

        QString name;
        VisitPlace place;
        std::string field; ///< of typed text: entries that follow one another are one step
    };
    void enter(const VisitEdit& edit, const Step& step); ///< throws StoreError
    void keepUp(const VisitEdit& edit);
    std::optional<VisitPlace> move(int command, bool back);

    template <typename AnyEntry>
    bool putEntry(AnyEntry entry, std::vector<AnyEntry> UnitRecord::*all, VisitPlace place);
    template <typename AnyRow> bool removeRow(const AnyRow& row, const QString& name, VisitPlace place);
    [[nodiscard]] Finding findingOf(const Look& look) const;
    [[nodiscard]] DraftChange taken(const Look& look, const std::string& what) const;
    bool putFinding(const Look& look, const Finding& finding, const QString& name);
    bool changeVisit(const Visit& visit, const QString& name, VisitPlace::Part part, std::string field = {});
    [[nodiscard]] std::optional<std::string> draft(const Look& look, const std::string& what) const;
    [[nodiscard]] std::string lookKey(const Look& look, const std::string& what) const;

    RecordBook& m_book;
    QUndoStack m_steps;
    Visit m_visit;
    std::string m_reason;
};

} // namespace padside
