// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/worth_figures_form.h"

#include "core/catalogue/cost_figures.h"
#include "core/quantity/measure.h"
#include "core/review/unit_worth.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/worth_log.h"
#include "ui/models/written_number.h"
#include "ui/pages/setup/checked_form.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

const UnitFigureField* unitField(const std::string& code)
{
    const auto found = std::ranges::find(unitFigureFields(), code, &UnitFigureField::code);
    return found != unitFigureFields().end() ? &*found : nullptr;
}

/// A field whose undo is its typing's as long as there is any, otherwise that of the figures entered.
class FigureField : public QLineEdit
{
protected:
    bool event(QEvent* event) override
    {
        if (event->type() == QEvent::ShortcutOverride) {
            const auto& key = *static_cast<QKeyEvent*>(event);
            if ((key.matches(QKeySequence::Undo) && !isUndoAvailable())
                || (key.matches(QKeySequence::Redo) && !isRedoAvailable())) {
                event->ignore();
                return true;
            }
        }
        return QLineEdit::event(event);
    }
};

const MeasuringUnit& powerUnit(const RecordBook& book)
{
    return unitFor(QuantityKind::power, book.surroundings().units, "kW", "Btuh");
}

} // namespace

WorthFiguresForm::WorthFiguresForm(RecordBook& book, WorthLog& log, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_form(new CheckedForm)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_form);
    m_form->wrapLongRows();
    m_form->addHeading(tr("This unit"));
    addUnitFields();
    m_form->addHeading(tr("All units"));
    addGeneralFields();
}

QLineEdit* WorthFiguresForm::addField(const QString& label, Place place)
{
    const int field = static_cast<int>(m_places.size());
    auto* line = new FigureField;
    const std::string name = place.code.empty() ? place.path.back() : place.code;
    m_places.push_back(std::move(place));
    m_shown.emplace_back();
    m_form->addField(field, label, line, u"worth-"_s + QString::fromStdString(name));
    connect(line, &QLineEdit::editingFinished, this, [this, field] { enter(field); });
    return line;
}

void WorthFiguresForm::addUnitFields()
{
    for (const UnitFigureField& field : unitFigureFields())
        addField(shown(m_book.speaker().translate(field.label)), {std::string(field.code), {}});
}

void WorthFiguresForm::addGeneralFields()
{
    for (const MoneyField& field : moneyFields()) {
        Sentence label{field.label, {}};
        if (field.unit == MoneyField::Unit::percent)
            label = {PADSIDE_SAY("{0}, in %"), {Word{field.label}}};
        addField(m_book.speaker().said(label), {{}, {"money", std::string(field.code)}});
    }
}

std::optional<double> WorthFiguresForm::typed(int field, QString& why) const
{
    const std::string text = m_form->text(field).trimmed().toStdString();
    if (text.empty())
        return std::nullopt;
    const Place& place = m_places[static_cast<std::size_t>(field)];
    const UnitFigureField* ofUnit = unitField(place.code);
    if (ofUnit != nullptr && ofUnit->unit == UnitFigureField::Unit::power) {
        const auto measure = parseMeasure(text, QuantityKind::power, m_book.numberStyle(), &powerUnit(m_book));
        if (!measure)
            why = m_book.speaker().said(measure.error().what);
        return measure ? std::optional(measure->si) : std::nullopt;
    }
    const auto number = parseNumber(text, m_book.numberStyle());
    if (!number)
        why = m_book.speaker().said(number.error().what);
    return number ? std::optional(*number) : std::nullopt;
}

void WorthFiguresForm::enter(int field)
{
    if (m_form->text(field).trimmed() == m_shown[static_cast<std::size_t>(field)])
        return;
    QString why;
    const std::optional<double> value = typed(field, why);
    const Place& place = m_places[static_cast<std::size_t>(field)];
    if (why.isEmpty() && !place.code.empty())
        why = m_log.assume(m_unit, place.code, value);
    else if (why.isEmpty())
        why = m_log.setFigures({{place.path, value}}).value_or(WorthLog::Refusal{}).why;
    m_form->setProblems(why.isEmpty() ? std::map<int, QString>{} : std::map<int, QString>{{field, why}});
}

void WorthFiguresForm::showText(int field, const QString& text, const QString& hint)
{
    auto* line = qobject_cast<QLineEdit*>(m_form->control(field));
    m_shown[static_cast<std::size_t>(field)] = text;
    if (!(line->hasFocus() && line->isModified() && !m_form->problem(field).isEmpty()))
        m_form->setText(field, text);
    line->setPlaceholderText(hint);
    constexpr int around = 2; // signs' width for margins and frame
    line->setMinimumWidth(line->fontMetrics().horizontalAdvance(hint)
                          + around * line->fontMetrics().horizontalAdvance(u'0'));
}

void WorthFiguresForm::showUnitField(int field, const UnitRecord& record)
{
    const UnitFigureField& figure = *unitField(m_places[static_cast<std::size_t>(field)].code);
    const auto written = [&](double si) {
        return figure.unit == UnitFigureField::Unit::power
            ? QString::fromStdString(showMeasure(si, powerUnit(m_book), m_book.numberStyle()))
            : writtenNumber(m_book, si);
    };
    const auto assumed = std::ranges::find(record.assumptions, figure.code, &UnitAssumption::code);
    const auto printed = std::ranges::find(record.unit.nameplate, figure.nameplateItem, &NameplateValue::item);
    const QString hint = printed != record.unit.nameplate.end() ? tr("%1, nameplate").arg(written(printed->value.si))
                                                                : tr("not given");
    showText(field, assumed != record.assumptions.end() ? written(assumed->value) : QString(), hint);
}

void WorthFiguresForm::showGeneralField(int field, const OwnField& value)
{
    const auto written = [&](const CatalogueValue& one) {
        const auto* number = std::get_if<double>(&one);
        return number != nullptr ? writtenNumber(m_book, *number) : QString();
    };
    showText(field, value.own ? written(*value.own) : QString(),
             value.ours ? tr("%1, ours").arg(written(*value.ours)) : tr("not given"));
}

void WorthFiguresForm::show(const UnitRecord& record, bool mayWrite)
{
    if (m_unit != record.unit.id)
        m_form->setProblems({});
    m_unit = record.unit.id;
    setEnabled(mayWrite);
    std::vector<OwnField> general;
    m_book.attempt([&] { general = m_log.ownChanges().fields().money({}); });
    for (int field = 0; field < static_cast<int>(m_places.size()); ++field) {
        const Place& place = m_places[static_cast<std::size_t>(field)];
        if (!place.code.empty()) {
            showUnitField(field, record);
            continue;
        }
        const auto found = std::ranges::find(general, place.path, &OwnField::path);
        if (found != general.end())
            showGeneralField(field, *found);
    }
}

} // namespace padside
