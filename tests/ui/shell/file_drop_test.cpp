// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/pages/setup/import_dialog.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/shell/file_drop.h"
#include "ui/shell/main_window.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>

namespace padside::test {

namespace {

std::unique_ptr<QMimeData> dragOf(const QList<QUrl>& urls)
{
    auto data = std::make_unique<QMimeData>();
    data->setUrls(urls);
    return data;
}

/// Drags over and, if that is taken, drops onto the middle of `target`; whether it was taken.
bool dragAndDrop(QWidget& target, const QMimeData& data)
{
    QDragEnterEvent enter(target.rect().center(), Qt::MoveAction | Qt::CopyAction, &data, Qt::LeftButton,
                          Qt::NoModifier);
    enter.ignore();
    QApplication::sendEvent(&target, &enter);
    if (!enter.isAccepted())
        return false;
    QDropEvent drop(target.rect().center(), Qt::MoveAction | Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&target, &drop);
    EXPECT_EQ(drop.dropAction(), Qt::CopyAction) << "a move would take the file away from where it lies";
    return true;
}

const QUrl harbour = QUrl::fromLocalFile(QStringLiteral("/records/harbour town.padside"));

} // namespace

class FileDropTest : public WindowFixture
{
protected:
    MainWindow m_window{*m_book, Theme::light()};
    FileDrop m_drop{m_window, QStringLiteral(".padside")};
    QSignalSpy m_dropped{&m_drop, &FileDrop::dropped};
};

TEST_F(FileDropTest, AFileDroppedOnTheWindowIsTaken)
{
    m_window.show();
    EXPECT_TRUE(dragAndDrop(m_window, *dragOf({harbour})));
    ASSERT_EQ(m_dropped.count(), 1);
    EXPECT_EQ(m_dropped[0][0].toString(), QStringLiteral("/records/harbour town.padside"));
}

TEST_F(FileDropTest, ItMayFallOnAPageToo)
{
    m_window.show();
    auto* page = m_window.findChild<UnitPage*>();
    page->setAcceptDrops(true); // as a page that takes photographs does
    EXPECT_TRUE(dragAndDrop(*page, *dragOf({harbour})));
}

TEST_F(FileDropTest, OtherFilesSeveralAtOnceAndWebAddressesAreNotTaken)
{
    EXPECT_FALSE(dragAndDrop(m_window, *dragOf({QUrl::fromLocalFile(QStringLiteral("/records/letter.txt"))})));
    EXPECT_FALSE(dragAndDrop(m_window, *dragOf({harbour, harbour})));
    EXPECT_FALSE(dragAndDrop(m_window, *dragOf({QUrl(QStringLiteral("https://example.org/a.padside"))})));
    EXPECT_FALSE(dragAndDrop(m_window, *dragOf({})));
    EXPECT_EQ(m_dropped.count(), 0);
}

TEST_F(FileDropTest, AListOfUnitsOpensItsPreview)
{
    QTemporaryDir folder;
    QFile list(folder.filePath(QStringLiteral("units.csv")));
    ASSERT_TRUE(list.open(QIODevice::WriteOnly));
    list.write("tag,site,kind\nRT-40,Slipway Hall,heat pump\n");
    list.close();
    m_window.show();
    EXPECT_TRUE(dragAndDrop(m_window, *dragOf({QUrl::fromLocalFile(list.fileName())})));
    EXPECT_EQ(m_dropped.count(), 0) << "not a record file";
    ASSERT_TRUE(QTest::qWaitFor([this] { return m_window.findChild<ImportDialog*>() != nullptr; }));
    auto* dialog = m_window.findChild<ImportDialog*>();
    EXPECT_TRUE(QTest::qWaitFor([dialog] {
        const auto* rows = dialog->findChild<QAbstractItemView*>();
        return rows != nullptr && rows->model() != nullptr && rows->model()->rowCount() == 1;
    }));
}

} // namespace padside::test
