// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>

namespace padside::test {

/// What one of poppler's tools (pdftotext, pdfinfo, …) prints; a failure of the test where it is missing or refuses.
[[nodiscard]] QString poppler(const QString& tool, const QStringList& arguments);

} // namespace padside::test
