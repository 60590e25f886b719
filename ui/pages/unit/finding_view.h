// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTreeView>

namespace padside {

struct Theme;

/// The tree of findings: its columns share the width there is, so that the last note is never pushed out of sight.
class FindingView : public QTreeView
{
    Q_OBJECT
public:
    explicit FindingView(const Theme& theme, QWidget* parent = nullptr);

    /// Gives short columns what they need and shares the rest among names, reasons and notes.
    void shareWidth();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
};

} // namespace padside
