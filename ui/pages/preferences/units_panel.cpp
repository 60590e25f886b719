// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/units_panel.h"

#include "core/record/quantity_code.h"
#include "ui/drawing/level_labels.h"
#include "ui/models/preferences.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

/// Where people differ. The rest has one unit, or (resistances) takes the one that fits the value.
constexpr std::array quantitiesWithChoice{QuantityKind::temperature,   QuantityKind::temperatureDifference,
                                          QuantityKind::gaugePressure, QuantityKind::absolutePressure,
                                          QuantityKind::length,        QuantityKind::mass,
                                          QuantityKind::airflow,       QuantityKind::velocity,
                                          QuantityKind::power};

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

} // namespace

UnitsPanel::UnitsPanel(const RecordBook& book, const Preferences& preferences, UnitSystem usual, QWidget* parent)
    : QWidget(parent)
    , m_usual(usual)
    , m_all(new QComboBox)
{
    m_all->setObjectName(u"units-all"_s);
    m_all->addItem(tr("As usual where this computer is"), static_cast<int>(UnitHabit::usual));
    m_all->addItem(tr("Metric"), static_cast<int>(UnitHabit::metric));
    m_all->addItem(tr("US customary"), static_cast<int>(UnitHabit::usCustomary));
    m_all->setCurrentIndex(m_all->findData(static_cast<int>(preferences.units)));
    m_all->setAccessibleName(tr("Units of all quantities"));
    auto* form = new QFormLayout(this);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("All &quantities"), m_all);
    for (const QuantityKind kind : quantitiesWithChoice) {
        auto* box = new QComboBox;
        box->setObjectName(u"units-"_s + shown(codeOf(kind)));
        box->addItem(QString(), QString());
        for (const MeasuringUnit& unit : unitsOf(kind))
            box->addItem(shown(unit.symbol), shown(unit.code));
        const auto own = preferences.ownUnits.find(kind);
        if (own != preferences.ownUnits.end())
            box->setCurrentIndex(std::max(0, box->findData(QString::fromStdString(own->second))));
        const QString name = capitalised(shown(book.speaker().translate(std::string(wordOf(kind)))));
        box->setAccessibleName(tr("Unit of %1").arg(name));
        form->addRow(name, box);
        m_own[kind] = box;
    }
    auto* hint = new QLabel(tr("A number typed without a unit is taken to be in the unit shown in its field. What was "
                               "entered before keeps the unit it was entered in."));
    hint->setWordWrap(true);
    form->addRow(hint);
    levelLabels(*form);
    connect(m_all, &QComboBox::currentIndexChanged, this, &UnitsPanel::showUsual);
    showUsual();
}

void UnitsPanel::showUsual()
{
    Preferences all;
    all.units = static_cast<UnitHabit>(m_all->currentData().toInt());
    const UnitChoice choice = unitChoice(all, m_usual);
    for (const auto& [kind, box] : m_own)
        box->setItemText(0, tr("As above: %1").arg(shown(shownUnit(kind, choice).symbol)));
}

void UnitsPanel::writeTo(Preferences& preferences) const
{
    preferences.units = static_cast<UnitHabit>(m_all->currentData().toInt());
    preferences.ownUnits.clear();
    for (const auto& [kind, box] : m_own) {
        if (const QString code = box->currentData().toString(); !code.isEmpty())
            preferences.ownUnits[kind] = code.toStdString();
    }
}

} // namespace padside
