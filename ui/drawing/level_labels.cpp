// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/level_labels.h"

#include <QEvent>
#include <QFormLayout>
#include <QLabel>

#include <algorithm>

namespace padside {

namespace {

/// An underlined key breaks the kerning beside it ("Te"): the text is then wider than its label reckons.
constexpr int underlineSpread = 4;

int widthOf(const QLabel& label)
{
    return label.sizeHint().width() + (label.text().contains(QLatin1Char('&')) ? underlineSpread : 0);
}

/// As high as the control beside it; the letters are in the middle.
class Leveller final : public QObject
{
public:
    Leveller(QLabel* label, QWidget* control)
        : QObject(label)
        , m_label(label)
        , m_control(control)
    {
        if (label->text().contains(QLatin1Char('&')))
            label->setMinimumWidth(widthOf(*label));
        control->installEventFilter(this);
        level();
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::Resize || event->type() == QEvent::Show)
            level();
        return QObject::eventFilter(watched, event);
    }

private:
    void level()
    {
        // Before it is shown a control may have any size.
        const int control = m_control->isVisible() ? m_control->height() : m_control->sizeHint().height();
        m_label->setFixedHeight(std::max(control, m_label->sizeHint().height()));
    }

    QLabel* m_label;
    QWidget* m_control; // its events end with it
};

/// Keeps the labels before the fields of an area at one width.
class SharedWidth final : public QObject
{
public:
    explicit SharedWidth(QWidget* area)
        : QObject(area)
        , m_area(area)
    {
        area->installEventFilter(this);
        share();
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        const bool letters = event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange;
        const bool handled = QObject::eventFilter(watched, event);
        if (letters || event->type() == QEvent::Show)
            share();
        return handled;
    }

private:
    void share()
    {
        QList<QLabel*> labels = m_area->findChildren<QLabel*>();
        labels.removeIf([](const QLabel* label) { return label->buddy() == nullptr; });
        int widest = 0;
        for (const QLabel* label : labels)
            widest = std::max(widest, widthOf(*label));
        for (QLabel* label : labels)
            label->setMinimumWidth(widest);
    }

    QWidget* m_area;
};

/// What is typed into or chosen from: the field itself, or the first such within it.
QWidget* firstControl(QWidget& field)
{
    if (field.focusPolicy() != Qt::NoFocus)
        return &field;
    for (QWidget* inner : field.findChildren<QWidget*>()) {
        if (inner->focusPolicy() != Qt::NoFocus)
            return inner;
    }
    return &field;
}

} // namespace

void levelLabel(QLabel& label, QWidget& field)
{
    new Leveller(&label, firstControl(field)); // the label's own
}

void levelLabels(QFormLayout& form)
{
    for (int row = 0; row < form.rowCount(); ++row) {
        const QLayoutItem* labelItem = form.itemAt(row, QFormLayout::LabelRole);
        const QLayoutItem* fieldItem = form.itemAt(row, QFormLayout::FieldRole);
        auto* label = labelItem ? qobject_cast<QLabel*>(labelItem->widget()) : nullptr;
        if (label && fieldItem && fieldItem->widget())
            levelLabel(*label, *fieldItem->widget());
    }
}

void shareLabelWidth(QWidget& area)
{
    new SharedWidth(&area); // the area's own
}

} // namespace padside
