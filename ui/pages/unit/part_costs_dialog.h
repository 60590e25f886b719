// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/own_changes.h"
#include "ui/pages/setup/setup_dialog.h"

#include <string>
#include <vector>

namespace padside {

class CheckedForm;
class WorthLog;

/// What parts of one kind cost, in the person's own money; and the price of the unit's refrigerant.
class PartCostsDialog : public SetupDialog
{
    Q_OBJECT
public:
    PartCostsDialog(RecordBook& book, WorthLog& log, const std::string& partKind, const QString& name,
                    const std::string& refrigerant, QWidget* parent = nullptr);

private:
    bool keep() override;

    WorthLog& m_log;
    CheckedForm* m_form;
    std::vector<OwnField> m_fields;
};

} // namespace padside
