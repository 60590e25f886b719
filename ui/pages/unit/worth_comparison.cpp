// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/worth_comparison.h"

#include "ui/drawing/worth_bars.h"
#include "ui/models/money_words.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_words.h"

#include <QLabel>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr std::size_t mostTurns = 4; ///< the nearest; those further off decide nothing

QLabel* sentenceLabel(const QString& name)
{
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

void tell(QLabel& label, const QString& text)
{
    label.setText(text);
    label.setVisible(!text.isEmpty());
}

} // namespace

WorthComparison::WorthComparison(const RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_bars(new WorthBarsView(theme))
    , m_answer(sentenceLabel(u"worthAnswer"_s))
    , m_turning(sentenceLabel(u"worthTurning"_s))
    , m_missing(sentenceLabel(u"worthMissing"_s))
{
    QFont bold = m_answer->font();
    bold.setBold(true);
    m_answer->setFont(bold);
    m_bars->setObjectName(u"worthBars"_s);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    for (QWidget* widget : {static_cast<QWidget*>(m_answer), static_cast<QWidget*>(m_bars),
                            static_cast<QWidget*>(m_turning), static_cast<QWidget*>(m_missing)})
        column->addWidget(widget);
}

QString WorthComparison::answerOf(const UnitRecord& record, const UnitWorth& worth) const
{
    if (!worth.answer)
        return tr("Carry on or replace: not reckoned yet.");
    QString said = m_book.speaker().said(worth.answer->said);
    if (!worth.shares.empty()) {
        const RepairShare& most = worth.shares.front();
        said += u' '
            + tr("Of the repairs to be expected, most is for this part: %1.")
                  .arg(partTitle(m_book, *findPart(record, most.partId)));
    }
    return said;
}

QString WorthComparison::turningOf(const UnitWorth& worth) const
{
    if (!worth.answer)
        return {};
    if (worth.answer->turning.empty())
        return tr("No single assumption would turn it, even changed fourfold.");
    QStringList lines{tr("It would turn with any one of these:")};
    for (std::size_t i = 0; i < std::min(mostTurns, worth.answer->turning.size()); ++i)
        lines << u"• "_s + m_book.speaker().said(turningSentence(worth.answer->turning[i]));
    return lines.join(u'\n');
}

QString WorthComparison::missingOf(const UnitRecord& record, const UnitWorth& worth) const
{
    const auto list = [&](const std::vector<NeededFigure>& figures) {
        QStringList words;
        for (const NeededFigure& figure : figures)
            words << m_book.speaker().said(figure.what);
        return words.join(u"; "_s);
    };
    QStringList lines;
    if (!worth.needed.empty())
        lines << tr("Needed: %1.").arg(list(worth.needed));
    if (!worth.leftOut.empty())
        lines << tr("Not given: %1.").arg(list(worth.leftOut));
    if (worth.answer && !worth.uncosted.empty()) {
        QStringList names;
        for (const PartId part : worth.uncosted)
            names << partTitle(m_book, *findPart(record, part));
        lines << tr("Failures not counted, for want of their costs: %1.").arg(names.join(u"; "_s));
    }
    for (const Sentence& note : worth.notes)
        lines << m_book.speaker().said(note);
    return lines.join(u'\n');
}

void WorthComparison::show(const UnitRecord& record, const UnitWorth& worth)
{
    std::vector<WorthBar> bars;
    if (worth.answer) {
        bars.push_back(
            {tr("Carry on, a year"), worth.answer->carryOnAYear, shownMoney(m_book, worth.answer->carryOnAYear)});
        bars.push_back(
            {tr("Replace, a year"), worth.answer->replaceAYear, shownMoney(m_book, worth.answer->replaceAYear)});
    }
    QStringList read;
    for (const WorthBar& bar : bars)
        read << bar.label + u": "_s + bar.shown;
    m_bars->setAccessibleName(read.join(u"; "_s));
    m_bars->setVisible(!bars.empty());
    m_bars->setBars(std::move(bars));
    tell(*m_answer, answerOf(record, worth));
    tell(*m_turning, turningOf(worth));
    tell(*m_missing, missingOf(record, worth));
}

} // namespace padside
