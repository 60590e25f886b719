// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/dialogs.h"

#include <QApplication>
#include <QMessageBox>
#include <QPushButton>

namespace padside {

namespace {

const QString title = QStringLiteral("Padside");

bool agreed(const QString& question, const QString& yes, const QString& no)
{
    QMessageBox box(QMessageBox::Question, title, question, QMessageBox::NoButton, QApplication::activeWindow());
    const QPushButton* accepting = box.addButton(yes, QMessageBox::AcceptRole);
    QPushButton* declining = box.addButton(no, QMessageBox::RejectRole);
    box.setDefaultButton(declining);
    box.setEscapeButton(declining);
    box.exec();
    return box.clickedButton() == accepting;
}

} // namespace

Dialogs messageBoxes()
{
    return {[](const QString& sentence) { QMessageBox::warning(QApplication::activeWindow(), title, sentence); },
            &agreed};
}

} // namespace padside
