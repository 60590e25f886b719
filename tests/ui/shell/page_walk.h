// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/id.h"

#include <QSize>

#include <functional>
#include <memory>
#include <optional>
#include <span>

class QDialog;
class QTabWidget;
class QWidget;

namespace padside {
class MainWindow;
class RecordBook;
class SetupLog;
struct Theme;
} // namespace padside

namespace padside::test {

/// Opens every page and every dialog on a record file one after the other, and looks at each. A page that doesn't come
/// throws std::runtime_error. What a person enters on the way (a visit is started) stays in the file.
class PageWalk
{
public:
    /// `stop` names what stands in `window` now.
    using Look = std::function<void(QWidget& window, const char* stop)>;

    PageWalk(RecordBook& book, const Theme& theme, QSize size, Look look);

    void everything();

private:
    void pages() const; ///< those in the window, without the dialogs
    [[nodiscard]] std::unique_ptr<MainWindow> open() const;
    void look(QWidget& window, const char* stop) const;
    /// Brings each tab to the front; each has its stop.
    void lookAtTabs(QWidget& window, QTabWidget& tabs, std::span<const char* const> stops) const;
    void pagesOfUnit(MainWindow& window, UnitId unit) const;
    void evidence(MainWindow& window) const;
    void photographs(MainWindow& window) const;
    void visit(MainWindow& window, UnitId unit) const;
    void papers(MainWindow& window, UnitId unit) const;
    void lookAtPaper(MainWindow& window, const char* stop) const;
    void fleet(MainWindow& window) const;
    void season(MainWindow& window) const;
    void sheets(MainWindow& window) const;
    void track(MainWindow& window) const;
    void dialogsOfWindow() const;
    void preferences() const;
    void settingUp() const;
    void form(std::unique_ptr<QDialog> form, const char* stop) const;
    void list(SetupLog& log) const;

    RecordBook& m_book;
    const Theme& m_theme;
    QSize m_size;
    Look m_look;
    std::optional<UnitId> m_unit; ///< whose pages are opened; empty where the file has no unit
};

} // namespace padside::test
