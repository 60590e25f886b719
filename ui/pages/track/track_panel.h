// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/track/track_record.h"
#include "ui/drawing/theme.h"

#include <QWidget>

#include <memory>
#include <optional>

class QComboBox;
class QLabel;
class QListWidget;
class QTableView;

namespace padside {

class HorizonModel;
class RecordBook;
class ReliabilityPlotView;
class SpreadColumns;
class WorkLine;

/// Whether old forecasts were right: the verdict, the scores by horizon, what was said against what came, and the
/// largest misses. Worked out in the background when it is shown and something changed.
class TrackPanel : public QWidget
{
    Q_OBJECT
public:
    TrackPanel(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    /// Brings the panel up to date; call it when it is shown.
    void refresh();
    [[nodiscard]] const TrackSummary* summary() const { return m_summary.get(); } ///< null until it is worked out

Q_SIGNALS:
    void unitRequested(const padside::UnitId& unit);
    void workedOut();

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void makeLayout();
    void fitLetters(); ///< to those that are worn
    [[nodiscard]] QWidget* setRow();
    [[nodiscard]] QWidget* plotSide();
    [[nodiscard]] QWidget* missSide();
    void connectParts();
    void noteChange();
    void start();
    void take(const TrackSummary& summary);
    void sayVerdict();
    void offerSets();
    void showSet(); ///< the evidence of the forecasts chosen
    void sayRanges();
    void showPlot();
    void listMisses();
    [[nodiscard]] const TrackFigures& figures() const; ///< of the forecasts chosen
    [[nodiscard]] QString number(double value, int decimals = 0) const;
    [[nodiscard]] QString percent(double share) const;

    RecordBook& m_book;
    const Theme& m_theme;
    std::shared_ptr<std::optional<TrackSummary>> m_found; ///< by the work under way, read once it is done
    std::shared_ptr<const TrackSummary> m_summary;
    bool m_isStale = true;
    Date m_asOf{};
    HorizonModel* m_horizons;
    WorkLine* m_work;
    QLabel* m_verdict;
    QLabel* m_beside; ///< what has to be said with the verdict
    QLabel* m_reasons;
    QLabel* m_since;
    QWidget* m_evidence; ///< hidden while there is none
    QWidget* m_setRow; ///< hidden while all forecasts are one set
    QComboBox* m_set;
    QTableView* m_table;
    SpreadColumns* m_columns;
    QLabel* m_ranges;
    QComboBox* m_horizon;
    ReliabilityPlotView* m_plot;
    QLabel* m_plotHint;
    QListWidget* m_misses;
    QLabel* m_noMisses;
};

} // namespace padside
