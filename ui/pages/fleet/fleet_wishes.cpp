// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/fleet/fleet_wishes.h"

#include "ui/models/fleet_model.h"
#include "ui/models/speaker.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>

#include <map>

namespace padside {

namespace {

constexpr int shortChoice = 12; ///< letters of a choice that are always seen; the tool tip has the rest

/// Fills a choice after its first line ("all"), by name; the chosen one stays.
void fill(QComboBox& choice, const std::map<QString, QString>& keysByName)
{
    const QSignalBlocker silent(choice);
    const QString before = choice.currentData().toString();
    while (choice.count() > 1)
        choice.removeItem(1);
    for (const auto& [name, key] : keysByName)
        choice.addItem(name, key);
    choice.setCurrentIndex(std::max(0, choice.findData(before)));
}

} // namespace

FleetWishes::FleetWishes(QWidget* parent)
    : QWidget(parent)
    , m_search(new QLineEdit)
    , m_site(new QComboBox)
    , m_kind(new QComboBox)
    , m_grade(new QComboBox)
    , m_flags(new QCheckBox(tr("With f&lags")))
    , m_overdue(new QCheckBox(tr("&Overdue")))
    , m_retired(new QCheckBox(tr("&Retired too")))
    , m_clear(new QPushButton(tr("Show &all")))
{
    makeLayout();
    connect(m_search, &QLineEdit::textChanged, this, &FleetWishes::takeChange);
    for (const QComboBox* choice : {m_site, m_kind, m_grade})
        connect(choice, &QComboBox::currentIndexChanged, this, &FleetWishes::takeChange);
    for (const QCheckBox* box : {m_flags, m_overdue, m_retired})
        connect(box, &QCheckBox::toggled, this, &FleetWishes::takeChange);
    connect(m_clear, &QPushButton::clicked, this, &FleetWishes::clear);
}

void FleetWishes::makeLayout()
{
    m_search->setObjectName(QStringLiteral("fleetSearch"));
    m_search->setPlaceholderText(tr("Tag, site, place or kind"));
    m_search->setAccessibleName(tr("Find units by tag, site, place or kind"));
    m_search->setClearButtonEnabled(true);
    m_search->setMinimumWidth(230);
    m_site->setObjectName(QStringLiteral("site"));
    m_site->setAccessibleName(tr("Site"));
    m_site->addItem(tr("All sites"));
    m_kind->setObjectName(QStringLiteral("kind"));
    m_kind->setAccessibleName(tr("Kind of unit"));
    m_kind->addItem(tr("All kinds"));
    m_grade->setObjectName(QStringLiteral("grade"));
    m_grade->setAccessibleName(tr("Worst grade at least"));
    m_grade->addItem(tr("Any grade"));
    for (int numeral = 2; numeral <= 5; ++numeral)
        m_grade->addItem(numeral == 5 ? tr("Grade 5") : tr("Grade %1 or worse").arg(numeral), numeral);
    for (QComboBox* choice : {m_site, m_kind}) {
        choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        choice->setMinimumContentsLength(shortChoice);
    }
    m_flags->setObjectName(QStringLiteral("withFlags"));
    m_flags->setAccessibleName(tr("Only units with flags"));
    m_overdue->setObjectName(QStringLiteral("overdue"));
    m_overdue->setAccessibleName(tr("Only units with an overdue check"));
    m_retired->setObjectName(QStringLiteral("retiredToo"));
    m_retired->setAccessibleName(tr("Retired units too"));
    m_clear->setObjectName(QStringLiteral("showAll"));
    m_clear->setAccessibleName(tr("Show all units that are not retired"));
    m_clear->setEnabled(false);

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(10, 8, 10, 4);
    layout->setSpacing(8);
    layout->addWidget(m_search, 2);
    layout->addWidget(m_site, 1);
    layout->addWidget(m_kind, 1);
    layout->addWidget(m_grade);
    for (QWidget* widget : {static_cast<QWidget*>(m_flags), static_cast<QWidget*>(m_overdue),
                            static_cast<QWidget*>(m_retired), static_cast<QWidget*>(m_clear)})
        layout->addWidget(widget);
}

void FleetWishes::offer(const FleetModel& fleet)
{
    const FleetWish before = wish();
    std::map<QString, QString> sites;
    std::map<QString, QString> kinds;
    for (int row = 0; row < fleet.rowCount(); ++row) {
        const FleetLine& line = fleet.line(row);
        sites.emplace(shown(line.unit.siteName), shown(line.unit.siteId.text()));
        kinds.emplace(line.kindName, shown(line.unit.kind));
    }
    fill(*m_site, sites);
    fill(*m_kind, kinds);
    if (wish() != before) // what was chosen is gone
        takeChange();
}

FleetWish FleetWishes::wish() const
{
    FleetWish wish;
    wish.text = foldedForSearch(m_search->text().simplified());
    if (const auto site = parseUuid(m_site->currentData().toString().toStdString()))
        wish.site = SiteId(*site);
    wish.kind = m_kind->currentData().toString().toStdString();
    wish.atLeast = gradeFromNumeral(m_grade->currentData().toInt());
    wish.withFlags = m_flags->isChecked();
    wish.overdue = m_overdue->isChecked();
    wish.retiredToo = m_retired->isChecked();
    return wish;
}

void FleetWishes::clear()
{
    {
        const QSignalBlocker silent(this); // one change, not seven
        m_search->clear();
        for (QComboBox* choice : {m_site, m_kind, m_grade})
            choice->setCurrentIndex(0);
        for (QCheckBox* box : {m_flags, m_overdue, m_retired})
            box->setChecked(false);
    }
    takeChange();
    m_search->setFocus(Qt::OtherFocusReason);
}

void FleetWishes::takeChange()
{
    m_clear->setEnabled(wish() != FleetWish{});
    for (QComboBox* choice : {m_site, m_kind})
        choice->setToolTip(choice->currentText());
    Q_EMIT changed();
}

} // namespace padside
