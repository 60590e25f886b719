// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/measure.h"

#include <QWidget>

#include <optional>

class QLabel;

namespace padside {

class DraftField;
class RecordBook;

/// A field for a quantity as people type it ("68 psig", "1/8 in"), with what was understood shown below as it is typed.
/// A bad or ambiguous entry keeps its text, says its sentence and is not entered.
class MeasureField : public QWidget
{
    Q_OBJECT
public:
    /// A bare number is read in `unitWhenBare`.
    MeasureField(RecordBook& book, QuantityKind kind, const MeasuringUnit& unitWhenBare, QWidget* parent = nullptr);

    /// Values outside are questioned, not refused.
    void setUsual(double lowest, double highest);
    /// Shows the draft under `key`, else what was entered.
    void showEntered(const QString& key, const std::optional<Measure>& entered);
    void settle(const std::optional<Measure>& entered); ///< it has been entered
    void setName(const QString& name); ///< for screen readers
    void setEchoBeside(int fieldWidth); ///< what was understood stands at the right, so that nothing jumps
    /// Gives the line with what was understood to the caller's own layout.
    [[nodiscard]] QLabel* takeEcho();

    [[nodiscard]] DraftField& edit() { return *m_edit; }
    [[nodiscard]] const DraftField& edit() const { return *m_edit; }
    [[nodiscard]] QString echo() const;
    /// What the text means; empty if there is none or it can't be understood.
    [[nodiscard]] std::optional<Measure> understood() const;
    [[nodiscard]] bool isEmpty() const;

Q_SIGNALS:
    void entered(const padside::Measure& value); ///< Enter, Tab or a click elsewhere, with a text that was understood
    void emptied();

private:
    /// As it was typed; with its unit where a bare number was read in another than today's, so that it never seems to
    /// be of a unit it was not.
    [[nodiscard]] QString textOf(const std::optional<Measure>& entered) const;
    void finish();
    void showEcho();
    void say(const QString& text, bool problem);

    RecordBook& m_book;
    QuantityKind m_kind;
    const MeasuringUnit& m_unit;
    double m_lowest = 0;
    double m_highest = 0;
    DraftField* m_edit;
    QLabel* m_echo;
};

} // namespace padside
