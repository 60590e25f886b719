// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/record_file_drop.h"

#include <QApplication>
#include <QDropEvent>
#include <QMimeData>
#include <QSignalSpy>
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

class RecordFileDropTest : public WindowFixture
{
protected:
    MainWindow m_window{*m_book, Theme::light()};
    RecordFileDrop m_drop{m_window};
    QSignalSpy m_dropped{&m_drop, &RecordFileDrop::dropped};
};

TEST_F(RecordFileDropTest, ARecordFileDroppedOnTheWindowIsTaken)
{
    m_window.show();
    EXPECT_TRUE(dragAndDrop(m_window, *dragOf({harbour})));
    ASSERT_EQ(m_dropped.count(), 1);
    EXPECT_EQ(m_dropped[0][0].toString(), QStringLiteral("/records/harbour town.padside"));
}

TEST_F(RecordFileDropTest, ItMayFallOnAPageToo)
{
    m_window.show();
    auto* page = m_window.findChild<UnitPage*>();
    page->setAcceptDrops(true); // as a page that takes photographs does
    EXPECT_TRUE(dragAndDrop(*page, *dragOf({harbour})));
}

TEST_F(RecordFileDropTest, OtherFilesSeveralAtOnceAndWebAddressesAreNotTaken)
{
    EXPECT_FALSE(dragAndDrop(m_window, *dragOf({QUrl::fromLocalFile(QStringLiteral("/records/letter.txt"))})));
    EXPECT_FALSE(dragAndDrop(m_window, *dragOf({harbour, harbour})));
    EXPECT_FALSE(dragAndDrop(m_window, *dragOf({QUrl(QStringLiteral("https://example.org/a.padside"))})));
    EXPECT_FALSE(dragAndDrop(m_window, *dragOf({})));
    EXPECT_EQ(m_dropped.count(), 0);
}

} // namespace padside::test
