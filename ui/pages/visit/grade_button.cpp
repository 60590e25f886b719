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
constexpr int usualWordWidth = 74;
constexpr int textLeft = margin + markWidth + margin;

} // namespace

GradeButton::GradeButton(std::optional<Grade> grade, const Theme& theme, QWidget* parent)
    : QAbstractButton(parent)
    , m_grade(grade)
    , m_theme(theme)
    , m_wordWidth(usualWordWidth)
{
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QFont GradeButton::wordFont() const
{
    QFont bold = font();
    bold.setBold(true);
    return bold;
}

int GradeButton::wordWidthNeeded() const
{
    return std::max(m_theme.size.wide(usualWordWidth), QFontMetrics(wordFont()).horizontalAdvance(m_word) + margin);
}

void GradeButton::setWordWidth(int width)
{
    m_wordWidth = width;
    updateGeometry();
    update();
}

QRect GradeButton::sentencePlace(int width, int height) const
{
    const int last = m_lastTime ? fontMetrics().horizontalAdvance(tr("last time")) + margin : 0;
    return {textLeft + m_wordWidth, 2, width - textLeft - m_wordWidth - margin - last, height - 4};
}

int GradeButton::heightForWidth(int width) const
{
    const QRect place = sentencePlace(width, 1 << 12);
    const QRect text = fontMetrics().boundingRect(place, Qt::AlignLeft | Qt::TextWordWrap, m_sentence);
    return std::max(sizeHint().height(), text.height() + 4);
}

void GradeButton::describe(const QString& word, const QString& sentence)
{
    m_word = word;
    m_sentence = sentence;
    const QString numeralText = m_grade ? QString::number(numeral(*m_grade)) + u' ' : QString();
    setAccessibleName(numeralText + word + (sentence.isEmpty() ? QString() : u": "_s + sentence));
    setToolTip(sentence);
    updateGeometry();
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
    return {420, m_theme.size.target};
}

QSize GradeButton::minimumSizeHint() const
{
    return {120, m_theme.size.target};
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

    painter.setFont(wordFont());
    painter.setPen(isEnabled() || isChecked() ? m_theme.ink : m_theme.softInk);
    painter.drawText(QRect(textLeft, 0, m_wordWidth, height()), Qt::AlignVCenter | Qt::AlignLeft, m_word);

    const QRect rest = sentencePlace(width(), height());
    painter.setFont(font());
    if (m_lastTime) {
        painter.setPen(m_theme.softInk);
        painter.drawText(QRect(rest.right(), rest.top(), width() - margin - rest.right(), rest.height()),
                         Qt::AlignVCenter | Qt::AlignRight, tr("last time"));
    }
    painter.setPen(isChecked() ? m_theme.ink : m_theme.softInk);
    painter.drawText(rest, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap, m_sentence);
}

} // namespace padside
