// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h"
#include "ui/pages/setup/setup_dialog.h"

class QDateEdit;

namespace padside {

class CheckedForm;
class SetupLog;

/// The day a unit was retired, and why.
class RetireDialog final : public SetupDialog
{
    Q_OBJECT
public:
    RetireDialog(RecordBook& book, SetupLog& log, const Unit& unit, QWidget* parent = nullptr);

protected:
    bool keep() override;

private:
    enum Field { day, reason };

    SetupLog& m_log;
    UnitId m_unit;
    CheckedForm* m_form;
    QDateEdit* m_day;
};

} // namespace padside
