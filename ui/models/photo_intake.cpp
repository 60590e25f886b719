// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/photo_intake.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QImageReader>
#include <QMimeData>
#include <QUrl>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int allocationLimitMegabytes = 512; // a 108-megapixel photo needs about 430
constexpr int thumbnailQuality = 85;

tl::unexpected<Problem> refused(const char* pattern, const QString& name)
{
    return problem(ProblemKind::badInput, pattern, {name.toStdString()});
}

/// The brand of an ISO base media file that holds HEIC or HEIF pictures (ISO/IEC 23008-12, "ftyp" box).
bool isHeic(const QByteArray& content)
{
    if (content.size() < 12 || content.mid(4, 4) != "ftyp")
        return false;
    const QByteArray brand = content.mid(8, 4);
    return brand == "heic" || brand == "heix" || brand == "hevc" || brand == "heim" || brand == "heis"
        || brand == "mif1" || brand == "msf1";
}

std::string mediaTypeOf(const QByteArray& format)
{
    if (format == "jpg" || format == "jpeg")
        return "image/jpeg";
    if (format == "tif" || format == "tiff")
        return "image/tiff";
    return "image/" + format.toStdString();
}

bool isPhotoFormat(const QByteArray& format)
{
    return format == "jpeg" || format == "jpg" || format == "png" || format == "webp" || format == "tiff"
        || format == "tif" || format == "gif" || format == "bmp";
}

QSize upright(const QImageReader& reader)
{
    const QSize size = reader.size();
    return reader.transformation().testFlag(QImageIOHandler::TransformationRotate90) ? size.transposed() : size;
}

} // namespace

Result<TakenPhoto> readPhoto(const QByteArray& content, const QString& name)
{
    if (content.isEmpty())
        return refused(PADSIDE_SAY("“{0}” is empty. Choose another photo."), name);
    if (content.size() > largestPhotoBytes)
        return refused(PADSIDE_SAY("“{0}” is larger than 100 MB. Save it smaller and add it again."), name);
    if (isHeic(content))
        return refused(PADSIDE_SAY("“{0}” is a HEIC photo, which can't be read yet. Save it as JPEG and add it again."),
                       name);

    QBuffer buffer;
    buffer.setData(content);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    QImageReader::setAllocationLimit(allocationLimitMegabytes);
    const QByteArray format = reader.format();
    if (!reader.canRead() || !isPhotoFormat(format))
        return refused(PADSIDE_SAY("“{0}” is not a photo that can be read here. Use JPEG, PNG, WebP, TIFF or GIF."),
                       name);

    const QSize size = upright(reader);
    QSize small = reader.size();
    if (small.width() > thumbnailEdge || small.height() > thumbnailEdge)
        small.scale(thumbnailEdge, thumbnailEdge, Qt::KeepAspectRatio);
    reader.setScaledSize(small.expandedTo(QSize(1, 1)));
    const QImage image = reader.read();
    if (image.isNull())
        return refused(PADSIDE_SAY("“{0}” is damaged and can't be shown. Take it from the camera again."), name);

    QByteArray thumbnail;
    QBuffer out(&thumbnail);
    out.open(QIODevice::WriteOnly);
    if (!image.convertToFormat(QImage::Format_RGB32).save(&out, "JPEG", thumbnailQuality))
        return refused(PADSIDE_SAY("No small picture could be made of “{0}”. Add it again."), name);
    return TakenPhoto{content, mediaTypeOf(format), name, size, thumbnail};
}

Result<TakenPhoto> readPhotoFile(const QString& path)
{
    const QString name = QFileInfo(path).fileName();
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return problem(ProblemKind::cannotRead,
                       PADSIDE_SAY("“{0}” can't be opened: {1}. Check that it is still there."),
                       {name.toStdString(), file.errorString().toStdString()});
    if (file.size() > largestPhotoBytes)
        return refused(PADSIDE_SAY("“{0}” is larger than 100 MB. Save it smaller and add it again."), name);
    return readPhoto(file.readAll(), name);
}

bool holdsPhotos(const QMimeData& data)
{
    return data.hasImage() || data.hasUrls();
}

std::vector<Result<TakenPhoto>> readPhotos(const QMimeData& data)
{
    std::vector<Result<TakenPhoto>> photos;
    if (data.hasUrls()) {
        for (const QUrl& url : data.urls()) {
            if (url.isLocalFile())
                photos.push_back(readPhotoFile(url.toLocalFile()));
            else
                photos.emplace_back(
                    refused(PADSIDE_SAY("“{0}” is not a file on this computer. Save it first, then add it."),
                            url.toDisplayString()));
        }
        return photos;
    }
    for (const QString& format : {u"image/jpeg"_s, u"image/png"_s}) {
        if (data.hasFormat(format)) {
            photos.push_back(readPhoto(data.data(format), u"pasted."_s + format.mid(6)));
            return photos;
        }
    }
    const auto image = qvariant_cast<QImage>(data.imageData());
    if (!image.isNull()) {
        QByteArray content;
        QBuffer out(&content);
        out.open(QIODevice::WriteOnly);
        image.save(&out, "PNG");
        photos.push_back(readPhoto(content, u"pasted.png"_s));
    }
    return photos;
}

} // namespace padside
