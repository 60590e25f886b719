// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>

class QMainWindow;

namespace padside::test {

/// Letters that Alt would find at two visible places of the window at once (menus, buttons, tabs, labels of fields),
/// one line each: the letter and what has it. Such a letter only moves from one to the other.
[[nodiscard]] QStringList sharedLetters(const QMainWindow& window);

} // namespace padside::test
