// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/paper_sheet.h"

#include <QString>

class QComboBox;
class QLocale;

/// What the paper pages remember together: a person has one printer and one folder for what is sent to customers.
/// A box of paper sizes holds "a4" and "letter" as its data.
namespace padside {

/// Sets the box to the size chosen last; else to the one usual where the computer stands.
void showPaperSize(QComboBox& sizes, const QLocale& locale);
void keepPaperSize(const QComboBox& sizes);
[[nodiscard]] PaperSize paperSize(const QComboBox& sizes);

/// Where the last file was exported to; the documents' folder at first.
[[nodiscard]] QString exportFolder();
void keepExportFolder(const QString& exportedFile);

} // namespace padside
