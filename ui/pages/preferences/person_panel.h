// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

class QComboBox;
class QLineEdit;

namespace padside {

struct Preferences;

/// Who writes, and on what: technician, contractor, paper.
class PersonPanel : public QWidget
{
    Q_OBJECT
public:
    explicit PersonPanel(const Preferences& preferences, QWidget* parent = nullptr);
    void writeTo(Preferences& preferences) const;

private:
    QLineEdit* m_technician;
    QLineEdit* m_contractor;
    QComboBox* m_paper;
};

} // namespace padside
