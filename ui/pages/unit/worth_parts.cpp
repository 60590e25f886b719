// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/worth_parts.h"

#include "ui/models/money_words.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_words.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int partKindRole = Qt::UserRole; ///< code of the part kind
constexpr int partNameRole = Qt::UserRole + 1; ///< what the part is called
constexpr int aboutLineRole = Qt::UserRole + 2; ///< all that is said about the line
constexpr std::size_t unfoldedAtFirst = 3; ///< parts whose choices are shown at first
constexpr int leastOfReason = 24; ///< letters; a reason cut shorter says nothing, and stands whole below the table

QString figureList(const std::vector<NeededFigure>& figures, const LocalSpeaker& speaker)
{
    QStringList words;
    for (const NeededFigure& figure : figures)
        words << speaker.said(figure.what);
    return words.join(u"; "_s);
}

} // namespace

WorthParts::WorthParts(const RecordBook& book, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_tree(new QTreeWidget)
    , m_about(new QLabel)
    , m_costs(new QPushButton(tr("Costs of this p&art…")))
{
    m_tree->setObjectName(u"worthParts"_s);
    m_tree->setAccessibleName(tr("What can be done about each part"));
    m_tree->setColumnCount(columns);
    m_tree->setHeaderLabels({tr("Part, choice"), tr("1 year"), tr("Cost"), tr("Years gained"), tr("Why")});
    m_tree->headerItem()->setToolTip(chance, tr("Chance that one of its zones is spent within a year"));
    m_tree->headerItem()->setToolTip(cost, tr("Expected over the years compared, in today's money"));
    m_tree->headerItem()->setToolTip(gained, tr("Until it is spent, against leaving it"));
    for (const int numbers : {chance, cost, gained})
        m_tree->headerItem()->setTextAlignment(numbers, Qt::AlignRight | Qt::AlignVCenter);
    m_tree->header()->setStretchLastSection(false); // it keeps a width of its own, below which the table scrolls
    m_tree->header()->setSectionResizeMode(why, QHeaderView::Stretch);
    m_tree->setAllColumnsShowFocus(true);
    m_tree->setTabKeyNavigation(false);
    m_tree->setIndentation(12); // leaves the reasons more room
    m_tree->setUniformRowHeights(true);
    m_tree->viewport()->installEventFilter(this);
    m_about->setObjectName(u"worthAbout"_s);
    m_about->setWordWrap(true);
    m_about->setTextFormat(Qt::PlainText);
    m_about->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_costs->setObjectName(u"partCosts"_s);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_about, 1);
    foot->addWidget(m_costs, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 4, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_tree, 1);
    column->addLayout(foot);
    connect(m_tree, &QTreeWidget::currentItemChanged, this, &WorthParts::showChosen);
    connect(m_costs, &QPushButton::clicked, this, [this] {
        if (const QTreeWidgetItem* part = chosenPart())
            Q_EMIT costsRequested(part->data(what, partKindRole).toString(), part->data(what, partNameRole).toString());
    });
}

QTreeWidgetItem* WorthParts::chosenPart() const
{
    QTreeWidgetItem* item = m_tree->currentItem();
    return item != nullptr && item->parent() != nullptr ? item->parent() : item;
}

QString WorthParts::aboutPart(const PartWorth& part) const
{
    const LocalSpeaker& speaker = m_book.speaker();
    QStringList said;
    if (part.endsUnit && !part.costOfFailure)
        said << tr("Once it is gone, the unit is normally given up.");
    if (part.costOfFailure)
        said << tr("One failure comes to about %1.").arg(shownMoney(m_book, *part.costOfFailure));
    if (!part.needed.empty())
        said << tr("Needed: %1.").arg(figureList(part.needed, speaker));
    if (!part.leftOut.empty())
        said << tr("Not given, and counted as nothing: %1.").arg(figureList(part.leftOut, speaker));
    for (const Sentence& note : part.notes)
        said << speaker.said(note);
    return said.join(u' ');
}

void WorthParts::addChoice(QTreeWidgetItem* parent, const PartWorth& part, const PartChoice& choice)
{
    const LocalSpeaker& speaker = m_book.speaker();
    QString name = shown(speaker.translate(std::string(wordOf(choice.choice))));
    if (choice.choice == Choice::treat && part.treatment)
        name = tr("%1: %2", "treat it now: brush and coat")
                   .arg(name, shown(speaker.translate(std::string(wordOf(*part.treatment)))));
    auto* item = new QTreeWidgetItem(parent);
    item->setText(what, name);
    item->setText(cost, choice.presentCost ? shownMoney(m_book, *choice.presentCost) : tr("not known"));
    item->setText(gained, choice.choice == Choice::leave ? QString() : shown(speaker.number(choice.yearsGained, 1)));
    const QString reason = speaker.said(choice.reason);
    item->setText(why, reason);
    item->setToolTip(why, reason);
    item->setToolTip(what, name);
    item->setData(what, aboutLineRole, name + u": "_s + reason + u' ' + aboutPart(part));
    for (const int number : {cost, gained})
        item->setTextAlignment(number, Qt::AlignRight | Qt::AlignVCenter);
}

void WorthParts::addPart(const UnitRecord& record, const PartWorth& part)
{
    const LocalSpeaker& speaker = m_book.speaker();
    const Part& of = *findPart(record, part.partId);
    const QString name = partTitle(m_book, of);
    auto* item = new QTreeWidgetItem(m_tree);
    item->setText(what, name);
    item->setText(chance, speaker.shownChance(part.chanceInAYear));
    const QString worst = tr("Worst: %1").arg(placeTitle(m_book, record, part.zoneId));
    item->setText(why,
                  part.choices.empty() ? worst
                                       : tr("%1. %2", "worst zone; what is cheapest or gains most")
                                             .arg(worst, speaker.said(part.choices.front().reason)));
    item->setToolTip(why, item->text(why));
    item->setToolTip(what, name);
    item->setData(what, partKindRole, shown(of.kind));
    item->setData(what, partNameRole, name);
    item->setData(what, aboutLineRole, worst + u". "_s + aboutPart(part));
    item->setTextAlignment(chance, Qt::AlignRight | Qt::AlignVCenter);
    QFont bold = m_tree->font();
    bold.setBold(true);
    item->setFont(what, bold);
    for (const PartChoice& choice : part.choices)
        addChoice(item, part, choice);
}

void WorthParts::show(const UnitRecord& record, const UnitWorth& worth, bool mayWrite)
{
    m_mayWrite = mayWrite;
    const QTreeWidgetItem* before = chosenPart();
    const QString chosen = before != nullptr ? before->data(what, partNameRole).toString() : QString();
    const int at = before != nullptr ? m_tree->indexOfTopLevelItem(chosenPart()) : -1;
    QStringList unfolded;
    for (int row = 0; row < m_tree->topLevelItemCount(); ++row) {
        if (m_tree->topLevelItem(row)->isExpanded())
            unfolded << m_tree->topLevelItem(row)->data(what, partNameRole).toString();
    }
    const bool first = at < 0;
    m_tree->clear();
    for (const PartWorth& part : worth.parts) {
        addPart(record, part);
        QTreeWidgetItem* item = m_tree->topLevelItem(m_tree->topLevelItemCount() - 1);
        const QString name = item->data(what, partNameRole).toString();
        item->setExpanded(first ? m_tree->topLevelItemCount() <= static_cast<int>(unfoldedAtFirst)
                                : unfolded.contains(name));
        if (name == chosen)
            m_tree->setCurrentItem(item);
    }
    if (m_tree->currentItem() == nullptr && m_tree->topLevelItemCount() > 0)
        m_tree->setCurrentItem(m_tree->topLevelItem(0));
    fitColumns();
    showChosen();
}

void WorthParts::fitColumns()
{
    m_tree->header()->setSectionResizeMode(what, QHeaderView::Interactive);
    int room = m_tree->viewport()->width();
    for (int column = what; column < why; ++column) {
        m_tree->resizeColumnToContents(column);
        room -= m_tree->columnWidth(column);
    }
    const bool reasonFits = room >= leastOfReason * fontMetrics().averageCharWidth();
    m_tree->setColumnHidden(why, !reasonFits);
    if (!reasonFits)
        m_tree->header()->setSectionResizeMode(what, QHeaderView::Stretch);
}

bool WorthParts::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize)
        fitColumns();
    return QWidget::eventFilter(watched, event);
}

void WorthParts::showChosen()
{
    const QTreeWidgetItem* item = m_tree->currentItem();
    m_about->setText(item != nullptr ? item->data(what, aboutLineRole).toString()
                                     : tr("Nothing is fitted that decays."));
    m_costs->setEnabled(item != nullptr && m_mayWrite);
}

} // namespace padside
