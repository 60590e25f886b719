// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/appearance.h"

#include "ui/models/preferences.h"
#include "ui/shell/outline_style.h"

#include <QApplication>
#include <QPalette>
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

Look lookFor(const Preferences& preferences, bool computerIsDark)
{
    const auto chosen = fromCode<ThemeKind>(preferences.theme.toStdString());
    const ThemeKind usual = computerIsDark ? ThemeKind::dark : ThemeKind::light;
    return {chosen && *chosen != ThemeKind::paper ? *chosen : usual, preferences.fieldSize};
}

Appearance::Appearance(QApplication& application)
    : m_desktopFont(application.font())
    , m_theme(Theme::light())
{
}

Appearance::~Appearance()
{
    QApplication::setFont(m_desktopFont);
    QApplication::setPalette(QPalette());
}

void Appearance::wear(const Look& look)
{
    if (look == m_look)
        return;
    m_look = look;
    m_theme = Theme::of(look.theme);
    m_theme.size = look.fieldSize ? Size::field() : Size::desk();
    QFont font = m_desktopFont;
    if (font.pointSizeF() > 0)
        font.setPointSizeF(font.pointSizeF() * m_theme.size.text);
    else
        font.setPixelSize(static_cast<int>(font.pixelSize() * m_theme.size.text));
    QApplication::setFont(font);
    QApplication::setPalette(paletteOf(m_theme));
    // Not by a style sheet: that would put a second style under every widget and double the time to the first window.
    QToolTip::setPalette(QApplication::palette());
    QApplication::setStyle(new OutlineStyle(m_theme.size)); // last: widgets take their sizes anew when it comes
}

} // namespace padside
