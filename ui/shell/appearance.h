// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/theme.h"

#include <QFont>

#include <optional>

class QApplication;

namespace padside {

struct Preferences;

/// How a person wants to see the program.
struct Look
{
    ThemeKind theme = ThemeKind::light; ///< one for screens
    bool fieldSize = false;

    friend bool operator==(const Look&, const Look&) = default;
};

/// The look that was chosen; where no theme was, light or dark as the computer is set.
[[nodiscard]] Look lookFor(const Preferences& preferences, bool computerIsDark);

/// Gives the whole program its colours and sizes. They can be changed while windows are open: all that paints refers to
/// theme(), so nothing has to be made anew and nothing that is being typed is touched.
class Appearance
{
public:
    explicit Appearance(QApplication& application);
    ~Appearance(); ///< gives letters and colours of the computer back
    Appearance(const Appearance&) = delete;
    Appearance& operator=(const Appearance&) = delete;

    void wear(const Look& look);
    [[nodiscard]] Look look() const { return m_look.value_or(Look{}); }
    [[nodiscard]] const Theme& theme() const { return m_theme; } ///< lives as long as this; what it holds changes

private:
    QFont m_desktopFont;
    std::optional<Look> m_look; ///< none is worn at first
    Theme m_theme;
};

} // namespace padside
