// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"
#include "ui/paper/visit_summary_input.h"

#include <functional>

class QPagedPaintDevice;

namespace padside {

/// The summary set on pages, ready for the screen, the printer or a file.
[[nodiscard]] PaperDocument layVisitSummary(const SummaryInput& input);

/// Told after each page how much is done, 0 to 1; false asks to stop.
using PaintedShare = std::function<bool(double)>;

/// Paints all pages on a printer or PDF writer; sets its page size. False if the device gives up or was asked to stop.
[[nodiscard]] bool printDocument(const PaperDocument& document, const PhotoSource& photos, QPagedPaintDevice& device,
                                 const PaintedShare& tell = {});

/// Writes the document as PDF. The file is made under a temporary name beside `path` and takes its name when it is
/// whole: a failure (folder missing, not writable, disk full) is a Problem and leaves what was there before. False,
/// and nothing written, if `tell` asked to stop.
[[nodiscard]] Result<bool> writePdf(const PaperDocument& document, const PhotoSource& photos, const QString& path,
                                    const PaintedShare& tell = {});

/// layVisitSummary and writePdf in one.
[[nodiscard]] Result<bool> exportVisitSummary(const SummaryInput& input, const QString& path);

/// "HB-03 2026-05-04 visit summary.pdf"; signs that a file's name can't hold are left out.
[[nodiscard]] QString suggestedFileName(const UnitRecord& record, VisitId visit);

/// A photograph read for paper: upright, no larger than paper shows. Null if the file can't be read.
[[nodiscard]] QImage readPhotoForPaper(const QString& path);

} // namespace padside
