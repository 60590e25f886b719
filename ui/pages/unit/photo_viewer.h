// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <QDialog>

namespace padside {

struct Theme;
class PhotoLoader;

/// One photograph as large as the window allows, with its grade and what it shows; Left and Right step to the one
/// before and after, Home and End to the first and last, Esc closes.
class PhotoViewer : public QDialog
{
    Q_OBJECT
public:
    /// A photograph and what is said of it.
    struct Sheet
    {
        PhotoId photo;
        QString sentence;
        std::optional<Grade> grade;
        bool notSeen = false;
    };

    PhotoViewer(PhotoLoader& loader, const Theme& theme, QWidget* parent);

    void setSheets(std::vector<Sheet> sheets);
    /// Opens on the photograph with this number, or goes to it.
    void showSheet(int number);
    [[nodiscard]] int current() const { return m_current; }

Q_SIGNALS:
    void stepped(int number);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    void describe();

    PhotoLoader& m_loader;
    const Theme& m_theme;
    std::vector<Sheet> m_sheets;
    int m_current = 0;
};

} // namespace padside
