// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/appearance.h"

#include "ui/drawing/theme.h"

#include <QApplication>
#include <QPalette>
#include <QStyleFactory>
#include <QToolTip>

namespace padside {

namespace {

QPalette paletteOf(const Theme& theme)
{
    QPalette palette;
    palette.setColor(QPalette::Window, theme.ground);
    palette.setColor(QPalette::WindowText, theme.ink);
    palette.setColor(QPalette::Base, theme.panel);
    palette.setColor(QPalette::AlternateBase, mixed(theme.panel, theme.ground, 0.5));
    palette.setColor(QPalette::Text, theme.ink);
    palette.setColor(QPalette::PlaceholderText, theme.softInk);
    palette.setColor(QPalette::Button, theme.panel);
    palette.setColor(QPalette::ButtonText, theme.ink);
    palette.setColor(QPalette::BrightText, theme.accentInk);
    palette.setColor(QPalette::ToolTipBase, theme.panel);
    palette.setColor(QPalette::ToolTipText, theme.ink);
    palette.setColor(QPalette::Highlight, theme.accent);
    palette.setColor(QPalette::HighlightedText, theme.accentInk);
    palette.setColor(QPalette::Link, theme.accent);
    palette.setColor(QPalette::Mid, theme.line);
    palette.setColor(QPalette::Midlight, mixed(theme.line, theme.ground, 0.5));
    palette.setColor(QPalette::Dark, mixed(theme.ink, theme.ground, 0.4));
    palette.setColor(QPalette::Shadow, mixed(theme.ink, theme.ground, 0.6));
    palette.setColor(QPalette::Light, theme.panel);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, mixed(theme.softInk, theme.ground, 0.6));
    return palette;
}

} // namespace

void applyTheme(const Theme& theme)
{
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(paletteOf(theme));
    // Not by a style sheet: that would put a second style under every widget and double the time to the first window.
    QToolTip::setPalette(paletteOf(theme));
}

} // namespace padside
