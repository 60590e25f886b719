// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/checked_form.h"

#include "ui/drawing/level_labels.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace padside {

namespace {

void embolden(QLabel& label)
{
    QFont bold = label.font();
    bold.setBold(true);
    label.setFont(bold);
}

} // namespace

/// Asks for the height its lines take at the width it has. The layouts between a form and its window pass a least
/// height on at once, but reckon with one line where only a height for a width is told; the form was then squeezed.
class WrappedSentence final : public QLabel
{
public:
    WrappedSentence() { setWordWrap(true); }

    void say(const QString& sentence)
    {
        setText(sentence);
        askForLines();
    }

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        QLabel::resizeEvent(event);
        askForLines();
    }

private:
    void askForLines() { setMinimumHeight(text().isEmpty() ? 0 : heightForWidth(width())); }
};

CheckedForm::CheckedForm(QWidget* parent)
    : QWidget(parent)
    , m_form(new QFormLayout)
{
    auto* column = new QVBoxLayout(this);
    column->addLayout(m_form);
    column->addStretch(1); // room to spare stays below: the lines keep together
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_form->setRowWrapPolicy(QFormLayout::DontWrapRows);
}

void CheckedForm::wrapLongRows()
{
    m_form->setRowWrapPolicy(QFormLayout::WrapLongRows);
}

void CheckedForm::addField(int field, const QString& label, QWidget* control, const QString& name)
{
    control->setObjectName(name);
    control->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    auto* problem = new WrappedSentence;
    problem->setObjectName(name + QLatin1String("-problem"));
    embolden(*problem);
    problem->hide();
    auto* hint = new WrappedSentence;
    hint->setObjectName(name + QLatin1String("-hint"));
    hint->setForegroundRole(QPalette::PlaceholderText); // second-rank text in every theme
    hint->hide();
    auto* cell = new QWidget;
    auto* column = new QVBoxLayout(cell);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(control);
    column->addWidget(problem);
    column->addWidget(hint);
    column->addStretch(); // a row may be given more than it needs: its line stays beside its label
    auto* shownLabel = new QLabel(label);
    shownLabel->setBuddy(control);
    m_form->addRow(shownLabel, cell);
    levelLabel(*shownLabel, *control);
    m_fields.emplace(field, Field{control, problem, cell, hint});
    m_order.push_back(field);
    forgetProblemWhenChanged(field);
}

void CheckedForm::forgetProblemWhenChanged(int field)
{
    // Its line stays: the form does not move under the hand that types.
    const auto forget = [this, field] {
        m_fields.at(field).problem->clear();
        describe(field);
    };
    QWidget* control = m_fields.at(field).control;
    if (auto* line = qobject_cast<QLineEdit*>(control))
        connect(line, &QLineEdit::textChanged, this, forget);
    else if (auto* lines = qobject_cast<QPlainTextEdit*>(control))
        connect(lines, &QPlainTextEdit::textChanged, this, forget);
    else if (auto* choice = qobject_cast<QComboBox*>(control))
        connect(choice, &QComboBox::currentTextChanged, this, forget);
}

void CheckedForm::setProblem(int field, const QString& sentence)
{
    const Field& shown = m_fields.at(field);
    shown.problem->say(sentence);
    shown.problem->setVisible(!sentence.isEmpty());
    describe(field);
}

void CheckedForm::describe(int field)
{
    const Field& shown = m_fields.at(field);
    shown.control->setAccessibleDescription(shown.problem->text().isEmpty() ? shown.hint->text()
                                                                            : shown.problem->text());
}

void CheckedForm::addHeading(const QString& text)
{
    auto* heading = new QLabel(text);
    embolden(*heading);
    heading->setContentsMargins(0, 10, 0, 0);
    m_form->addRow(heading);
}

void CheckedForm::addNote(const QString& text)
{
    auto* note = new QLabel(text);
    note->setWordWrap(true);
    m_form->addRow(note);
}

void CheckedForm::addWide(QWidget* widget)
{
    m_form->addRow(widget);
}

void CheckedForm::setFieldShown(int field, bool shown)
{
    m_form->setRowVisible(m_fields.at(field).cell, shown);
}

QString CheckedForm::text(int field) const
{
    QWidget* control = m_fields.at(field).control;
    if (const auto* line = qobject_cast<QLineEdit*>(control))
        return line->text();
    if (const auto* text = qobject_cast<QPlainTextEdit*>(control))
        return text->toPlainText();
    const auto* choice = qobject_cast<QComboBox*>(control);
    return choice->isEditable() ? choice->currentText() : choice->currentData().toString();
}

void CheckedForm::setText(int field, const QString& text)
{
    QWidget* control = m_fields.at(field).control;
    if (auto* line = qobject_cast<QLineEdit*>(control))
        line->setText(text);
    else if (auto* lines = qobject_cast<QPlainTextEdit*>(control))
        lines->setPlainText(text);
    else if (auto* choice = qobject_cast<QComboBox*>(control); choice->isEditable())
        choice->setEditText(text);
    else
        choice->setCurrentIndex(choice->findData(text));
}

void CheckedForm::setHint(int field, const QString& text)
{
    WrappedSentence* hint = m_fields.at(field).hint;
    hint->say(text);
    hint->setVisible(!text.isEmpty());
    describe(field);
}

QString CheckedForm::problem(int field) const
{
    return m_fields.at(field).problem->text();
}

void CheckedForm::setProblems(const std::map<int, QString>& problems)
{
    QWidget* first = nullptr;
    for (const int key : m_order) {
        const auto found = problems.find(key);
        setProblem(key, found == problems.end() ? QString() : found->second);
        if (found != problems.end() && first == nullptr)
            first = m_fields.at(key).control;
    }
    if (first != nullptr)
        first->setFocus(); // a scrolled form follows
}

} // namespace padside
