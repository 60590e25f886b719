// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/grade.h"

#include <QAbstractButton>

#include <optional>

namespace padside {

struct Theme;

/// One choice of the five grades, or "not seen": the mark with its numeral, the word and what it means here.
class GradeButton : public QAbstractButton
{
    Q_OBJECT
public:
    /// No grade: the "not seen" choice.
    GradeButton(std::optional<Grade> grade, const Theme& theme, QWidget* parent = nullptr);

    void describe(const QString& word, const QString& sentence);
    void setLastTime(bool last); ///< marks the grade of the last sighting

    void setWordWidth(int width); ///< as wide as the widest word of the choices around it
    [[nodiscard]] int wordWidthNeeded() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override; ///< a long sentence makes it higher

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QFont wordFont() const;
    [[nodiscard]] QRect sentencePlace(int width, int height) const;

    std::optional<Grade> m_grade;
    const Theme& m_theme;
    QString m_word;
    QString m_sentence;
    bool m_lastTime = false;
    int m_wordWidth;
};

} // namespace padside
