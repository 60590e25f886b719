// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/measure_field.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/draft_field.h"
#include "ui/pages/visit/lettering.h"

#include <QLabel>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

MeasureField::MeasureField(RecordBook& book, QuantityKind kind, const MeasuringUnit& unitWhenBare, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_kind(kind)
    , m_unit(unitWhenBare)
    , m_edit(new DraftField(book))
    , m_echo(quietLabel())
{
    m_edit->setPlaceholderText(shown(unitWhenBare.symbol));
    m_echo->setObjectName(u"echo"_s);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(1);
    layout->addWidget(m_edit);
    layout->addWidget(m_echo);
    m_echo->hide();
    connect(m_edit, &QLineEdit::textEdited, this, &MeasureField::showEcho);
    connect(m_edit, &QLineEdit::editingFinished, this, &MeasureField::finish);
}

void MeasureField::setName(const QString& name)
{
    m_edit->setAccessibleName(name);
}

void MeasureField::setEchoBeside(int fieldWidth)
{
    static_cast<QBoxLayout*>(layout())->setDirection(QBoxLayout::LeftToRight);
    layout()->setSpacing(6);
    m_edit->setFixedWidth(fieldWidth);
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    m_echo->setMaximumWidth(2 * fieldWidth);
}

QLabel* MeasureField::takeEcho()
{
    layout()->removeWidget(m_echo);
    return m_echo;
}

void MeasureField::setUsual(double lowest, double highest)
{
    m_lowest = lowest;
    m_highest = highest;
}

QString MeasureField::textOf(const std::optional<Measure>& entered) const
{
    if (!entered)
        return {};
    const QString typed = QString::fromStdString(entered->typed);
    const MeasuringUnit* unit = unitByCode(entered->unitCode);
    const bool isBare = !parseMeasure(entered->typed, m_kind, m_book.numberStyle());
    return unit && isBare && unit->code != m_unit.code ? typed + u' ' + shown(unit->symbol) : typed;
}

void MeasureField::showEntered(const QString& key, const std::optional<Measure>& entered)
{
    m_edit->show(key, textOf(entered));
    showEcho();
}

void MeasureField::settle(const std::optional<Measure>& entered)
{
    m_edit->settle(textOf(entered));
    showEcho();
}

QString MeasureField::echo() const
{
    return m_echo->text();
}

bool MeasureField::isEmpty() const
{
    return m_edit->text().trimmed().isEmpty();
}

std::optional<Measure> MeasureField::understood() const
{
    if (isEmpty())
        return std::nullopt;
    const auto value = parseMeasure(m_edit->text().toStdString(), m_kind, m_book.numberStyle(), &m_unit);
    return value ? std::optional<Measure>(*value) : std::nullopt;
}

void MeasureField::finish()
{
    if (!m_edit->hasUnfinished())
        return;
    if (isEmpty()) {
        Q_EMIT emptied();
        return;
    }
    if (const auto value = understood())
        Q_EMIT entered(*value);
}

void MeasureField::showEcho()
{
    if (isEmpty()) {
        say({}, false);
        return;
    }
    const auto value = parseMeasure(m_edit->text().toStdString(), m_kind, m_book.numberStyle(), &m_unit);
    if (!value) {
        say(m_book.speaker().said(value.error().what), true);
        return;
    }
    const QString shownValue = QString::fromStdString(showMeasure(value->si, m_unit, m_book.numberStyle()));
    const QString meant = u"= "_s + shownValue;
    const bool unusual = m_highest > m_lowest && (value->si < m_lowest || value->si > m_highest);
    if (!unusual) {
        say(m_edit->text().trimmed() == shownValue ? QString() : meant, false);
        return;
    }
    say(tr("%1. Is that right? Usual here: %2 to %3.")
            .arg(meant, QString::fromStdString(showMeasure(m_lowest, m_unit, m_book.numberStyle())),
                 QString::fromStdString(showMeasure(m_highest, m_unit, m_book.numberStyle()))),
        true);
}

void MeasureField::say(const QString& text, bool problem)
{
    m_echo->setText(text);
    m_echo->setVisible(!text.isEmpty() && !isHidden());
    m_edit->setAccessibleDescription(text);
    m_echo->setForegroundRole(problem ? QPalette::WindowText : QPalette::PlaceholderText);
    QFont font = m_echo->font();
    font.setBold(problem);
    m_echo->setFont(font);
}

} // namespace padside
