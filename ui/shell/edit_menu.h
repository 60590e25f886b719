// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QMenu>
#include <QPointer>

#include <functional>
#include <vector>

class QUndoStack;

namespace padside {

/// Undo and redo of the page in front, with the names of the steps.
class EditMenu : public QMenu
{
    Q_OBJECT
public:
    /// What a page lets be taken back.
    struct Steps
    {
        const QUndoStack& names; ///< of the steps
        std::function<void()> undo;
        std::function<void()> redo;
        std::function<bool()> isClosed; ///< a closed visit is corrected instead; may be empty
    };

    explicit EditMenu(QWidget* parent = nullptr);

    /// From now on undo and redo are those of `page` while it is in front.
    void follow(QWidget& page, Steps steps);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Followed
    {
        QPointer<QWidget> page;
        Steps steps;
    };

    [[nodiscard]] const Steps* inFront() const;
    void refresh();

    std::vector<Followed> m_pages;
    QAction* m_undo;
    QAction* m_redo;
};

} // namespace padside
