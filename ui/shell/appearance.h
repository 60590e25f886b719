// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/theme.h"

#include <QFont>

class QApplication;

namespace padside {

/// How a person wants to see the program.
struct Look
{
    ThemeKind theme = ThemeKind::light; ///< one for screens
    bool fieldSize = false;

    friend bool operator==(const Look&, const Look&) = default;
};

/// The look chosen last; at first light or dark as the desktop has it.
[[nodiscard]] Look rememberedLook();
void remember(const Look& look);

/// Gives the whole program its colours and sizes. They can be changed while windows are open: all that paints refers to
/// theme(), so nothing has to be made anew and nothing that is being typed is touched.
class Appearance
{
public:
    explicit Appearance(QApplication& application);

    void wear(const Look& look);
    [[nodiscard]] const Look& look() const { return m_look; }
    [[nodiscard]] const Theme& theme() const { return m_theme; } ///< lives as long as this; what it holds changes

private:
    QFont m_desktopFont;
    Look m_look;
    Theme m_theme;
};

} // namespace padside
