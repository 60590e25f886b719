// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"
#include "tests/ui/pages/setup/setup_fixture.h"
#include "ui/models/unit_plan_model.h"
#include "ui/pages/setup/import_dialog.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

/// Two rows that can be added and two that can't, on lines 3 and 5.
const QByteArray mixedList = "site,tag,kind\n"
                             "Harbour House,RT-1,heat-pump\n"
                             "Harbour House,RT-2,windmill\n"
                             "Net Loft,RT-3,heat-pump\n"
                             "Net Loft,RT-1,heat-pump\n";

} // namespace

class ImportDialogTest : public SetupFixture
{
protected:
    void SetUp() override { m_import = show(std::make_unique<ImportDialog>(*m_book, *m_log)); }

    [[nodiscard]] QString list(const QByteArray& text) const
    {
        QFile file(m_folder.filePath(u"units.csv"_s));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }
    /// The list is read beside the window: it is through when another one may be chosen.
    void settle() const
    {
        ASSERT_TRUE(QTest::qWaitFor([this] { return find<QPushButton>(u"import-choose"_s)->isEnabled(); }, 20000));
    }
    void read(const QByteArray& text) const
    {
        m_import->read(list(text));
        settle();
    }
    /// Whether the files were taken.
    bool drop(const QList<QUrl>& files) const
    {
        QMimeData data;
        data.setUrls(files);
        QDragEnterEvent enter({20, 20}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        enter.ignore(); // as a desktop sends it
        QApplication::sendEvent(m_import, &enter);
        if (!enter.isAccepted())
            return false;
        QDropEvent event({20, 20}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(m_import, &event);
        return true;
    }
    [[nodiscard]] int rowCount() const { return find<QTableView>(u"import-table"_s)->model()->rowCount(); }
    [[nodiscard]] QString cell(int row, int column) const
    {
        return find<QTableView>(u"import-table"_s)->model()->index(row, column).data().toString();
    }
    [[nodiscard]] QString counts() const { return find<QLabel>(u"import-counts"_s)->text(); }
    [[nodiscard]] QPushButton* add() const { return find<QPushButton>(u"import-add"_s); }

    ImportDialog* m_import = nullptr;
};

TEST_F(ImportDialogTest, WithoutAListItSaysWhatAListNeeds)
{
    EXPECT_TRUE(find<QLabel>(u"import-file"_s)->text().contains(u"a tag and a kind are needed"_s));
    EXPECT_FALSE(add()->isEnabled());
    EXPECT_EQ(rowCount(), 0);
    expectEveryFieldIsNamed();
    EXPECT_FALSE(find<QTableView>(u"import-table"_s)->accessibleName().isEmpty());
}

TEST_F(ImportDialogTest, EachRowThatIsSkippedIsShownWithItsLineAndWhy)
{
    read(mixedList);
    ASSERT_EQ(rowCount(), 4);
    EXPECT_EQ(cell(0, UnitPlanModel::outcome), u"New unit"_s);
    EXPECT_EQ(cell(2, UnitPlanModel::outcome), u"New unit, new site"_s);
    EXPECT_EQ(find<QLabel>(u"import-row"_s)->text(), cell(1, UnitPlanModel::outcome)) << "whole, however wide the cell";
    find<QCheckBox>(u"import-only-bad"_s)->click();
    ASSERT_EQ(rowCount(), 2);
    EXPECT_EQ(cell(0, UnitPlanModel::row), u"3"_s);
    EXPECT_TRUE(cell(0, UnitPlanModel::outcome).contains(u"windmill"_s));
    EXPECT_EQ(cell(1, UnitPlanModel::row), u"5"_s);
    EXPECT_TRUE(cell(1, UnitPlanModel::outcome).contains(u"RT-1"_s));
    EXPECT_TRUE(counts().startsWith(u"2 units will be added"_s)) << counts().toStdString();
    EXPECT_TRUE(counts().endsWith(u"2 rows are skipped."_s)) << counts().toStdString();
    EXPECT_TRUE(units().empty()) << "nothing is written before one says so";
    expectTabReachesEveryControl();
}

TEST_F(ImportDialogTest, TheGoodRowsAreAddedInOneStepThatCanBeTakenBack)
{
    read(mixedList);
    QSignalSpy added(m_import, &ImportDialog::added);
    add()->click();
    ASSERT_EQ(added.count(), 1);
    EXPECT_EQ(added[0][0].toInt(), 2);
    EXPECT_FALSE(m_import->isVisible());
    EXPECT_EQ(units().size(), 2U);
    EXPECT_EQ(sites().size(), 2U);
    m_stack.undo();
    EXPECT_TRUE(units().empty());
    EXPECT_EQ(sites().size(), 1U);
}

TEST_F(ImportDialogTest, ColumnsThatAreNotRecognisedAreChosenByHand)
{
    read("where,which,kind\nHarbour House,RT-1,heat-pump\n");
    EXPECT_FALSE(add()->isEnabled());
    EXPECT_TRUE(counts().startsWith(u"There is no row that can be added."_s)) << counts().toStdString();
    auto* tag = find<QComboBox>(u"column-tag"_s);
    ASSERT_EQ(tag->currentIndex(), 0);
    tag->setFocus();
    QTest::keyClicks(tag, u"which"_s);
    settle();
    EXPECT_EQ(tag->currentText(), u"which"_s);
    find<QComboBox>(u"import-site"_s)->setEditText(u"Harbour House"_s);
    settle();
    EXPECT_TRUE(add()->isEnabled()) << cell(0, UnitPlanModel::outcome).toStdString();
}

TEST_F(ImportDialogTest, AFileMayBeDropped)
{
    EXPECT_TRUE(drop({QUrl::fromLocalFile(list(mixedList))}));
    settle();
    EXPECT_EQ(rowCount(), 4);
    EXPECT_EQ(find<QLabel>(u"import-file"_s)->text(), u"units.csv"_s);
}

TEST_F(ImportDialogTest, SeveralFilesAtOnceAreNotTaken)
{
    const QUrl file = QUrl::fromLocalFile(list(mixedList));
    EXPECT_FALSE(drop({file, file}));
    EXPECT_EQ(rowCount(), 0);
}

TEST_F(ImportDialogTest, AFileThatCannotBeReadIsSaidAndAnotherMayBeChosen)
{
    m_import->read(m_folder.filePath(u"nowhere.csv"_s));
    settle();
    EXPECT_TRUE(find<QLabel>(u"import-said"_s)->isVisible());
    EXPECT_TRUE(find<QLabel>(u"import-said"_s)->text().contains(u"nowhere.csv"_s));
    EXPECT_FALSE(add()->isEnabled());
    read(mixedList);
    EXPECT_FALSE(find<QLabel>(u"import-said"_s)->isVisible());
    EXPECT_TRUE(add()->isEnabled());
}

} // namespace padside::test
