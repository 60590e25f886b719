// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/grade_choice.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/grade_button.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/visit_sheet.h"

#include <QEvent>
#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

GradeChoice::GradeChoice(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_notSeen(new GradeButton(std::nullopt, theme))
    , m_gradeRows(new QWidget)
    , m_reasonRows(new QWidget)
{
    auto* rows = new QVBoxLayout(m_gradeRows);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(2);
    for (const auto& [grade, code, word] : codesOf(Grade{})) {
        auto* button = new GradeButton(grade, theme);
        button->setObjectName(u"grade%1"_s.arg(numeral(grade)));
        m_grades[static_cast<std::size_t>(numeral(grade)) - 1] = button;
        rows->addWidget(button);
        makeChoice(*button, [this, chosen = grade] { Q_EMIT graded(chosen); });
    }

    auto* grid = new QGridLayout(m_reasonRows);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(4);
    auto* question = headingLabel(tr("Not seen, because …"));
    grid->addWidget(question, 0, 0, 1, 2);
    int number = 0;
    for (const auto& [reason, code, word] : codesOf(NotSeenReason{})) {
        auto* button = new QPushButton(u"%1   %2"_s.arg(number + 1).arg(translated(book, word)));
        button->setObjectName(u"reason%1"_s.arg(number + 1));
        button->setAccessibleName(tr("Not seen: %1").arg(translated(book, word)));
        makeLarge(*button);
        grid->addWidget(button, 1 + number / 2, number % 2);
        connect(button, &QPushButton::clicked, this, [this, chosen = reason] {
            setAskingReason(false);
            Q_EMIT notSeen(chosen);
        });
        ++number;
    }
    auto* back = new QPushButton(tr("Esc   back to the grades"));
    back->setAccessibleName(tr("Back to the grades"));
    makeLarge(*back);
    grid->addWidget(back, 1 + number / 2, number % 2);
    connect(back, &QPushButton::clicked, this, &GradeChoice::cancelReason);

    m_notSeen->setObjectName(u"notSeen"_s);
    makeChoice(*m_notSeen, [this] { askReason(); });
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(m_gradeRows);
    layout->addWidget(m_notSeen);
    layout->addWidget(m_reasonRows);
    setAskingReason(false);
}

void GradeChoice::showLine(const ZoneLine& line, Phase phase)
{
    const std::optional<Finding>& today = line.today(phase);
    const std::optional<Grade> chosen = today ? today->grade() : std::nullopt;
    for (const auto& [grade, code, word] : codesOf(Grade{})) {
        GradeButton* button = m_grades[static_cast<std::size_t>(numeral(grade)) - 1];
        button->describe(translated(m_book, word), gradeText(m_book, line.part, line.zone, grade));
        button->setLastTime(line.lastSeen && line.lastSeen->grade() == grade);
        showChosen(*button, chosen == grade);
    }
    const bool unseen = today && !today->seen();
    m_notSeen->describe(tr("Not seen"),
                        unseen ? translated(m_book, wordOf(std::get<NotSeenReason>(today->sight)))
                               : tr("N, then the number of the reason"));
    m_notSeen->setLastTime(line.lastLook && !line.lastLook->seen());
    showChosen(*m_notSeen, unseen);
    alignSentences();
    setAskingReason(false);
}

void GradeChoice::alignSentences()
{
    int widest = m_notSeen->wordWidthNeeded();
    for (const GradeButton* button : m_grades)
        widest = std::max(widest, button->wordWidthNeeded());
    for (GradeButton* button : m_grades)
        button->setWordWidth(widest);
    m_notSeen->setWordWidth(widest);
}

void GradeChoice::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) // letters and sizes are others now
        alignSentences();
}

bool GradeChoice::digit(int digit)
{
    if (m_askingReason) {
        constexpr auto reasons = codesOf(NotSeenReason{});
        if (digit < 1 || digit > static_cast<int>(reasons.size()))
            return false;
        setAskingReason(false);
        Q_EMIT notSeen(reasons[static_cast<std::size_t>(digit) - 1].value);
        return true;
    }
    const auto grade = gradeFromNumeral(digit);
    if (grade)
        Q_EMIT graded(*grade);
    return grade.has_value();
}

void GradeChoice::askReason()
{
    showChosen(*m_notSeen, false); // not before there is a reason
    setAskingReason(true);
}

void GradeChoice::cancelReason()
{
    setAskingReason(false);
}

void GradeChoice::setAskingReason(bool asking)
{
    m_askingReason = asking;
    m_gradeRows->setVisible(!asking);
    m_notSeen->setVisible(!asking);
    m_reasonRows->setVisible(asking);
}

} // namespace padside
