// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QImage>
#include <QWidget>

namespace padside {

struct Theme;

/// One photograph as large as there is room, or a few words where there is none.
class PhotoFrame : public QWidget
{
    Q_OBJECT
public:
    explicit PhotoFrame(const Theme& theme, QWidget* parent = nullptr);

    void showImage(const QImage& image, const QString& caption);
    void showNothing(const QString& why);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int leastHeight() const;

    const Theme& m_theme;
    QImage m_image;
    QString m_text;
};

/// The picture in a file, upright and no larger than `edge` pixels; null if it can't be read.
[[nodiscard]] QImage smallImage(const QString& path, int edge);

} // namespace padside
