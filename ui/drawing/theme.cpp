// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/theme.h"

namespace padside {

namespace {

const QColor paperWhite(0xff, 0xff, 0xff);
const QColor nearBlack(0x1d, 0x23, 0x29);

// One sequential ramp for all themes, so that a grade is the same colour on screen and paper. CIE lightness about
// 82, 72, 62, 46, 27: in grey it is still a ramp.
const std::array<QColor, 5> rampFill{QColor(0xc3, 0xcd, 0xd6), QColor(0xb3, 0xb0, 0x98), QColor(0xc0, 0x8f, 0x35),
                                     QColor(0xa3, 0x59, 0x26), QColor(0x6b, 0x2a, 0x12)};
const std::array<QColor, 5> rampInk{nearBlack, nearBlack, nearBlack, paperWhite, paperWhite};

} // namespace

const Theme& Theme::light()
{
    static const Theme theme{QColor(0xf4, 0xf3, 0xef),
                             paperWhite,
                             nearBlack,
                             QColor(0x5a, 0x63, 0x6c),
                             QColor(0xd3, 0xd2, 0xcb),
                             QColor(0x2b, 0x5a, 0x78),
                             paperWhite,
                             QColor(0x8a, 0x93, 0x9b),
                             rampFill,
                             rampInk,
                             ThemeKind::light};
    return theme;
}

const Theme& Theme::darkTheme()
{
    static const Theme theme{QColor(0x1c, 0x20, 0x24),
                             QColor(0x26, 0x2b, 0x31),
                             QColor(0xe8, 0xe6, 0xe1),
                             QColor(0xa4, 0xac, 0xb3),
                             QColor(0x42, 0x49, 0x51),
                             QColor(0x7f, 0xb4, 0xd4),
                             QColor(0x10, 0x18, 0x1e),
                             QColor(0x77, 0x80, 0x88),
                             rampFill,
                             rampInk,
                             ThemeKind::dark};
    return theme;
}

const Theme& Theme::sunlight()
{
    // The ramp again, with wider steps (CIE lightness about 92, 78, 66, 36, 13) and numerals at 7:1 or more.
    static const QColor black(0x0a, 0x0c, 0x0e);
    static const Theme theme{paperWhite,
                             paperWhite,
                             black,
                             QColor(0x34, 0x3b, 0x41),
                             QColor(0x6b, 0x71, 0x76),
                             QColor(0x0b, 0x3d, 0x5c),
                             paperWhite,
                             QColor(0x34, 0x3b, 0x41),
                             {QColor(0xdf, 0xe8, 0xf0), QColor(0xc6, 0xc2, 0xa4), QColor(0xd0, 0x95, 0x2c),
                              QColor(0x8a, 0x3f, 0x12), QColor(0x3d, 0x15, 0x06)},
                             {black, black, black, paperWhite, paperWhite},
                             ThemeKind::sunlight};
    return theme;
}

const Theme& Theme::of(ThemeKind kind)
{
    switch (kind) {
    case ThemeKind::light:
        return light();
    case ThemeKind::dark:
        return darkTheme();
    case ThemeKind::sunlight:
        return sunlight();
    case ThemeKind::paper:
        return print();
    }
    return light();
}

const Theme& Theme::print()
{
    static const Theme theme{paperWhite,
                             QColor(0xf6, 0xf5, 0xf1),
                             QColor(0x14, 0x18, 0x1c),
                             QColor(0x50, 0x58, 0x60),
                             QColor(0xc4, 0xc4, 0xbe),
                             QColor(0x2b, 0x5a, 0x78),
                             paperWhite,
                             QColor(0x8a, 0x93, 0x9b),
                             rampFill,
                             rampInk,
                             ThemeKind::paper};
    return theme;
}

QColor mixed(const QColor& front, const QColor& back, double share)
{
    const auto blend = [share](double a, double b) { return static_cast<float>(a * share + b * (1 - share)); };
    return QColor::fromRgbF(blend(front.redF(), back.redF()), blend(front.greenF(), back.greenF()),
                            blend(front.blueF(), back.blueF()));
}

} // namespace padside
