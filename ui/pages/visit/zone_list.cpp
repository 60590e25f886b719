// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/zone_list.h"

#include "ui/models/record_book.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/visit_sheet.h"
#include "ui/pages/visit/zone_line_delegate.h"

#include <QKeyEvent>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

int sightCode(const std::optional<Finding>& finding)
{
    if (!finding)
        return ZoneLineDelegate::noFinding;
    const auto grade = finding->grade();
    return grade ? numeral(*grade) : ZoneLineDelegate::notSeen;
}

} // namespace

ZoneList::ZoneList(RecordBook& book, const Theme& theme, QWidget* parent)
    : QListWidget(parent)
    , m_book(book)
{
    setObjectName(u"zoneList"_s);
    setAccessibleName(tr("Zones of the unit"));
    setItemDelegate(new ZoneLineDelegate(theme, this));
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setMouseTracking(true);
    connect(this, &QListWidget::currentRowChanged, this, [this](int row) {
        if (!m_filling && row >= 0 && m_rows[static_cast<std::size_t>(row)])
            Q_EMIT zonePicked(*m_rows[static_cast<std::size_t>(row)]);
    });
}

void ZoneList::showSheet(const VisitSheet& sheet)
{
    std::vector<std::optional<ZoneId>> rows;
    PartId part;
    for (const ZoneLine& line : sheet.zones) {
        if (line.part.id != part)
            rows.emplace_back(std::nullopt);
        part = line.part.id;
        rows.emplace_back(line.zone.id);
    }
    m_filling = true;
    if (rows != m_rows) {
        clear();
        for (std::size_t i = 0; i < rows.size(); ++i)
            addItem(new QListWidgetItem);
        m_rows = rows;
    }
    int row = 0;
    part = PartId();
    for (const ZoneLine& line : sheet.zones) {
        if (line.part.id != part) {
            QListWidgetItem* header = item(row++);
            header->setFlags(Qt::NoItemFlags);
            header->setText(partTitle(m_book, line.part) + (line.fittedToday ? tr(" (new today)") : QString()));
            header->setData(ZoneLineDelegate::isPartRole, true);
        }
        part = line.part.id;
        QListWidgetItem* entry = item(row++);
        entry->setText(zoneTitle(m_book, line.part, line.zone));
        entry->setData(ZoneLineDelegate::todayRole, sightCode(line.found));
        entry->setData(ZoneLineDelegate::lastRole, sightCode(line.lastSeen));
        const QString today = line.found ? sightText(m_book, *line.found) : tr("not looked at yet");
        const QString last = line.lastSeen ? sightText(m_book, *line.lastSeen) : tr("never seen");
        entry->setData(
            Qt::AccessibleTextRole,
            tr("%1, %2: today %3; last time %4").arg(partTitle(m_book, line.part), entry->text(), today, last));
        entry->setToolTip(tr("Today: %1\nLast time: %2").arg(today, last));
    }
    m_filling = false;
}

void ZoneList::select(ZoneId zone)
{
    const auto row = std::ranges::find(m_rows, std::optional<ZoneId>(zone));
    if (row == m_rows.end())
        return;
    m_filling = true;
    const int index = static_cast<int>(row - m_rows.begin());
    setCurrentRow(index);
    scrollToItem(item(std::max(0, index - 1)));
    scrollToItem(item(std::min(count() - 1, index + 1)));
    m_filling = false;
}

void ZoneList::keyPressEvent(QKeyEvent* event)
{
    const int key = event->key();
    if (key == Qt::Key_Home || key == Qt::Key_End || key == Qt::Key_PageUp || key == Qt::Key_PageDown)
        QListWidget::keyPressEvent(event);
    else
        event->ignore(); // letters and digits are the page's keys, not a search
}

} // namespace padside
