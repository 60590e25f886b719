// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <functional>
#include <vector>

class QVBoxLayout;

namespace padside {

/// Entries already made, one line each, with a button to take it back where that is allowed.
class EntryLines : public QWidget
{
    Q_OBJECT
public:
    struct Line
    {
        QString text;
        std::function<void()> takeBack; ///< empty: it stays
        std::function<void()> correct = {}; ///< empty: there is nothing to correct, or it is not allowed
    };

    explicit EntryLines(QWidget* parent = nullptr);

    void showLines(const std::vector<Line>& lines);

private:
    QVBoxLayout* m_layout;
};

} // namespace padside
