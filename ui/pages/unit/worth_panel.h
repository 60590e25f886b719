// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/cost_figures.h"
#include "ui/pages/unit/unit_snapshot.h"

#include <QWidget>

#include <optional>

class QUndoStack;

namespace padside {

struct Theme;
class FormArea;
class RecordBook;
class WorthComparison;
class WorthFiguresForm;
class WorthLog;
class WorthParts;

/// What a unit and its parts are worth: the choices for each part at the left; carry on or replace, and the figures it
/// rests on, at the right. A changed figure is reckoned with at once and can be undone.
class WorthPanel : public QWidget
{
    Q_OBJECT
public:
    WorthPanel(RecordBook& book, QUndoStack& steps, const Theme& theme, QWidget* parent = nullptr);

    /// Reckoned when the panel is first looked at.
    void setSnapshot(UnitSnapshotPtr snapshot);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void makeWidgets(); ///< when first looked at
    void reckon();
    void askForCosts(const QString& partKind, const QString& name);
    void readAssumptions();
    void reckonAgain(); ///< at once, or when it is looked at

    RecordBook& m_book;
    const Theme& m_theme;
    WorthLog* m_log;
    WorthParts* m_parts = nullptr;
    WorthComparison* m_comparison = nullptr;
    WorthFiguresForm* m_figures = nullptr;
    FormArea* m_scroll = nullptr;
    UnitSnapshotPtr m_snapshot;
    std::optional<CostFigures> m_costs; ///< as the file has them; read anew once they have changed
    bool m_reckoned = false;
};

} // namespace padside
