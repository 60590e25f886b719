// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/conditions_bar.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/draft_field.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/measure_field.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

template <typename Enum> QComboBox* comboOf(const RecordBook& book, const QString& objectName, const QString& name)
{
    auto* combo = new QComboBox;
    combo->setObjectName(objectName);
    combo->setAccessibleName(name);
    combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    makeLarge(*combo);
    for (const auto& row : codesOf(Enum{}))
        combo->addItem(translated(book, row.word), shown(row.code));
    return combo;
}

template <typename Enum> void select(QComboBox& combo, Enum value)
{
    combo.setCurrentIndex(combo.findData(shown(codeOf(value))));
}

template <typename Enum> Enum selected(const QComboBox& combo, Enum otherwise)
{
    return fromCode<Enum>(combo.currentData().toString().toStdString()).value_or(otherwise);
}

std::optional<Measure> measureOf(std::optional<double> si, QuantityKind kind, const RecordBook& book)
{
    if (!si)
        return std::nullopt;
    const MeasuringUnit& unit = shownUnit(kind, book.surroundings().units);
    return Measure{*si, kind, std::string(unit.code), showMeasure(*si, unit, book.numberStyle())};
}

void addLabelled(QHBoxLayout& row, const QString& text, QWidget* control)
{
    auto* label = new QLabel(text);
    label->setBuddy(control);
    row.addWidget(label);
    row.addWidget(control);
    row.addSpacing(10);
}

} // namespace

ConditionsBar::ConditionsBar(RecordBook& book, VisitLog& log, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_title(headingLabel())
    , m_state(quietLabel())
    , m_reason(comboOf<VisitReason>(book, u"visitReason"_s, tr("Reason of the visit")))
    , m_technician(new DraftField(book))
    , m_temperature(new MeasureField(book, QuantityKind::temperature,
                                     shownUnit(QuantityKind::temperature, book.surroundings().units)))
    , m_humidity(new MeasureField(book, QuantityKind::ratio, shownUnit(QuantityKind::ratio, book.surroundings().units)))
    , m_sky(comboOf<Sky>(book, u"sky"_s, tr("Sky")))
    , m_running(comboOf<Running>(book, u"running"_s, tr("Running state of the unit")))
{
    m_title->setObjectName(u"visitTitle"_s);
    m_state->setWordWrap(false);
    m_technician->setObjectName(u"technician"_s);
    m_technician->setAccessibleName(tr("Technician"));
    m_technician->setMaximumWidth(180);
    m_temperature->setName(tr("Air temperature"));
    m_temperature->edit().setObjectName(u"airTemperature"_s);
    m_temperature->setEchoBeside(96);
    m_humidity->setName(tr("Relative humidity"));
    m_humidity->edit().setObjectName(u"humidity"_s);
    m_humidity->setEchoBeside(84);
    m_humidity->setUsual(0.05, 1); // ours: drier air outdoors is more likely a slip
    m_temperature->setUsual(233.15, 328.15); // ours: -40 to 55 °C
    auto* leave = new QPushButton(tr("Back to the unit"));
    leave->setObjectName(u"leave"_s);
    makeLarge(*leave);

    auto* first = new QHBoxLayout;
    first->addWidget(m_title);
    first->addSpacing(12);
    first->addWidget(m_state, 1);
    addLabelled(*first, tr("Reason"), m_reason);
    addLabelled(*first, tr("Technician"), m_technician);
    first->addWidget(leave);
    auto* second = new QHBoxLayout;
    addLabelled(*second, tr("Air"), m_temperature);
    addLabelled(*second, tr("Humidity"), m_humidity);
    addLabelled(*second, tr("Sky"), m_sky);
    addLabelled(*second, tr("Unit is"), m_running);
    second->addStretch();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 8, 16, 8);
    layout->setSpacing(4);
    layout->addLayout(first);
    layout->addLayout(second);

    connect(leave, &QPushButton::clicked, this, &ConditionsBar::leaveRequested);
    connect(m_reason, &QComboBox::activated, this,
            [this] { m_log.setReason(selected(*m_reason, m_log.visit().reason)); });
    connect(m_technician, &QLineEdit::editingFinished, this, [this] {
        const QString name = m_technician->text().trimmed();
        if (m_technician->hasUnfinished() && m_log.setTechnician(name.toStdString()))
            m_technician->settle(name);
    });
    connect(m_temperature, &MeasureField::entered, this, [this](const Measure& value) { enterTemperature(value); });
    connect(m_temperature, &MeasureField::emptied, this, [this] { enterTemperature(std::nullopt); });
    connect(m_humidity, &MeasureField::entered, this, [this](const Measure& value) { enterHumidity(value); });
    connect(m_humidity, &MeasureField::emptied, this, [this] { enterHumidity(std::nullopt); });
    connect(m_sky, &QComboBox::activated, this, [this] {
        Conditions conditions = m_log.visit().conditions;
        conditions.sky = selected(*m_sky, Sky::unknown);
        m_log.setConditions(conditions);
    });
    connect(m_running, &QComboBox::activated, this, [this] {
        Conditions conditions = m_log.visit().conditions;
        conditions.running = selected(*m_running, Running::unknown);
        m_log.setConditions(conditions);
    });
}

void ConditionsBar::enterTemperature(const std::optional<Measure>& value)
{
    Conditions conditions = m_log.visit().conditions;
    conditions.airTemperatureK = value ? std::optional<double>(value->si) : std::nullopt;
    if (m_log.setConditions(conditions))
        m_temperature->settle(value);
}

void ConditionsBar::enterHumidity(const std::optional<Measure>& value)
{
    Conditions conditions = m_log.visit().conditions;
    if (value && (value->si < 0 || value->si > 1))
        return; // the question beside the field stays until it is answered
    conditions.relativeHumidity = value ? std::optional<double>(value->si) : std::nullopt;
    if (m_log.setConditions(conditions))
        m_humidity->settle(value);
}

void ConditionsBar::showSheet(const VisitSheet& sheet)
{
    m_title->setText(tr("%1 at %2").arg(shown(sheet.record.unit.tag), shown(sheet.record.site.name)));
    m_state->setText(sheet.visit.isOpen() ? m_book.speaker().shownDate(sheet.visit.on)
                                          : tr("%1, closed").arg(m_book.speaker().shownDate(sheet.visit.on)));
    const auto key = [this](const char* what) { return QString::fromStdString(m_log.draftKey(what)); };
    select(*m_reason, sheet.visit.reason);
    select(*m_sky, sheet.visit.conditions.sky);
    select(*m_running, sheet.visit.conditions.running);
    m_technician->show(key("technician"), shown(sheet.visit.technician));
    m_temperature->showEntered(key("air"),
                               measureOf(sheet.visit.conditions.airTemperatureK, QuantityKind::temperature, m_book));
    m_humidity->showEntered(key("humidity"),
                            measureOf(sheet.visit.conditions.relativeHumidity, QuantityKind::ratio, m_book));
    for (QWidget* control :
         std::initializer_list<QWidget*>{m_reason, m_technician, m_temperature, m_humidity, m_sky, m_running})
        control->setEnabled(sheet.visit.isOpen());
}

void ConditionsBar::focusFirst()
{
    m_reason->setFocus();
}

QStringList ConditionsBar::unfinished() const
{
    QStringList names;
    for (const MeasureField* field : {m_temperature, m_humidity}) {
        if (field->edit().hasUnfinished())
            names << tr("%1 “%2”").arg(field->edit().accessibleName(), field->edit().text());
    }
    return names;
}

} // namespace padside
