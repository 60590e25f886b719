// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/paper/paper_choice.h"

#include "ui/models/preferences.h"

#include <QComboBox>
#include <QFileInfo>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>

#include <algorithm>

namespace padside {

namespace {

const QString folderKey = QStringLiteral("paper/folder");
const QString letter = QStringLiteral("letter");

} // namespace

void showPaperSize(QComboBox& sizes, const QLocale& locale)
{
    const bool american = locale.measurementSystem() == QLocale::ImperialUSSystem;
    const QString usual = american ? letter : QStringLiteral("a4");
    const QString chosen = readPreferences(QSettings()).paperSize;
    sizes.setCurrentIndex(std::max(0, sizes.findData(chosen.isEmpty() ? usual : chosen)));
}

void keepPaperSize(const QComboBox& sizes)
{
    QSettings settings;
    Preferences preferences = readPreferences(settings);
    preferences.paperSize = sizes.currentData().toString();
    keepPreferences(preferences, settings);
}

PaperSize paperSize(const QComboBox& sizes)
{
    return sizes.currentData().toString() == letter ? PaperSize::letter : PaperSize::a4;
}

QString exportFolder()
{
    const QString usual = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QSettings().value(folderKey, usual).toString();
}

void keepExportFolder(const QString& exportedFile)
{
    QSettings().setValue(folderKey, QFileInfo(exportedFile).absolutePath());
}

} // namespace padside
