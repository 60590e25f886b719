// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/window_memory.h"

#include "ui/shell/main_window.h"

#include <QScreen>
#include <QSettings>
#include <QSplitter>

namespace padside {

namespace {

const QString geometryKey = QStringLiteral("window/geometry");
const QString splitterKey = QStringLiteral("window/panes");
const QString fileKey = QStringLiteral("window/file");
const QString placeKey = QStringLiteral("window/place");
constexpr QSize usualSize{1280, 800};
constexpr int titleBar = 40; ///< about; the desktop tells only once the window is shown

QSplitter* panesOf(const MainWindow& window)
{
    return window.centralWidget()->findChild<QSplitter*>(QStringLiteral("panes"));
}

void takeUsualSize(MainWindow& window)
{
    window.resize(usualSize);
    const QSize screen = window.screen()->availableSize() - QSize(0, titleBar);
    if (screen.width() < usualSize.width() || screen.height() < usualSize.height())
        window.setWindowState(Qt::WindowMaximized);
}

} // namespace

void rememberWindow(const MainWindow& window, QSettings& settings)
{
    settings.setValue(geometryKey, window.saveGeometry());
    settings.setValue(splitterKey, panesOf(window)->saveState());
    settings.setValue(fileKey, window.file());
    const auto place = window.place();
    settings.setValue(placeKey, place ? placeText(*place) : QString());
}

void restoreWindow(MainWindow& window, const QSettings& settings)
{
    if (!window.restoreGeometry(settings.value(geometryKey).toByteArray()))
        takeUsualSize(window);
    panesOf(window)->restoreState(settings.value(splitterKey).toByteArray());
    if (settings.value(fileKey).toString() != window.file())
        return;
    if (const auto place = parsePlace(settings.value(placeKey).toString()))
        window.goTo(*place);
}

} // namespace padside
