// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

class QComboBox;
class QLineEdit;

namespace padside {

class RecordBook;
struct Preferences;

/// Who writes, and how their paper and their money look: technician, contractor, paper size, currency.
class PersonPanel : public QWidget
{
    Q_OBJECT
public:
    PersonPanel(const RecordBook& book, const Preferences& preferences, QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const; ///< what stands in the way of keeping the choices; empty if nothing does
    void writeTo(Preferences& preferences) const; ///< call it without a problem

private:
    [[nodiscard]] QWidget* makeWho();
    [[nodiscard]] QWidget* makePaper();

    const RecordBook& m_book;
    QLineEdit* m_technician;
    QLineEdit* m_contractor;
    QComboBox* m_paper;
    QLineEdit* m_currency;
};

} // namespace padside
