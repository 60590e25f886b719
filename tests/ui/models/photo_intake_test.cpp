// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/photo_intake.h"

#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QMimeData>
#include <QTemporaryDir>
#include <QUrl>

#include <gtest/gtest.h>

namespace padside {

namespace {

QByteArray encoded(const QSize& size, const char* format)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(QColor(120, 70, 30));
    QByteArray content;
    QBuffer buffer(&content);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format);
    return content;
}

/// A JPEG with an EXIF block that says "turned by 90 degrees" (Exif 2.3, tag 0x0112, value 6).
QByteArray turnedJpeg()
{
    QByteArray content = encoded(QSize(400, 200), "JPEG");
    const QByteArray exif
        = QByteArray::fromHex("ffe100224578696600004d4d002a00000008000101120003000000010006000000000000");
    return content.insert(2, exif);
}

std::string refusalOf(const QByteArray& content)
{
    const auto photo = readPhoto(content, QStringLiteral("a.jpg"));
    return photo ? std::string() : say(photo.error().what);
}

} // namespace

TEST(PhotoIntake, KeepsTheBytesAndMakesASmallPicture)
{
    const QByteArray content = encoded(QSize(1000, 500), "PNG");
    const auto photo = readPhoto(content, QStringLiteral("a.png"));
    ASSERT_TRUE(photo.has_value());
    EXPECT_EQ(photo->content, content);
    EXPECT_EQ(photo->mediaType, "image/png");
    EXPECT_EQ(photo->size, QSize(1000, 500));
    EXPECT_EQ(QImage::fromData(photo->thumbnail, "JPEG").size(), QSize(320, 160));
}

TEST(PhotoIntake, GoesByTheContentNotByTheName)
{
    const auto photo = readPhoto(encoded(QSize(10, 10), "PNG"), QStringLiteral("a.jpg"));
    ASSERT_TRUE(photo.has_value());
    EXPECT_EQ(photo->mediaType, "image/png");
}

TEST(PhotoIntake, ASmallPictureIsNotBlownUp)
{
    const auto photo = readPhoto(encoded(QSize(40, 30), "JPEG"), QStringLiteral("a.jpg"));
    ASSERT_TRUE(photo.has_value());
    EXPECT_EQ(QImage::fromData(photo->thumbnail).size(), QSize(40, 30));
}

TEST(PhotoIntake, TurnsThePictureTheWayTheCameraWasHeld)
{
    const auto photo = readPhoto(turnedJpeg(), QStringLiteral("a.jpg"));
    ASSERT_TRUE(photo.has_value());
    EXPECT_EQ(photo->size, QSize(200, 400));
    EXPECT_EQ(QImage::fromData(photo->thumbnail).size(), QSize(160, 320));
}

TEST(PhotoIntake, EachRefusalIsOneSentenceThatNamesTheFile)
{
    for (const QByteArray& bad :
         {QByteArray(), QByteArray("hello"), QByteArray("%PDF-1.4 no picture"), QByteArray(300, '\0')}) {
        const std::string said = refusalOf(bad);
        EXPECT_NE(said.find("a.jpg"), std::string::npos) << said;
        EXPECT_EQ(said.back(), '.');
    }
}

TEST(PhotoIntake, SaysThatHeicIsNotReadYet)
{
    // ISO/IEC 23008-12: a file-type box with the brand "heic".
    const QByteArray heic = QByteArray::fromHex("000000186674797068656963000000006d69663168656963");
    EXPECT_NE(refusalOf(heic).find("HEIC"), std::string::npos);
}

TEST(PhotoIntake, ADamagedPhotoIsRefusedWhole)
{
    QByteArray content = encoded(QSize(600, 600), "PNG");
    content.truncate(60);
    EXPECT_NE(refusalOf(content).find("a.jpg"), std::string::npos);
}

TEST(PhotoIntake, AMissingFileSaysSo)
{
    const auto photo = readPhotoFile(QStringLiteral("/nowhere/gone.jpg"));
    ASSERT_FALSE(photo.has_value());
    EXPECT_EQ(photo.error().kind, ProblemKind::cannotRead);
    EXPECT_NE(say(photo.error().what).find("gone.jpg"), std::string::npos);
}

TEST(PhotoIntake, DroppedFilesComeOneByOneWithTheirOwnAnswers)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("good.png")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(encoded(QSize(8, 8), "PNG"));
    file.close();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file.fileName()),
                  QUrl::fromLocalFile(folder.filePath(QStringLiteral("none.png"))),
                  QUrl(QStringLiteral("https://example.org/far.png"))});
    ASSERT_TRUE(holdsPhotos(data));
    const auto photos = readPhotos(data);
    ASSERT_EQ(photos.size(), 3U);
    EXPECT_TRUE(photos[0].has_value());
    EXPECT_FALSE(photos[1].has_value());
    EXPECT_FALSE(photos[2].has_value());
}

TEST(PhotoIntake, APictureWithoutAFileBecomesPngWithoutLoss)
{
    QImage image(5, 4, QImage::Format_RGB32);
    image.fill(QColor(1, 2, 3));
    QMimeData data;
    data.setImageData(image);
    const auto photos = readPhotos(data);
    ASSERT_EQ(photos.size(), 1U);
    ASSERT_TRUE(photos[0].has_value());
    EXPECT_EQ(QImage::fromData(photos[0]->content).pixelColor(2, 2), QColor(1, 2, 3));
}

} // namespace padside
