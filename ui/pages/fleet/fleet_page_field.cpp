// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The field of the fleet page: what it shows, how it lies beside the table.

#include "ui/drawing/fleet_field_view.h"
#include "ui/models/record_book.h"
#include "ui/pages/fleet/field_words.h"
#include "ui/pages/fleet/fleet_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QSplitter>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

namespace padside {

namespace {

constexpr int wideEnough = 1700; ///< for field and table side by side; the table has many columns

} // namespace

void FleetPage::makeField()
{
    m_field->setObjectName(QStringLiteral("field"));
    m_field->setSentences([this](const UnitId& unit) { return fieldSentence(unit); });
    m_within->setObjectName(QStringLiteral("within"));
    m_within->setAccessibleName(tr("The time looked at"));
    m_within->addItem(tr("before the next visit"), static_cast<int>(Horizon::nextVisit));
    m_within->addItem(tr("within a year"), static_cast<int>(Horizon::oneYear));
    m_within->addItem(tr("within two years"), static_cast<int>(Horizon::twoYears));
    m_within->addItem(tr("within five years"), static_cast<int>(Horizon::fiveYears));
    m_within->setCurrentIndex(1);
    m_fieldSaid->setObjectName(QStringLiteral("fieldSentence"));
    m_fieldSaid->setTextFormat(Qt::PlainText);
    m_fieldSaid->setWordWrap(true);
    m_fieldSaid->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_fieldSaid->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_fieldSaid->setText(m_field->sentenceNow());
}

QWidget* FleetPage::fieldPanel()
{
    makeField();
    auto* panel = new QWidget;
    auto* name = new QLabel(tr("&Chance of failing"));
    name->setBuddy(m_within);
    QFont bold = name->font();
    bold.setBold(true);
    name->setFont(bold);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(10, 0, 10, 0);
    head->addWidget(name);
    head->addWidget(m_within);
    head->addStretch(1);
    auto* said = new QHBoxLayout;
    said->setContentsMargins(10, 0, 10, 4);
    said->addWidget(m_fieldSaid);
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addLayout(head);
    column->addWidget(m_field, 1);
    column->addLayout(said);
    return panel;
}

void FleetPage::fillField()
{
    const auto horizon = static_cast<Horizon>(m_within->currentData().toInt());
    std::vector<FieldUnit> units;
    units.reserve(static_cast<std::size_t>(m_filter->rowCount()));
    for (int row = 0; row < m_filter->rowCount(); ++row) {
        const FleetLine& line = m_fleet->line(m_filter->mapToSource(m_filter->index(row, 0)).row());
        if (auto unit = fieldUnit(line, horizon))
            units.push_back(*std::move(unit));
    }
    m_field->setUnits(std::move(units));
    m_field->choose(chosen().value_or(UnitId()));
}

QString FleetPage::fieldSentence(const UnitId& unit) const
{
    const int row = m_fleet->rowOf(unit);
    if (row < 0)
        return {};
    return padside::fieldSentence(m_fleet->line(row), static_cast<Horizon>(m_within->currentData().toInt()),
                                  m_fleet->today(), m_book.catalogue(), m_book.speaker());
}

void FleetPage::fitSentence()
{
    const int lines = m_both->orientation() == Qt::Horizontal ? 4 : 2; // beside the table it is narrower
    m_fieldSaid->setFixedHeight(lines * m_fieldSaid->fontMetrics().lineSpacing() + 2); // so that nothing jumps
}

void FleetPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeField();
}

void FleetPage::placeField()
{
    const auto way = width() >= m_theme.size.wide(wideEnough) ? Qt::Horizontal : Qt::Vertical;
    if (way == m_both->orientation())
        return;
    m_both->setOrientation(way);
    fitSentence();
    // Once the splitter has its new size: before that, shares are of the old one.
    QTimer::singleShot(0, this, [this, way] {
        const int whole = way == Qt::Horizontal ? m_both->width() : m_both->height();
        const int field = way == Qt::Horizontal ? whole * 2 / 5 : whole * 9 / 20;
        m_both->setSizes({field, whole - field});
    });
}

} // namespace padside
