// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <map>

class QFormLayout;
class QLabel;

namespace padside {

class WrappedSentence;

/// A form of labelled fields, each with room for one sentence about what is wrong with it. Fields are told apart by a
/// number, which stands for a value of the form's own enumeration.
class CheckedForm : public QWidget
{
    Q_OBJECT
public:
    explicit CheckedForm(QWidget* parent = nullptr);

    /// `control` is a line, a text, or a choice whose data is the value; of a choice that takes any text its text is.
    void addField(int field, const QString& label, QWidget* control, const QString& name);
    void addHeading(const QString& text);
    void addNote(const QString& text);
    void addWide(QWidget* widget); ///< below the fields, across both columns

    /// Where there is little room, a field goes below its label.
    void wrapLongRows();

    void setFieldShown(int field, bool shown);

    [[nodiscard]] QString text(int field) const;
    void setText(int field, const QString& text);
    [[nodiscard]] QWidget* control(int field) const { return m_fields.at(field).control; }
    /// A quiet line below the field, about what stands in it; none where it is empty.
    void setHint(int field, const QString& text);
    [[nodiscard]] QString problem(int field) const; ///< empty if nothing is wrong

    /// Says each sentence below its field and goes to the first of them; the other fields are said to be well. A
    /// sentence goes as soon as its field is changed.
    void setProblems(const std::map<int, QString>& problems);

private:
    void forgetProblemWhenChanged(int field);
    void setProblem(int field, const QString& sentence);
    void describe(int field); ///< to assistive technology: what is wrong, else the hint

    struct Field
    {
        QWidget* control;
        WrappedSentence* problem;
        QWidget* cell; ///< both, and the hint
        WrappedSentence* hint;
    };

    QFormLayout* m_form;
    std::map<int, Field> m_fields;
    std::vector<int> m_order;
};

} // namespace padside
