// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/photo_loader.h"

#include "core/store/photo_files.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"

#include <QBuffer>
#include <QImageReader>

#include <algorithm>

namespace padside {

namespace {

constexpr int threads = 2;
constexpr int limitInMegabytes = 512; ///< decoded; a photograph of 108 megapixels needs 430

QImage decoded(QImageReader& reader, int edge)
{
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    if (const QSize size = reader.size(); size.width() > edge || size.height() > edge)
        reader.setScaledSize(size.scaled(edge, edge, Qt::KeepAspectRatio));
    return reader.read();
}

/// From the small JPEG where it is large enough, else from the original.
QImage pictureOf(QByteArray thumbnail, const QString& path, int edge)
{
    if (!thumbnail.isEmpty()) {
        QBuffer buffer(&thumbnail);
        buffer.open(QIODevice::ReadOnly);
        QImageReader reader(&buffer);
        const QSize size = reader.size();
        if (std::max(size.width(), size.height()) >= edge) {
            if (QImage image = decoded(reader, edge); !image.isNull())
                return image;
        }
    }
    QImageReader reader(path);
    return decoded(reader, edge);
}

} // namespace

PhotoLoader::PhotoLoader(RecordBook& book, QObject* parent)
    : QObject(parent)
    , m_book(book)
{
    m_pool.setMaxThreadCount(threads);
    QImageReader::setAllocationLimit(std::max(QImageReader::allocationLimit(), limitInMegabytes));
}

PhotoLoader::~PhotoLoader()
{
    m_pool.clear();
    m_pool.waitForDone();
}

void PhotoLoader::setPhotos(std::vector<Photo> photos)
{
    const auto same = [](const Photo& one, const Photo& other) { return one.id == other.id; };
    if (std::ranges::equal(m_photos, photos, same))
        return;
    m_photos = std::move(photos);
    ++m_round;
    m_pool.clear();
    m_waiting.clear();
    m_failed.clear();
    std::erase_if(m_pictures, [this](const auto& entry) {
        return std::ranges::find(m_photos, entry.first.first, &Photo::id) == m_photos.end();
    });
}

QImage PhotoLoader::picture(const PhotoId& id, int edge)
{
    const Key key(id, edge);
    if (const auto known = m_pictures.find(key); known != m_pictures.end())
        return known->second;
    const auto photo = std::ranges::find(m_photos, id, &Photo::id);
    if (photo == m_photos.end() || m_failed.contains(id) || !m_waiting.insert(key).second)
        return {};
    // The database is only spoken to here; the thread gets bytes and a path.
    QByteArray thumbnail;
    m_book.attempt([&] { thumbnail = m_book.store().photos().thumbnail(id); });
    const QString path = m_book.store().photos().path(*photo);
    m_pool.start([this, id, edge, thumbnail, path, round = m_round] {
        const QImage image = pictureOf(thumbnail, path, edge);
        QMetaObject::invokeMethod(
            this, [this, id, edge, image, round] { take(id, edge, image, round); }, Qt::QueuedConnection);
    });
    return {};
}

void PhotoLoader::take(const PhotoId& id, int edge, const QImage& image, int round)
{
    if (round != m_round)
        return;
    m_waiting.erase(Key(id, edge));
    if (image.isNull())
        m_failed.insert(id);
    else
        m_pictures[Key(id, edge)] = image;
    Q_EMIT loaded(id);
}

} // namespace padside
