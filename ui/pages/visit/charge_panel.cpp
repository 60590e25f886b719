// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/charge_panel.h"

#include "core/ledger/charge_reason.h"
#include "core/ledger/unit_ledger.h"
#include "ui/drawing/level_labels.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/draft_field.h"
#include "ui/pages/visit/entry_lines.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/measure_field.h"

#include <QFormLayout>
#include <QPushButton>

namespace padside {

using namespace Qt::Literals::StringLiterals;

ChargePanel::ChargePanel(RecordBook& book, VisitLog& log, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_mass(new MeasureField(book, QuantityKind::mass, shownUnit(QuantityKind::mass, book.surroundings().units)))
    , m_refrigerant(new DraftField(book, u"chargeRefrigerant"_s, tr("Refrigerant")))
    , m_cylinder(new DraftField(book, u"chargeCylinder"_s, tr("Cylinder")))
    , m_because(new DraftField(book, u"chargeBecause"_s, tr("Because")))
    , m_enter(new QPushButton(tr("Enter this amount")))
    , m_ledger(quietLabel())
    , m_entries(new EntryLines)
{
    auto* directions = new QHBoxLayout;
    directions->setSpacing(4);
    std::size_t index = 0;
    for (const auto& [direction, code, word] : codesOf(ChargeDirection{})) {
        auto* button = new QPushButton(u"%1   %2"_s.arg(index + 1).arg(translated(book, word)));
        button->setObjectName(u"charge-"_s + shown(code));
        button->setAccessibleName(tr("Refrigerant %1").arg(translated(book, word)));
        makeChoice(*button, [this, picked = direction] { choose(picked); });
        makeLarge(*button);
        directions->addWidget(button);
        addDigit(*this, static_cast<int>(index) + 1, *button);
        m_directions[index++] = button;
    }
    m_mass->setName(tr("Mass of refrigerant"));
    m_mass->edit().setObjectName(u"chargeMass"_s);
    m_because->setPlaceholderText(tr("leak, repair, first charge"));
    m_enter->setObjectName(u"enterCharge"_s);
    makeLarge(*m_enter);
    auto* form = new QFormLayout;
    form->addRow(tr("Mass"), m_mass);
    form->addRow(tr("Refrigerant"), m_refrigerant);
    form->addRow(tr("Cylinder"), m_cylinder);
    form->addRow(tr("Because"), m_because);
    form->addRow(QString(), m_enter);
    levelLabels(*form);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(quietLabel(tr("Recover refrigerant, never vent it; certified people only.")));
    layout->addLayout(directions);
    layout->addLayout(form);
    layout->addWidget(m_entries);
    layout->addWidget(m_ledger);
    layout->addStretch();
    connect(m_enter, &QPushButton::clicked, this, &ChargePanel::enter);
    for (DraftField* one : {&m_mass->edit(), m_refrigerant, m_cylinder, m_because})
        connect(one, &QLineEdit::returnPressed, this, &ChargePanel::enter);
    m_ledger->setObjectName(u"chargeLedger"_s);
    connect(&m_mass->edit(), &QLineEdit::textChanged, this, &ChargePanel::showLedger);
    connect(m_because, &QLineEdit::textChanged, this, &ChargePanel::showLedger);
    pick(m_direction);
}

std::string ChargePanel::reason() const
{
    const QString typed = m_because->text().trimmed();
    for (const auto& row : codesOf(ChargeReason{})) {
        if (typed.compare(translated(m_book, row.word), Qt::CaseInsensitive) == 0)
            return std::string(row.word);
    }
    return typed.toStdString();
}

void ChargePanel::showLedger()
{
    if (m_visit.id.isNull())
        return;
    UnitRecord record = m_record;
    const auto mass = m_mass->understood();
    const bool asIf = mass && mass->si > 0;
    if (asIf) {
        if (m_correcting)
            std::erase_if(record.charges, [this](const ChargeEntry& one) { return one.id == m_correcting->id; });
        ChargeEntry typed = m_correcting.value_or(ChargeEntry{});
        typed.unitId = record.unit.id;
        typed.visitId = m_visit.id;
        typed.on = m_visit.on;
        typed.direction = m_direction;
        typed.refrigerant = m_refrigerant->text().trimmed().toStdString();
        typed.mass = *mass;
        typed.because = reason();
        record.charges.push_back(std::move(typed));
    }
    const UnitLedger ledger = unitLedger(record, m_book.catalogue(), m_visit.on);
    const auto massText = [this](double kilograms) {
        return shown(m_book.speaker().amount(Amount{kilograms, QuantityKind::mass}));
    };
    QStringList lines{asIf ? tr("The account of this unit, with what is typed:") : tr("The account of this unit:")};
    if (!ledger.days.empty())
        lines << tr("In %1, recovered %2, lost %3.")
                     .arg(massText(ledger.addedKg), massText(ledger.recoveredKg), massText(ledger.lostKg));
    for (const Sentence& sentence : ledgerSentences(ledger))
        lines << m_book.speaker().said(sentence);
    if (ledger.lastTopUp())
        lines << m_book.speaker().said(leakReckoning());
    m_ledger->setText(lines.join(u'\n'));
}

void ChargePanel::choose(ChargeDirection direction)
{
    pick(direction);
    m_mass->edit().setFocus();
}

void ChargePanel::pick(ChargeDirection direction)
{
    m_direction = direction;
    std::size_t index = 0;
    for (const auto& row : codesOf(ChargeDirection{}))
        showChosen(*m_directions[index++], row.value == direction);
    showLedger();
}

void ChargePanel::showSheet(const VisitSheet& sheet, bool mayWrite)
{
    const auto key = [this](const char* what) { return QString::fromStdString(m_log.draftKey(what)); };
    m_refrigerantOfUnit = QString::fromStdString(sheet.record.unit.refrigerant);
    m_mass->showEntered(key("charge-mass"), std::nullopt);
    m_refrigerant->show(key("charge-refrigerant"), m_refrigerantOfUnit);
    m_cylinder->show(key("charge-cylinder"), {});
    m_because->show(key("charge-because"), {});
    m_record = sheet.record;
    m_visit = sheet.visit;
    showLedger();
    const bool open = mayWrite && sheet.visit.isOpen();
    if (!mayWrite)
        m_correcting.reset();
    allow(open || m_correcting);
    std::vector<EntryLines::Line> lines;
    for (const ChargeEntry& charge : sheet.charges) {
        QStringList words{translated(m_book, wordOf(charge.direction)), shown(charge.mass.typed),
                          shown(charge.refrigerant)};
        if (!charge.cylinder.empty())
            words << tr("cylinder %1").arg(shown(charge.cylinder));
        if (!charge.because.empty())
            words << translated(m_book, charge.because);
        EntryLines::Line line{words.join(u", "_s), {}};
        if (open)
            line.takeBack = [this, charge] { m_log.remove(charge); };
        else if (mayWrite)
            line.correct = [this, charge] { correct(charge); };
        lines.push_back(line);
    }
    m_entries->showLines(lines);
}

void ChargePanel::allow(bool writing)
{
    for (QPushButton* button : m_directions)
        button->setEnabled(writing);
    for (QWidget* control : std::initializer_list<QWidget*>{m_mass, m_refrigerant, m_cylinder, m_because, m_enter})
        control->setEnabled(writing);
}

void ChargePanel::correct(const ChargeEntry& charge)
{
    m_correcting = charge;
    allow(true);
    pick(charge.direction);
    m_mass->edit().setText(shown(charge.mass.typed));
    m_refrigerant->setText(shown(charge.refrigerant));
    m_cylinder->setText(shown(charge.cylinder));
    m_because->setText(translated(m_book, charge.because));
    m_enter->setText(tr("Enter the correction"));
    m_mass->edit().setFocus();
}

void ChargePanel::focusFirst()
{
    m_directions.front()->setFocus();
}

bool ChargePanel::hasUnfinished() const
{
    return m_mass->edit().hasUnfinished() && !m_mass->isEmpty();
}

void ChargePanel::enter()
{
    const auto mass = m_mass->understood();
    if (!mass || mass->si < 0) {
        if (m_mass->isEmpty())
            Q_EMIT refused(tr("Type how much refrigerant it was, like 200 g."));
        else if (mass)
            Q_EMIT refused(tr("A mass can't be below zero. Choose “recovered” for what was taken out."));
        // else the field says itself what is wrong with it
        m_mass->edit().setFocus();
        return;
    }
    ChargeEntry charge = m_correcting.value_or(ChargeEntry{});
    charge.direction = m_direction;
    charge.mass = *mass;
    charge.refrigerant = m_refrigerant->text().trimmed().toStdString();
    charge.cylinder = m_cylinder->text().trimmed().toStdString();
    charge.because = reason();
    if (charge.refrigerant.empty()) {
        Q_EMIT refused(tr("Type which refrigerant it was, like R-410A."));
        m_refrigerant->setFocus();
        return;
    }
    if (!m_log.put(charge))
        return;
    m_correcting.reset();
    allow(m_log.visit().isOpen());
    m_enter->setText(tr("Enter this amount"));
    m_mass->settle(std::nullopt);
    m_refrigerant->settle(m_refrigerantOfUnit);
    m_cylinder->settle({});
    m_because->settle({});
    m_mass->edit().setFocus();
}

} // namespace padside
