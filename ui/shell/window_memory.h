// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

class QSettings;

namespace padside {

class MainWindow;

/// Writes the window's size and position, the widths of its panes and where in the file the person is.
void rememberWindow(const MainWindow& window, QSettings& settings);

/// Brings back what was remembered; the place only in the file it was in. Without anything remembered: 1280 by 800, or
/// the whole of a smaller screen.
void restoreWindow(MainWindow& window, const QSettings& settings);

} // namespace padside
