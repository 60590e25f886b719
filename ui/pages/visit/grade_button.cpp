// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/grade_button.h"

#include "ui/drawing/focus_outline.h"
#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"

#include <QPainter>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int margin = 8;
constexpr int markWidth = 34;

} // namespace

GradeButton::GradeButton(std::optional<Grade> grade, const Theme& theme, QWidget* parent)
    : QAbstractButton(parent)
    , m_grade(grade)
    , m_theme(theme)
{
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void GradeButton::describe(const QString& word, const QString& sentence)
{
    m_word = word;
    m_sentence = sentence;
    const QString numeralText = m_grade ? QString::number(numeral(*m_grade)) + u' ' : QString();
    setAccessibleName(numeralText + word + (sentence.isEmpty() ? QString() : u": "_s + sentence));
    setToolTip(sentence);
    update();
}

void GradeButton::setLastTime(bool last)
{
    m_lastTime = last;
    setAccessibleDescription(last ? tr("last time") : QString());
    update();
}

QSize GradeButton::sizeHint() const
{
    return {420, m_theme.size.target + 2};
}

QSize GradeButton::minimumSizeHint() const
{
    return {120, m_theme.size.target + 2};
}

void GradeButton::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(1, 1, -1, -1);
    painter.setPen(QPen(isChecked() ? m_theme.accent : m_theme.line, isChecked() ? 2 : 1));
    painter.setBrush(isChecked()
                         ? mixed(m_theme.accent, m_theme.panel, 0.16)
                         : (underMouse() && isEnabled() ? mixed(m_theme.accent, m_theme.panel, 0.06) : m_theme.panel));
    painter.drawRoundedRect(frame, 3, 3);
    if (hasFocus())
        paintFocusOutline(painter, rect(), palette());

    const QRectF mark(margin, (height() - 28) / 2.0, markWidth, 28);
    if (m_grade)
        paintGrade(painter, mark, *m_grade, m_theme);
    else
        paintNotSeen(painter, mark, m_theme);

    const int textLeft = margin + markWidth + margin;
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    const int wordWidth = painter.fontMetrics().horizontalAdvance(m_word) + margin;
    const int wordsEnd = std::max(wordWidth, m_theme.size.wide(74)); // the sentences begin under one another
    painter.setPen(isEnabled() || isChecked() ? m_theme.ink : m_theme.softInk);
    painter.drawText(QRectF(textLeft, 0, wordsEnd, height()), Qt::AlignVCenter | Qt::AlignLeft, m_word);

    QRectF rest(textLeft + wordsEnd, 2, width() - textLeft - wordsEnd - margin, height() - 4);
    painter.setFont(font());
    if (m_lastTime) {
        const QString last = tr("last time");
        const double lastWidth = painter.fontMetrics().horizontalAdvance(last) + margin;
        painter.setPen(m_theme.softInk);
        painter.drawText(QRectF(rest.right() - lastWidth, rest.top(), lastWidth, rest.height()),
                         Qt::AlignVCenter | Qt::AlignRight, last);
        rest.setRight(rest.right() - lastWidth);
    }
    painter.setPen(isChecked() ? m_theme.ink : m_theme.softInk);
    painter.drawText(rest, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap, m_sentence);
}

} // namespace padside
