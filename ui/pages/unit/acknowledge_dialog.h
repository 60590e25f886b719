// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

class QComboBox;
class QPushButton;

namespace padside {

/// Asks why a flag may stand as it is. It can only be left with a reason, or given up.
class AcknowledgeDialog : public QDialog
{
    Q_OBJECT
public:
    /// What the flag says, and what would clear it.
    AcknowledgeDialog(const QString& sentence, const QString& clears, QWidget* parent);

    [[nodiscard]] QString reason() const;

private:
    QComboBox* m_reason;
    QPushButton* m_keep = nullptr;
};

} // namespace padside
