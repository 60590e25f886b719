// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;

namespace padside {

class DraftField;
class MeasureField;
class RecordBook;

/// The head of a visit: which unit, why, when, by whom, and the circumstances of the day, each written as it is
/// entered.
class ConditionsBar : public QWidget
{
    Q_OBJECT
public:
    ConditionsBar(RecordBook& book, VisitLog& log, QWidget* parent = nullptr);

    void showSheet(const VisitSheet& sheet);
    /// Names of fields with text that could not be entered yet.
    [[nodiscard]] QStringList unfinished() const;
    void focusFirst();

Q_SIGNALS:
    void leaveRequested();

private:
    void enterTemperature(const std::optional<Measure>& value);
    void enterHumidity(const std::optional<Measure>& value);

    RecordBook& m_book;
    VisitLog& m_log;
    QLabel* m_title;
    QLabel* m_state;
    QComboBox* m_reason;
    DraftField* m_technician;
    MeasureField* m_temperature;
    MeasureField* m_humidity;
    QComboBox* m_sky;
    QComboBox* m_running;
};

} // namespace padside
