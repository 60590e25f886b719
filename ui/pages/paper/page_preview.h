// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/paper_painter.h"

#include <QAbstractScrollArea>
#include <QPixmap>

namespace padside {

struct Theme;

/// The pages of a document one below the other, as they will be printed: the same painter, as wide as the window
/// allows.
class PagePreview : public QAbstractScrollArea
{
    Q_OBJECT
public:
    explicit PagePreview(const Theme& theme, QWidget* parent = nullptr);

    void setDocument(PaperDocument document, PhotoSource photos);
    [[nodiscard]] const PaperDocument& document() const { return m_document; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QSizeF pageSize() const; ///< on the screen
    [[nodiscard]] double pageTop(std::size_t page) const; ///< from the top of all pages
    void layPages();
    [[nodiscard]] const QPixmap& picture(std::size_t page);

    const Theme& m_theme;
    PaperDocument m_document;
    PhotoSource m_photos;
    std::vector<QPixmap> m_pictures; ///< null until a page is looked at
};

} // namespace padside
