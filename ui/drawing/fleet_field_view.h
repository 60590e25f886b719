// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/fleet_field.h"

#include <QStringList>
#include <QWidget>

#include <functional>

namespace padside {

struct Theme;

/// Units by what a failure would cost and how likely it is, to look at and walk through. Arrow keys go from mark to
/// mark, Space or a click steps through those gathered in one, Enter or a double click opens the unit.
class FleetFieldView : public QWidget
{
    Q_OBJECT
public:
    /// What is said of a unit, asked for only when it is needed.
    using SentenceSource = std::function<QString(const UnitId&)>;
    using ChanceWriter = std::function<QString(double)>;

    FleetFieldView(const Theme& theme, QStringList tollNames, ChanceWriter shownChance, QWidget* parent = nullptr);

    void setSentences(SentenceSource source) { m_sentences = std::move(source); }
    /// Shows these; the one chosen stays chosen where it still is among them.
    void setUnits(std::vector<FieldUnit> units);
    /// Chooses a unit without telling; a null id, or one that is not here, chooses none.
    void choose(padside::UnitId unit);
    [[nodiscard]] UnitId chosen() const { return m_chosen; }
    /// Goes to a mark, by its number; its first unit is chosen, or the next one if it is chosen already.
    void goTo(std::size_t mark);
    void activate(); ///< opens the unit that is chosen

    [[nodiscard]] const std::vector<FieldUnit>& units() const { return m_units; }
    [[nodiscard]] const FleetFieldGeometry& geometryNow() const { return m_geometry; }
    [[nodiscard]] std::optional<std::size_t> currentMark() const;
    [[nodiscard]] QString nameOf(std::size_t mark) const; ///< a tag, or how many are gathered
    [[nodiscard]] QString sentenceOf(std::size_t mark) const; ///< why it is where it is
    [[nodiscard]] QString sentenceNow() const; ///< of what is pointed at, else of what is chosen

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void unitChosen(const padside::UnitId& unit);
    void unitActivated(const padside::UnitId& unit);
    void sentenceChanged(const QString& sentence);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    [[nodiscard]] std::optional<std::size_t> unitAt(const UnitId& unit) const;
    [[nodiscard]] FieldSizes sizesNow() const;
    [[nodiscard]] QString gatheredSentence(std::size_t mark) const;
    void layOutNow();
    void take(std::size_t unit);
    void step(FieldStep step);
    void pointAt(std::optional<std::size_t> mark);
    void describe();

    const Theme& m_theme;
    QStringList m_tollNames;
    ChanceWriter m_shownChance;
    SentenceSource m_sentences;
    std::vector<FieldUnit> m_units;
    FleetFieldGeometry m_geometry;
    UnitId m_chosen;
    std::optional<std::size_t> m_pointed;
};

} // namespace padside
