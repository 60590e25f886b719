// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/level_labels.h"
#include "ui/drawing/page_area.h"

#include <QApplication>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

/// A page that does with 300 px but would like 500.
class Page : public QWidget
{
public:
    Page()
        : m_part(new QWidget)
    {
        auto* layout = new QVBoxLayout(this);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(m_part);
        m_part->setMinimumHeight(300);
    }
    [[nodiscard]] QWidget& part() { return *m_part; }
    [[nodiscard]] QSize sizeHint() const override { return {200, 500}; }

private:
    QWidget* m_part;
};

} // namespace

TEST(PageArea, FillsItsRoomAndScrollsOnlyBelowTheLeastHeight)
{
    auto* page = new Page;
    PageArea area(page);
    area.resize(400, 320);
    area.show();
    QApplication::processEvents();
    EXPECT_EQ(page->height(), 320) << "more than the least is filled, without scrolling to what it would like";
    EXPECT_FALSE(area.verticalScrollBar()->isVisible());
    EXPECT_EQ(page->width(), 400);
    area.resize(400, 250);
    QApplication::processEvents();
    EXPECT_EQ(page->height(), 300);
    EXPECT_TRUE(area.verticalScrollBar()->isVisible());
    EXPECT_EQ(page->width(), area.viewport()->width()) << "nothing lies under the scroll bar";
}

TEST(PageArea, MakesRoomWhenAPartGrows)
{
    auto* page = new Page;
    PageArea area(page);
    area.resize(400, 320);
    area.show();
    QApplication::processEvents();
    page->part().setMinimumHeight(450);
    QApplication::processEvents();
    EXPECT_EQ(page->height(), 450);
    EXPECT_LE(area.minimumSizeHint().height(), 320) << "a window may still be made low";
}

TEST(LevelLabels, ALabelStandsAtTheMiddleOfItsFieldWhateverIsBelowThat)
{
    QWidget window;
    auto* form = new QFormLayout(&window);
    auto* high = new QLineEdit;
    high->setMinimumHeight(60);
    auto* highLabel = new QLabel(QStringLiteral("high"));
    form->addRow(highLabel, high);
    auto* cell = new QWidget;
    auto* column = new QVBoxLayout(cell);
    column->setContentsMargins(0, 0, 0, 0);
    auto* withLine = new QLineEdit;
    withLine->setMinimumHeight(50);
    column->addWidget(withLine);
    column->addWidget(new QLabel(QStringLiteral("what is wrong with it")));
    auto* withLineLabel = new QLabel(QStringLiteral("line below"));
    form->addRow(withLineLabel, cell);
    levelLabels(*form);
    window.resize(400, 300);
    window.show();
    QApplication::processEvents();
    const auto middle = [&](const QWidget& widget) { return widget.mapTo(&window, widget.rect().center()).y(); };
    EXPECT_NEAR(middle(*highLabel), middle(*high), 1);
    EXPECT_NEAR(middle(*withLineLabel), middle(*withLine), 1);
    high->setMinimumHeight(90);
    QApplication::processEvents();
    EXPECT_NEAR(middle(*highLabel), middle(*high), 1) << "another size was chosen";
}

} // namespace padside::test
