// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

#include <array>
#include <optional>

class QLabel;
class QPushButton;

namespace padside {

class DraftField;
class EntryLines;
class MeasureField;
class RecordBook;

/// Refrigerant put in or taken out at this visit.
class ChargePanel : public QWidget
{
    Q_OBJECT
public:
    ChargePanel(RecordBook& book, VisitLog& log, QWidget* parent = nullptr);

    void showSheet(const VisitSheet& sheet, bool mayWrite);
    void focusFirst();
    [[nodiscard]] bool hasUnfinished() const;

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    void pick(ChargeDirection direction);
    void choose(ChargeDirection direction); ///< and goes on to the mass
    void enter();
    void correct(const ChargeEntry& charge);
    void allow(bool writing);
    void showLedger(); ///< with what is being typed, as if it were entered
    [[nodiscard]] std::string reason() const; ///< the core's word for it where there is one

    RecordBook& m_book;
    VisitLog& m_log;
    ChargeDirection m_direction = ChargeDirection::added;
    QString m_refrigerantOfUnit;
    std::optional<ChargeEntry> m_correcting; ///< at a closed visit: the entry that is being corrected
    std::array<QPushButton*, 3> m_directions{};
    MeasureField* m_mass;
    DraftField* m_refrigerant;
    DraftField* m_cylinder;
    DraftField* m_because;
    QPushButton* m_enter;
    QLabel* m_ledger;
    UnitRecord m_record; ///< of the sheet shown
    Visit m_visit;
    EntryLines* m_entries;
};

} // namespace padside
