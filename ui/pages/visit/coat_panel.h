// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/air/coat_check.h"
#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace padside {

class DraftField;
class MeasureField;
class RecordBook;

/// "May I coat now?": surface, air, humidity and the product's drying time go in; the verdict with its reasons and
/// until when the unit has to stay off come out while typing.
class CoatPanel : public QWidget
{
    Q_OBJECT
public:
    CoatPanel(RecordBook& book, VisitLog& log, QWidget* parent = nullptr);

    void showLine(const ZoneLine& line, const VisitSheet& sheet);
    /// A product was named: if it is one of the catalogue's kinds, its drying time is taken.
    void productNamed(const QString& product);
    /// The work was entered: what was measured for it is done with.
    void settle();

    /// The day's conditions in one sentence, for the work's note; empty as long as something is missing.
    [[nodiscard]] QString conditions() const;

Q_SIGNALS:
    void kindChosen(const QString& name); ///< a kind of coating was picked from the list
    void keepOffTaken(const padside::Instant& until);
    void lookOverWanted();

private:
    void makeWidgets();
    void choose(int kind);
    void judge();
    void say(const QString& verdict);
    [[nodiscard]] std::optional<CoatDay> day() const; ///< empty: something is missing or can't be understood
    [[nodiscard]] CoatProduct product() const;
    [[nodiscard]] QString said(const CoatAnswer& answer) const;
    [[nodiscard]] std::optional<RunPlan> runPlan() const; ///< empty: hours that can't be understood

    RecordBook& m_book;
    VisitLog& m_log;
    std::optional<ZoneLine> m_line;
    std::optional<CoatDay> m_day;
    std::optional<CoatAnswer> m_answer;
    double m_altitudeM = 0;

    QComboBox* m_kind;
    MeasureField* m_surface;
    MeasureField* m_air;
    MeasureField* m_humidity;
    MeasureField* m_dryTime;
    MeasureField* m_dryAt;
    QComboBox* m_runs;
    QLineEdit* m_hours;
    QLabel* m_verdict;
    QPushButton* m_take;
    QPushButton* m_lookOver;
};

/// "2026-05-04 18:05", the date and time of the place where the moment was written down.
[[nodiscard]] QString dayAndTime(const RecordBook& book, const Instant& instant);

} // namespace padside
