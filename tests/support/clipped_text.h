// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>

class QWidget;

namespace padside::test {

/// What can't be read whole in the visible widgets of `window`, one line each: class, object name, text. A text that is
/// cut but stands whole in its tool tip is let pass.
[[nodiscard]] QStringList clippedTexts(const QWidget& window);

} // namespace padside::test
