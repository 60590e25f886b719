// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <QImage>
#include <QObject>
#include <QThreadPool>

#include <map>
#include <set>

namespace padside {

class RecordBook;

/// Pictures of photographs, decoded beside the window's thread and kept while they are wanted. The originals are read
/// upright and no larger than asked for.
class PhotoLoader : public QObject
{
    Q_OBJECT
public:
    explicit PhotoLoader(RecordBook& book, QObject* parent = nullptr);
    ~PhotoLoader() override; ///< waits for what is being decoded

    /// Whose photographs may be asked for; forgets what others were loaded.
    void setPhotos(std::vector<Photo> photos);

    /// The picture if it is there, at most `edge` pixels on its longer side; else null, and loaded() when it is. A
    /// picture that can't be read stays null: see failed().
    [[nodiscard]] QImage picture(const PhotoId& photo, int edge);
    [[nodiscard]] bool failed(const PhotoId& photo) const { return m_failed.contains(photo); }

Q_SIGNALS:
    void loaded(const padside::PhotoId& photo);

private:
    using Key = std::pair<PhotoId, int>;

    void take(const PhotoId& photo, int edge, const QImage& image, int round);

    RecordBook& m_book;
    std::vector<Photo> m_photos;
    std::map<Key, QImage> m_pictures;
    std::set<Key> m_waiting;
    std::set<PhotoId> m_failed;
    int m_round = 0; ///< of setPhotos: what was asked for before is not wanted any more
    QThreadPool m_pool;
};

} // namespace padside
