// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/paper_painter.h"

#include <functional>

namespace padside {

/// A paper to look at, print or export: how it is laid out for a name at its head and a size of paper.
struct Sheet
{
    QString title; ///< "Day's sheet"
    QString fileName; ///< suggested for a PDF
    std::function<PaperDocument(const QString& contractor, PaperSize size)> lay;
    PhotoSource photos{}; ///< may be empty
    bool named = true; ///< a name stands at its head
};

/// The name without signs that a file's name can't hold, and ".pdf".
[[nodiscard]] QString pdfFileName(QString name);

} // namespace padside
