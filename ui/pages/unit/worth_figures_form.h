// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/own_changes.h"
#include "core/record/unit_record.h"

#include <QWidget>

#include <optional>
#include <string>
#include <vector>

class QLineEdit;

namespace padside {

class CheckedForm;
class RecordBook;
class WorthLog;

/// What the comparison rests on, to be changed in place: the unit's own figures, then the general ones. An entry counts
/// as soon as its field is left, and can be undone.
class WorthFiguresForm : public QWidget
{
    Q_OBJECT
public:
    WorthFiguresForm(RecordBook& book, WorthLog& log, QWidget* parent = nullptr);

    /// Shows what is kept; what is just being typed stays.
    void show(const UnitRecord& record, bool mayWrite);
    using QWidget::show;

private:
    /// A field of the form: one of the unit's figures by its code, or a general one by its path.
    struct Place
    {
        std::string code;
        std::vector<std::string> path;
    };

    void addUnitFields();
    void addGeneralFields();
    QLineEdit* addField(const QString& label, Place place);
    void enter(int field);
    [[nodiscard]] std::optional<double> typed(int field, QString& why) const; ///< empty and no `why`: cleared
    void showUnitField(int field, const UnitRecord& record);
    void showGeneralField(int field, const OwnField& value);
    void showText(int field, const QString& text, const QString& hint);

    RecordBook& m_book;
    WorthLog& m_log;
    UnitId m_unit;
    CheckedForm* m_form;
    std::vector<Place> m_places; ///< by field
    std::vector<QString> m_shown; ///< by field, as it is kept
};

} // namespace padside
