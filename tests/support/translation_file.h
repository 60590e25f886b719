// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace padside::test {

/// One entry of a Qt Linguist file (.ts).
struct Translated
{
    QString context;
    QString source;
    QString comment;
    QStringList translations; ///< one, or a plural's forms
    bool plural = false;
    bool finished = false;
};

/// All entries of a .ts file; throws std::runtime_error with the reason if it can't be read.
[[nodiscard]] std::vector<Translated> readTranslationFile(const QString& path);

/// The padside_*.ts of the source tree.
[[nodiscard]] QStringList translationFiles();

} // namespace padside::test
