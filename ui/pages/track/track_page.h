// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h" // before id.h, for moc
#include "ui/drawing/theme.h"

#include <QWidget>

class QTabWidget;

namespace padside {

class RatesPanel;
class RecordBook;
class TrackPanel;

/// Were the forecasts right, and what do the person's own records teach about how long parts last.
class TrackPage : public QWidget
{
    Q_OBJECT
public:
    enum class Tab { record, rates };

    TrackPage(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    /// Brings the page up to date; call it when the page is shown.
    void refresh();
    void showTab(Tab tab);
    [[nodiscard]] Tab tab() const;

Q_SIGNALS:
    void unitRequested(const padside::UnitId& unit);
    void catalogueChanged(); ///< what the person learned is kept in the file: all forecasts change

private:
    QTabWidget* m_tabs;
    TrackPanel* m_record;
    RatesPanel* m_rates;
};

} // namespace padside
