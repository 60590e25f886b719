// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

class QDialogButtonBox;
class QLabel;
class QPushButton;

namespace padside {

class RecordBook;

/// A form in a window of its own, with room for what the store said. It closes only when what was typed is written, or
/// the person gives up.
class SetupDialog : public QDialog
{
    Q_OBJECT
public:
    void accept() final;

protected:
    SetupDialog(RecordBook& book, const QString& title, QWidget* parent);

    /// Puts the form into the window; it scrolls where the screen is small. `next` says above it what is needed and
    /// what comes next; it may be empty.
    void setForm(QWidget* form, const QString& keep, const QString& next = {});
    void setKeepText(const QString& keep);
    /// As high as its form asks for, and as the screen allows.
    void resizeToForm(int width);
    /// Writes what was typed. False: it can't be taken or the store refused it, and the person was told why.
    virtual bool keep() = 0;
    /// Called once it is written and the window closed: another one may open.
    virtual void announce() { }

    RecordBook& m_book;

private:
    QLabel* m_said;
    QPushButton* m_keep = nullptr;
};

} // namespace padside
