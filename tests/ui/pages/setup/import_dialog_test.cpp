// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"
#include "tests/ui/pages/setup/setup_fixture.h"
#include "ui/pages/setup/import_dialog.h"

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
#include <QUrl>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

class ImportDialogTest : public SetupFixture
{
protected:
    ImportDialogTest() { m_import = show(std::make_unique<ImportDialog>(*m_book, *m_log)); }

    [[nodiscard]] QString list(const QByteArray& text) const
    {
        QFile file(m_folder.filePath(u"units.csv"_s));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }
    /// Until the list was read and every row understood.
    void settle() const
    {
        const auto* choose = find<QPushButton>(u"import-choose"_s);
        ASSERT_TRUE(QTest::qWaitFor([choose] { return choose->isEnabled(); }, 20000));
    }
    void read(const QByteArray& text)
    {
        m_import->read(list(text));
        settle();
    }
    [[nodiscard]] QString said(const QString& label) const { return find<QLabel>(label)->text(); }
    [[nodiscard]] int rows() const { return find<QTableView>(u"import-table"_s)->model()->rowCount(); }

    ImportDialog* m_import;
};

TEST_F(ImportDialogTest, ABadRowIsNamedWithItsLineAndASentenceAndTheGoodOnesAreAdded)
{
    QSignalSpy added(m_import, &ImportDialog::added);
    read("site,tag,kind\nHarbour House,RT-1,heat-pump\nHarbour House,RT-1,heat-pump\n");
    EXPECT_EQ(rows(), 2);
    EXPECT_TRUE(said(u"import-row"_s).contains(u"Row 3"_s)) << said(u"import-row"_s).toStdString();
    EXPECT_TRUE(said(u"import-row"_s).contains(u"the tag RT-1 is in row 2 already"_s));
    EXPECT_TRUE(said(u"import-counts"_s).contains(u"One row is skipped."_s));
    EXPECT_TRUE(units().empty()) << "nothing is written before it was looked at";
    find<QCheckBox>(u"import-only-bad"_s)->setChecked(true);
    EXPECT_EQ(rows(), 1);
    find<QPushButton>(u"import-add"_s)->click();
    ASSERT_EQ(added.count(), 1);
    EXPECT_EQ(m_store->sites().tags(), std::set<std::string>{"RT-1"});
    EXPECT_EQ(sites().size(), 1U) << "the site was there already";
    m_stack.undo();
    EXPECT_TRUE(units().empty());
}

TEST_F(ImportDialogTest, AColumnThatWasNotRecognisedIsChosenByHand)
{
    read("site,tag,what it is\nHarbour House,RT-1,heat-pump\n");
    EXPECT_FALSE(find<QPushButton>(u"import-add"_s)->isEnabled());
    auto* kind = find<QComboBox>(u"column-kind"_s);
    kind->setCurrentIndex(kind->findText(u"what it is"_s));
    Q_EMIT kind->activated(kind->currentIndex());
    settle();
    EXPECT_TRUE(find<QPushButton>(u"import-add"_s)->isEnabled());
}

TEST_F(ImportDialogTest, AFileCanBeDropped)
{
    QMimeData dragged;
    dragged.setUrls({QUrl::fromLocalFile(list("site,tag,kind\nHarbour House,RT-1,heat-pump\n"))});
    QDragEnterEvent enter({5, 5}, Qt::CopyAction, &dragged, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(m_import, &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent drop({5, 5}, Qt::CopyAction, &dragged, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(m_import, &drop);
    settle();
    EXPECT_EQ(rows(), 1);
    EXPECT_EQ(said(u"import-file"_s), u"units.csv"_s);
}

TEST_F(ImportDialogTest, AFileThatIsNoListIsSaidAndAnotherMayFollow)
{
    read(QByteArray("\x00\xff\xfe", 3));
    EXPECT_TRUE(find<QLabel>(u"import-said"_s)->isVisible());
    EXPECT_FALSE(said(u"import-said"_s).isEmpty());
    EXPECT_FALSE(find<QPushButton>(u"import-add"_s)->isEnabled());
    read("site,tag,kind\nHarbour House,RT-1,heat-pump\n");
    EXPECT_FALSE(find<QLabel>(u"import-said"_s)->isVisible());
    EXPECT_TRUE(find<QPushButton>(u"import-add"_s)->isEnabled());
}

TEST_F(ImportDialogTest, EveryControlHasAName)
{
    expectEveryFieldIsNamed();
    EXPECT_FALSE(find<QTableView>(u"import-table"_s)->accessibleName().isEmpty());
}

} // namespace padside::test
