// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/verdict/measured.h"
#include "core/verdict/verdict.h"
#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

#include <memory>
#include <vector>

class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;

namespace padside {

class MeasureField;
class RecordBook;
class SuspicionList;
class VerdictLabel;

/// The readings of a visit: those usual for its season first, all others by searching. Each is entered as it is typed,
/// and what it means, alone and with the others, is said while it is being typed.
class ReadingsPanel : public QWidget
{
    Q_OBJECT
public:
    ReadingsPanel(RecordBook& book, VisitLog& log, QWidget* parent = nullptr);

    void showSheet(const VisitSheet& sheet, bool mayWrite);
    void showZone(ZoneId zone); ///< the one at hand: what is measured zone by zone is asked of it
    void focusFirst();
    void focusReading(const std::string& kind, Phase phase);
    /// Names of readings with text that could not be entered yet.
    [[nodiscard]] QStringList unfinished() const;

Q_SIGNALS:
    void phaseChosen(); ///< other readings are to be shown

private:
    struct Row
    {
        ReadingKind kind;
        std::optional<PartId> part;
        std::optional<ZoneId> zone; ///< taken zone by zone
        QString name;
        QLabel* label = nullptr;
        MeasureField* field = nullptr;
        QLabel* last = nullptr;
        QLabel* echo = nullptr;
        VerdictLabel* verdict = nullptr;
        std::optional<Reading> standing;
        bool usual = false;
    };

    void makeRows(const VisitSheet& sheet);
    void makeZoneRows(const VisitSheet& sheet);
    Row& addRow(const ReadingKind& kind, const Part* part, const QString& name, bool usual);
    void enter(Row& row, const std::optional<Measure>& value);
    void filter();
    void judge(); ///< says what the readings so far mean
    [[nodiscard]] std::vector<Taken> takenSoFar() const;
    void showVerdicts(Row& row, const std::vector<Verdict>& verdicts);
    [[nodiscard]] std::vector<Verdict> verdictsOnZone(const Row& row) const;
    void choose(Phase phase);
    void goOnFrom(const Row& row);
    [[nodiscard]] QString keyOf(const Row& row) const;
    [[nodiscard]] const MeasuringUnit& unitOf(const ReadingKind& kind) const; ///< of a number typed without one

    RecordBook& m_book;
    VisitLog& m_log;
    Phase m_phase = Phase::asFound;
    QPushButton* m_asFound;
    QPushButton* m_asLeft;
    QLineEdit* m_search;
    QWidget* m_rowsHolder;
    QScrollArea* m_scroll;
    QGridLayout* m_grid;
    std::vector<std::unique_ptr<Row>> m_rows;
    VisitId m_visit;
    VisitReason m_season = VisitReason::spring;
    std::vector<PartId> m_parts;
    ZoneId m_zone;
    QWidget* m_pointsToBar; ///< the likeliest suspicion, with a way to all of them
    QLabel* m_pointsTo;
    SuspicionList* m_suspicions = nullptr;
    VisitSheet m_sheet; ///< as last shown
    UnitRecord m_past; ///< before this visit
    std::vector<Taken> m_before; ///< the last earlier reading of each row
    bool m_filling = false; ///< a sheet is being shown: judged once, when it is
};

} // namespace padside
