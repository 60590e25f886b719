// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/photo_files.h"
#include "tests/ui/pages/unit/unit_page_fixture.h"
#include "ui/drawing/timeline_view.h"
#include "ui/models/photo_loader.h"
#include "ui/pages/unit/finding_tree_model.h"
#include "ui/pages/unit/photo_viewer.h"

#include <QBuffer>
#include <QElapsedTimer>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QTreeView>

namespace padside::test {

namespace {

/// A page whose accumulator bottom was photographed at each of its three visits.
class HistoryPanelTest : public UnitPageTest
{
protected:
    HistoryPanelTest()
        : m_record(worseningUnit().build())
        , m_bottom(m_record.parts[0].zones[2].id)
    {
        for (const Visit& visit : m_record.visits)
            m_record.photos.push_back(taken(visit, static_cast<int>(m_record.photos.size())));
        write(m_record);
        show(m_record.unit.id);
    }

    Photo taken(const Visit& visit, int number)
    {
        QImage image(1200, 800, QImage::Format_RGB32);
        image.fill(QColor::fromHsv(number * 90, 200, 200));
        QByteArray png;
        QBuffer buffer(&png);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, "PNG");
        Photo photo;
        photo.id = m_ids.make<PhotoId>();
        photo.unitId = m_record.unit.id;
        photo.visitId = visit.id;
        photo.on = visit.on;
        photo.enteredAt = visit.openedAt;
        photo.zoneId = m_bottom;
        photo.mediaType = "image/png";
        photo.originalName = "bottom.png";
        photo.width = image.width();
        photo.height = image.height();
        const auto kept = m_store->photos().keep(png, photo.mediaType);
        photo.sha256 = kept.sha256;
        photo.bytes = kept.bytes;
        return photo;
    }

    void chooseInTree(ZoneId zone)
    {
        auto* tree = find<QTreeView>("findingTree");
        tree->setCurrentIndex(dynamic_cast<const FindingTreeModel*>(tree->model())->indexOf(zone));
    }

    UnitRecord m_record;
    ZoneId m_bottom;
};

} // namespace

TEST_F(HistoryPanelTest, AZoneChosenInTheFindingsShowsItsPhotographsByDate)
{
    auto* list = find<QListView>("photoYears");
    EXPECT_FALSE(list->isVisible());
    chooseInTree(m_bottom);
    ASSERT_TRUE(list->isVisible());
    ASSERT_EQ(list->model()->rowCount(), 3);
    const auto said = [list](int row) { return list->model()->index(row, 0).data(Qt::AccessibleTextRole).toString(); };
    EXPECT_TRUE(said(0).contains(QStringLiteral("2 worn"))) << said(0).toStdString();
    EXPECT_TRUE(said(1).contains(QStringLiteral("3 marked")));
    EXPECT_TRUE(said(2).contains(QStringLiteral("4 poor")));
    EXPECT_EQ(list->currentIndex().row(), 2) << "the latest is in front";
    EXPECT_FALSE(list->accessibleName().isEmpty());
}

TEST_F(HistoryPanelTest, EnterOnALanesNameShowsThemToo)
{
    auto* timeline = find<TimelineView>("timeline");
    timeline->selectZone(m_bottom);
    timeline->setFocus();
    QTest::keyClick(timeline, Qt::Key_Home);
    QTest::keyClick(timeline, Qt::Key_Left);
    ASSERT_EQ(timeline->selected()->mark, laneName);
    QTest::keyClick(timeline, Qt::Key_Return);
    EXPECT_TRUE(find<QListView>("photoYears")->isVisible());
}

TEST_F(HistoryPanelTest, OnceClosedTheyStayClosedUntilAskedFor)
{
    chooseInTree(m_bottom);
    QTest::keyClick(find<QListView>("photoYears"), Qt::Key_Escape);
    EXPECT_FALSE(find<QListView>("photoYears")->isVisible());
    chooseInTree(m_record.parts[0].zones[0].id);
    chooseInTree(m_bottom);
    EXPECT_FALSE(find<QListView>("photoYears")->isVisible());
    Q_EMIT find<TimelineView>("timeline")->zoneChosen(m_bottom);
    EXPECT_TRUE(find<QListView>("photoYears")->isVisible());
}

TEST_F(HistoryPanelTest, EnterEnlargesOneAndArrowsStep)
{
    chooseInTree(m_bottom);
    auto* list = find<QListView>("photoYears");
    QTest::keyClick(list, Qt::Key_Return);
    auto* viewer = find<PhotoViewer>("photoViewer");
    ASSERT_TRUE(viewer->isVisible());
    EXPECT_EQ(viewer->current(), 2);
    QTest::keyClick(viewer, Qt::Key_Left);
    EXPECT_EQ(viewer->current(), 1);
    EXPECT_EQ(list->currentIndex().row(), 1) << "the strip goes along";
    EXPECT_TRUE(viewer->accessibleDescription().contains(QStringLiteral("3 marked")));
    QTest::keyClick(viewer, Qt::Key_Home);
    QTest::keyClick(viewer, Qt::Key_Left);
    EXPECT_EQ(viewer->current(), 0);
    QTest::keyClick(viewer, Qt::Key_End);
    QTest::keyClick(viewer, Qt::Key_Right);
    EXPECT_EQ(viewer->current(), 2);
    QTest::keyClick(viewer, Qt::Key_Escape);
    EXPECT_FALSE(viewer->isVisible());
}

TEST_F(HistoryPanelTest, AClickEnlarges)
{
    chooseInTree(m_bottom);
    auto* list = find<QListView>("photoYears");
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(list->model()->index(0, 0)).center());
    EXPECT_TRUE(find<PhotoViewer>("photoViewer")->isVisible());
    EXPECT_EQ(find<PhotoViewer>("photoViewer")->current(), 0);
}

TEST_F(HistoryPanelTest, PicturesAreDecodedBesideTheWindowAndArrive)
{
    PhotoLoader loader(*m_book);
    loader.setPhotos(m_record.photos);
    QSignalSpy loaded(&loader, &PhotoLoader::loaded);
    const PhotoId photo = m_record.photos[1].id;
    EXPECT_TRUE(loader.picture(photo, 120).isNull()) << "not yet";
    ASSERT_TRUE(QTest::qWaitFor([&] { return loaded.count() > 0; }));
    const QImage picture = loader.picture(photo, 120);
    EXPECT_EQ(picture.size(), QSize(120, 80)) << "1200 x 800, no larger than asked for";
    EXPECT_FALSE(loader.failed(photo));
}

TEST_F(HistoryPanelTest, AMissingFileIsKnownAsSuchAndNotAskedForAgain)
{
    ASSERT_TRUE(QFile::remove(m_store->photos().path(m_record.photos[0])));
    PhotoLoader loader(*m_book);
    loader.setPhotos(m_record.photos);
    QSignalSpy loaded(&loader, &PhotoLoader::loaded);
    EXPECT_TRUE(loader.picture(m_record.photos[0].id, 100).isNull());
    ASSERT_TRUE(QTest::qWaitFor([&] { return loaded.count() > 0; }));
    EXPECT_TRUE(loader.failed(m_record.photos[0].id));
    EXPECT_TRUE(loader.picture(m_record.photos[0].id, 100).isNull());
    QTest::qWait(50);
    EXPECT_EQ(loaded.count(), 1);
}

TEST_F(HistoryPanelTest, ThePrintButtonAsksForTheUnitsPaper)
{
    QSignalSpy asked(m_page.get(), &UnitPage::historyPaperRequested);
    QTest::keyClick(find<QPushButton>("printTimeline"), Qt::Key_Space);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.at(0).at(0).value<UnitId>(), m_record.unit.id);
}

TEST_F(HistoryPanelTest, TheLineUnderTheTimelineSaysWhyAFlagWasRaised)
{
    find<TimelineView>("timeline")->selectZone(m_bottom);
    const QString said = find<QLabel>("markSentence")->text();
    EXPECT_TRUE(said.contains(QStringLiteral("4 poor, was 3 marked on"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("“bottom was wet”")));
    EXPECT_TRUE(said.contains(QStringLiteral("Flag: ")));
}

TEST_F(HistoryPanelTest, TheTimelineRunsOnIntoWhatMayComeWhereItIsLookedAt)
{
    const auto* timeline = find<TimelineView>("timeline");
    EXPECT_TRUE(QTest::qWaitFor([&] { return timeline->timeline().until.has_value(); }, 5'000));
    EXPECT_GT(*timeline->timeline().until, timeline->timeline().today);
    EXPECT_FALSE(timeline->geometryNow().outlooks.empty());
}

} // namespace padside::test
