// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/paper_sheet.h"

namespace padside {

/// Sets the content on pages: blocks flow, every page has its footer and "Page 1 of 2", every page but the first its
/// running head. There is always at least one page.
[[nodiscard]] PaperDocument makePages(const PaperContent& content, PaperSize size);

} // namespace padside
