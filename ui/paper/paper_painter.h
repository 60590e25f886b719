// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/paper_sheet.h"

#include <QImage>

#include <functional>

class QPainter;

namespace padside {

/// The picture of a photograph, upright; null if it can't be had.
using PhotoSource = std::function<QImage(PhotoId)>;

/// Paints one page. The painter must already be scaled so that one unit is a tenth of a millimetre, with its origin in
/// the sheet's upper left corner. The same for PDF, printer and screen; colours of Theme::print(), all opaque.
void paintPage(QPainter& painter, const PaperPage& page, const PhotoSource& photos);

} // namespace padside
