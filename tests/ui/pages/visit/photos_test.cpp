// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/photo_files.h"
#include "tests/ui/pages/visit/visit_fixture.h"
#include "ui/pages/visit/photo_place_dialog.h"
#include "ui/pages/visit/photo_strip.h"

#include <QBuffer>
#include <QClipboard>
#include <QComboBox>
#include <QDropEvent>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QLineEdit>
#include <QMimeData>
#include <QTest>
#include <QUrl>

namespace padside::test {

namespace {

QByteArray jpeg()
{
    QImage image(640, 480, QImage::Format_RGB32);
    image.fill(QColor(150, 90, 40));
    QByteArray content;
    QBuffer buffer(&content);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG");
    return content;
}

QString writeFile(const QTemporaryDir& folder, const QString& name, const QByteArray& content)
{
    QFile file(folder.filePath(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(content);
    return file.fileName();
}

void drop(QWidget& target, const QMimeData& data)
{
    // Qt sends a drop only to what the drag has entered.
    QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&target, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent event(QPointF(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&target, &event);
}

} // namespace

TEST_F(VisitPageTest, ADroppedPhotoIsKeptByteForByte)
{
    open();
    start();
    goTo("bottom");
    const QByteArray content = jpeg();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(writeFile(m_folder, QStringLiteral("bottom.jpg"), content))});
    drop(*m_page, data);
    ASSERT_EQ(record().photos.size(), 1U);
    const Photo photo = record().photos.front();
    EXPECT_EQ(photo.zoneId, zoneId("bottom"));
    EXPECT_EQ(photo.mediaType, "image/jpeg");
    EXPECT_EQ(photo.originalName, "bottom.jpg");
    EXPECT_EQ(photo.width, 640);
    EXPECT_EQ(photo.height, 480);
    QFile kept(m_store->photos().path(photo));
    ASSERT_TRUE(kept.open(QIODevice::ReadOnly));
    EXPECT_EQ(kept.readAll(), content);
    const QImage small = QImage::fromData(m_store->photos().thumbnail(photo.id));
    EXPECT_EQ(small.size(), QSize(320, 240));
    EXPECT_EQ(find<PhotoStrip>("photoStrip")->count(), 1);
}

TEST_F(VisitPageTest, APastedPictureBecomesAPhoto)
{
    open();
    start();
    goTo("crown");
    QImage image(20, 10, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QGuiApplication::clipboard()->setImage(image);
    find("zonePanel")->setFocus();
    key(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(record().photos.size(), 1U);
    EXPECT_EQ(record().photos.front().mediaType, "image/png");
    EXPECT_EQ(record().photos.front().zoneId, zoneId("crown"));
}

TEST_F(VisitPageTest, ChosenFilesBecomePhotosAndEachBadOneSaysWhy)
{
    open();
    start();
    const QString good = writeFile(m_folder, QStringLiteral("good.jpg"), jpeg());
    const QString bad = writeFile(m_folder, QStringLiteral("notes.jpg"), "no picture at all");
    find<PhotoStrip>("photoStrip")->setChooser([&](QWidget*) { return QStringList{good, bad}; });
    key(Qt::Key_P);
    EXPECT_EQ(record().photos.size(), 1U);
    EXPECT_TRUE(message().contains(QStringLiteral("notes.jpg"))) << message().toStdString();
}

TEST_F(VisitPageTest, NothingOnTheClipboardIsSaidInOneSentence)
{
    open();
    start();
    QGuiApplication::clipboard()->clear();
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(message().contains(QStringLiteral("clipboard")));
}

TEST_F(VisitPageTest, ATakenBackPhotoKeepsItsFile)
{
    open();
    start();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(writeFile(m_folder, QStringLiteral("a.jpg"), jpeg()))});
    drop(*m_page, data);
    ASSERT_EQ(record().photos.size(), 1U);
    const QString path = m_store->photos().path(record().photos.front());
    auto* strip = find<PhotoStrip>("photoStrip");
    strip->setCurrentRow(0);
    QTest::keyClick(strip, Qt::Key_Delete);
    EXPECT_TRUE(record().photos.empty());
    EXPECT_TRUE(QFile::exists(path));
}

TEST_F(VisitPageTest, APhotoOfTheWrongZoneIsMovedAndTheMoveTakenBack)
{
    open();
    start();
    goTo("bottom");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(writeFile(m_folder, QStringLiteral("a.jpg"), jpeg()))});
    drop(*m_page, data);
    const Photo before = record().photos.at(0);
    auto* strip = find<PhotoStrip>("photoStrip");
    strip->setPlacer([&](QWidget*, const Photo& photo) {
        Photo moved = photo;
        moved.zoneId = zoneId("crown");
        moved.caption = "pits at the seam";
        return std::optional(moved);
    });
    strip->setCurrentRow(0);
    find("zonePanel")->setFocus();
    key(Qt::Key_B);
    ASSERT_EQ(record().photos.size(), 1U);
    const Photo moved = record().photos.front();
    EXPECT_EQ(moved.zoneId, zoneId("crown"));
    EXPECT_EQ(moved.caption, "pits at the seam");
    EXPECT_EQ(moved.sha256, before.sha256);
    EXPECT_FALSE(m_store->photos().thumbnail(moved.id).isEmpty());
    m_page->undo();
    EXPECT_EQ(record().photos.at(0).zoneId, zoneId("bottom"));
    EXPECT_EQ(record().photos.at(0).caption, "");
}

TEST_F(VisitPageTest, TheFormOfAPhotoOffersTheZonesOfItsUnit)
{
    open();
    start();
    goTo("bottom");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(writeFile(m_folder, QStringLiteral("a.jpg"), jpeg()))});
    drop(*m_page, data);
    const Photo before = record().photos.at(0);
    PhotoPlaceDialog form(*m_book, record(), before);
    EXPECT_EQ(form.photo(), before) << "nothing chosen, nothing changed";
    auto* zones = form.findChild<QComboBox*>(QStringLiteral("photoZone"));
    zones->setCurrentIndex(0);
    form.findChild<QComboBox*>(QStringLiteral("photoPhase"))->setCurrentIndex(1);
    form.findChild<QLineEdit*>(QStringLiteral("photoCaption"))->setText(QStringLiteral(" from the gate "));
    EXPECT_EQ(form.photo().zoneId, std::nullopt);
    EXPECT_EQ(form.photo().phase, Phase::asLeft);
    EXPECT_EQ(form.photo().caption, "from the gate");
}

TEST_F(VisitPageTest, AtAClosedVisitAPhotoIsCorrectedWithAReasonAndBothStay)
{
    open();
    start();
    goTo("bottom");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(writeFile(m_folder, QStringLiteral("a.jpg"), jpeg()))});
    drop(*m_page, data);
    const Photo before = record().photos.at(0);
    VisitLog log(*m_book);
    ASSERT_TRUE(log.turnTo(m_visit) && log.close());
    Photo moved = before;
    moved.zoneId = zoneId("crown");
    EXPECT_FALSE(log.put(moved)) << "no reason yet";
    log.correctBecause("wrong zone chosen");
    ASSERT_TRUE(log.put(moved));
    ASSERT_EQ(record().photos.size(), 2U);
    const std::vector<Photo> standing = padside::standing(record().photos);
    ASSERT_EQ(standing.size(), 1U);
    EXPECT_EQ(standing[0].zoneId, zoneId("crown"));
    EXPECT_EQ(standing[0].correction->reason, "wrong zone chosen");
    EXPECT_EQ(m_store->photos().thumbnail(standing[0].id), m_store->photos().thumbnail(before.id));
}

} // namespace padside::test
