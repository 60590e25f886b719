// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/paper_painter.h"

#include <QAbstractScrollArea>
#include <QPixmap>
#include <QThreadPool>

#include <map>
#include <vector>

namespace padside {

struct Theme;

/// The pages of a document one below the other, as they will be printed: the same painter, as wide as the window
/// allows. Photographs are read beside the window; until then their places are blank.
class PagePreview : public QAbstractScrollArea
{
    Q_OBJECT
public:
    explicit PagePreview(const Theme& theme, QWidget* parent = nullptr);
    ~PagePreview() override; ///< waits for the photograph being read

    /// `photos` is called in other threads.
    void setDocument(PaperDocument document, const PhotoSource& photos);
    [[nodiscard]] const PaperDocument& document() const { return m_document; }
    [[nodiscard]] bool isComplete() const { return m_waiting == 0; } ///< no photograph is still being read

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QSizeF pageSize() const; ///< on the screen
    [[nodiscard]] double pageTop(std::size_t page) const; ///< from the top of all pages
    void layPages();
    void readPhotos(const PhotoSource& photos);
    void take(int round, const PhotoId& id, const QImage& image);
    [[nodiscard]] QImage photo(const PhotoId& id) const;
    [[nodiscard]] const QPixmap& picture(std::size_t page);

    const Theme& m_theme;
    PaperDocument m_document;
    std::map<PhotoId, QImage> m_photos; ///< those read; null where one can't be
    int m_waiting = 0;
    int m_round = 0; ///< of setDocument: what was asked for before is not wanted any more
    std::vector<QPixmap> m_pictures; ///< null until a page is looked at
    QThreadPool m_pool;
};

} // namespace padside
