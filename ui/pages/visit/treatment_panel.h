// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

#include <array>
#include <optional>

class QCheckBox;
class QLabel;
class QPushButton;

namespace padside {

class CoatPanel;
class DraftField;
class EntryLines;
class MeasureField;
class RecordBook;

/// Work done today on the zone at hand, or on its whole part; replacing a part.
class TreatmentPanel : public QWidget
{
    Q_OBJECT
public:
    TreatmentPanel(RecordBook& book, VisitLog& log, QWidget* parent = nullptr);

    void showLine(const ZoneLine& line, const VisitSheet& sheet, bool mayWrite);
    void focusFirst();

Q_SIGNALS:
    void refused(const QString& sentence);
    void lookOverWanted(); ///< the coating is to be looked over later

private:
    void pick(TreatmentKind kind);
    void correct(const Treatment& work);
    void enter();
    void showEntries();
    void showDryBy();
    [[nodiscard]] std::optional<Instant> dryBy() const; ///< as taken from the coat check, else by the hours typed
    [[nodiscard]] std::optional<double> typedCost(bool& good);
    [[nodiscard]] QString said(const Treatment& work) const;

    RecordBook& m_book;
    VisitLog& m_log;
    std::optional<ZoneLine> m_line;
    std::optional<TreatmentKind> m_kind;
    std::optional<Treatment> m_correcting; ///< at a closed visit: the entry that is being corrected
    std::optional<Instant> m_keepOff; ///< taken from the coat check
    bool m_mayWrite = true;

    QLabel* m_where;
    std::array<QPushButton*, 6> m_kinds{};
    QWidget* m_form;
    QCheckBox* m_wholePart;
    DraftField* m_product;
    DraftField* m_maker;
    DraftField* m_model;
    DraftField* m_note;
    CoatPanel* m_coat;
    MeasureField* m_dryIn;
    QLabel* m_dryBy;
    DraftField* m_cost;
    QPushButton* m_enter;
    EntryLines* m_entries;
};

} // namespace padside
