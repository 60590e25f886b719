// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/season_panel.h"

#include "core/schedule/season.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int lastWeek = 53; // ISO 8601
constexpr int siteWidth = 210;
constexpr int seasonGap = 24; ///< px after a season: two spans of weeks, not four numbers
// Each season has a column for its first week, the dash, its last week, and the gap.
enum Column { siteColumn, springColumn, fallColumn = springColumn + 4, swapColumn = fallColumn + 4 };

} // namespace

SeasonPanel::SeasonPanel(RecordBook& book, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
{
    auto* table = new QWidget;
    auto* grid = new QGridLayout(table);
    grid->addWidget(new QLabel(tr("Site")), 0, siteColumn);
    grid->addWidget(new QLabel(tr("Weeks of spring")), 0, springColumn, 1, 3);
    grid->addWidget(new QLabel(tr("Weeks of fall")), 0, fallColumn, 1, 3);
    grid->setColumnMinimumWidth(fallColumn - 1, seasonGap);
    grid->setColumnMinimumWidth(swapColumn - 1, seasonGap);
    std::vector<Site> sites;
    m_book.attempt([&] { sites = m_book.store().sites().sites(); });
    for (const Site& site : sites) {
        if (!site.retiredOn)
            addRow(*grid, site);
    }
    grid->setColumnStretch(swapColumn + 1, 1);
    grid->setRowStretch(2 * static_cast<int>(m_rows.size()) + 1, 1);

    auto* area = new QScrollArea;
    area->setWidget(table);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->viewport()->setAutoFillBackground(false); // the page's own ground shows through
    table->setAutoFillBackground(false);
    auto* hint = new QLabel(tr("Weeks of the year (ISO 8601) in which the sites in this file are visited. South of the "
                               "equator spring comes late in the year."));
    hint->setWordWrap(true);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hint);
    if (m_rows.empty())
        layout->addWidget(new QLabel(tr("This file has no sites yet.")));
    layout->addWidget(area, 1);
    area->setVisible(!m_rows.empty());
    layout->addStretch();
    showDays();
}

void SeasonPanel::addRow(QGridLayout& grid, const Site& site)
{
    const int line = 1 + 2 * static_cast<int>(m_rows.size());
    const QString name = shown(site.name);
    Row row;
    row.site = site;
    auto* label = new QLabel(name);
    label->setWordWrap(true);
    label->setMinimumWidth(siteWidth);
    grid.addWidget(label, line, siteColumn);
    const std::array names{tr("%1: first week of spring").arg(name), tr("%1: last week of spring").arg(name),
                           tr("%1: first week of fall").arg(name), tr("%1: last week of fall").arg(name)};
    const std::array values{site.spring.first, site.spring.last, site.fall.first, site.fall.last};
    const std::array codes{u"spring-first"_s, u"spring-last"_s, u"fall-first"_s, u"fall-last"_s};
    for (std::size_t i = 0; i < row.weeks.size(); ++i) {
        auto* week = new QSpinBox;
        week->setObjectName(codes[i] + u'-' + QString::number(m_rows.size()));
        week->setAccessibleName(names[i]);
        week->setRange(1, lastWeek);
        week->setValue(values[i]);
        const int season = i < 2 ? springColumn : fallColumn;
        const bool last = i % 2 == 1;
        grid.addWidget(week, line, last ? season + 2 : season, Qt::AlignLeft);
        if (last)
            grid.addWidget(new QLabel(u"\u2013"_s), line, season + 1);
        connect(week, &QSpinBox::valueChanged, this, &SeasonPanel::showDays);
        row.weeks[i] = week;
    }
    auto* swapButton = new QPushButton(tr("Swap spring and fall"));
    swapButton->setObjectName(u"swap-"_s + QString::number(m_rows.size()));
    swapButton->setAccessibleName(tr("%1: swap spring and fall").arg(name));
    grid.addWidget(swapButton, line, swapColumn);
    connect(swapButton, &QPushButton::clicked, this, [this, index = m_rows.size()] { swap(m_rows[index]); });
    row.days = new QLabel;
    row.days->setObjectName(u"days-"_s + QString::number(m_rows.size()));
    row.days->setWordWrap(true);
    grid.addWidget(row.days, line + 1, springColumn, 1, -1, Qt::AlignTop);
    m_rows.push_back(row);
}

Site SeasonPanel::edited(const Row& row)
{
    Site site = row.site;
    site.spring = {row.weeks[0]->value(), row.weeks[1]->value()};
    site.fall = {row.weeks[2]->value(), row.weeks[3]->value()};
    return site;
}

QString SeasonPanel::problemOf(const Row& row) const
{
    const Site site = edited(row);
    if (site.spring.last < site.spring.first)
        return tr("Spring would end before it begins. Put its first week before its last.");
    if (site.fall.last < site.fall.first)
        return tr("Fall would end before it begins. Put its first week before its last.");
    if (site.spring.first <= site.fall.last && site.fall.first <= site.spring.last)
        return tr("Spring and fall would overlap. Move one of them.");
    return {};
}

QString SeasonPanel::problem() const
{
    for (const Row& row : m_rows) {
        if (const QString wrong = problemOf(row); !wrong.isEmpty())
            return tr("%1: %2", "site, what is wrong").arg(shown(row.site.name), wrong);
    }
    return {};
}

QString SeasonPanel::daysOf(const Row& row) const
{
    const Site site = edited(row);
    const int year = yearOf(m_book.today());
    const LocalSpeaker& speaker = m_book.speaker();
    const auto range = [&](VisitReason reason) {
        const Window window = seasonOf(site, reason, year).window;
        return tr("%1 to %2").arg(speaker.shownDate(window.earliest), speaker.shownDate(window.latest));
    };
    return tr("Spring %1, fall %2").arg(range(VisitReason::spring), range(VisitReason::fall));
}

void SeasonPanel::showDays()
{
    for (const Row& row : m_rows) {
        const QString wrong = problemOf(row);
        row.days->setText(wrong.isEmpty() ? daysOf(row) : wrong);
        QFont font = row.days->font();
        font.setBold(!wrong.isEmpty());
        row.days->setFont(font);
    }
}

void SeasonPanel::swap(const Row& row)
{
    const Site before = edited(row);
    const std::array values{before.fall.first, before.fall.last, before.spring.first, before.spring.last};
    for (std::size_t i = 0; i < values.size(); ++i) {
        const QSignalBlocker blocked(row.weeks[i]);
        row.weeks[i]->setValue(values[i]);
    }
    showDays();
}

bool SeasonPanel::keep()
{
    bool changed = false;
    const bool kept = m_book.attempt([&] {
        for (Row& row : m_rows) {
            const Site site = edited(row);
            if (site == row.site)
                continue;
            m_book.store().sites().changeSite(site);
            row.site = site;
            changed = true;
        }
    });
    if (changed)
        Q_EMIT m_book.sitesChanged();
    return kept;
}

} // namespace padside
