// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/acknowledge.h"
#include "tests/ui/pages/unit/unit_page_fixture.h"
#include "ui/models/acknowledge_command.h"
#include "ui/pages/unit/acknowledge_dialog.h"
#include "ui/pages/unit/next_model.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>
#include <QUndoStack>

namespace padside::test {

namespace {

class AcknowledgeFlag : public UnitPageTest
{
protected:
    AcknowledgeFlag()
    {
        // As the window does.
        QObject::connect(m_page.get(), &UnitPage::acknowledged, m_page.get(), [this](const Acknowledgement& one) {
            m_undo.push(new AcknowledgeCommand(*m_book, AcknowledgeCommand::Way::acknowledge, one));
        });
        QObject::connect(m_page.get(), &UnitPage::acknowledgementTakenBack, m_page.get(),
                         [this](const Acknowledgement& one) {
                             m_undo.push(new AcknowledgeCommand(*m_book, AcknowledgeCommand::Way::takeBack, one));
                         });
        const UnitRecord record = worseningUnit().build();
        m_unit = record.unit.id;
        write(record);
        show(m_unit);
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
    }

    [[nodiscard]] QListView& list() const { return *find<QListView>("nextList"); }
    [[nodiscard]] QPushButton& button() const { return *find<QPushButton>("acknowledge"); }

    [[nodiscard]] std::vector<QModelIndex> rows(NextModel::Kind kind) const
    {
        std::vector<QModelIndex> all;
        for (int row = 0; row < list().model()->rowCount(); ++row) {
            const QModelIndex index = list().model()->index(row, 0);
            if (index.data(NextModel::kindRole).toInt() == static_cast<int>(kind))
                all.push_back(index);
        }
        return all;
    }

    void choose(const QModelIndex& index) const
    {
        list().setFocus();
        list().setCurrentIndex(index);
    }

    /// Answers the question for a reason.
    void giveReason(const QString& reason) const
    {
        auto* dialog = m_page->window()->findChild<AcknowledgeDialog*>();
        ASSERT_NE(dialog, nullptr);
        auto* keep = dialog->findChild<QPushButton*>(QStringLiteral("acknowledge-keep"));
        EXPECT_FALSE(keep->isEnabled()) << "not without a reason";
        auto* box = dialog->findChild<QComboBox*>(QStringLiteral("acknowledge-reason"));
        QTest::keyClicks(box->lineEdit(), reason);
        ASSERT_TRUE(keep->isEnabled());
        QTest::keyClick(box->lineEdit(), Qt::Key_Return);
    }

    [[nodiscard]] std::vector<Flag> flags() const { return m_book->review(m_book->record(m_unit)).flags; }

    UnitId m_unit;
    QUndoStack m_undo;
};

} // namespace

TEST_F(AcknowledgeFlag, ByKeysWithAReasonAndItIsFoldedAwayAndNotCounted)
{
    const auto before = rows(NextModel::Kind::flag).size();
    ASSERT_GT(before, 1U);
    const Flag first = flags().front();
    choose(rows(NextModel::Kind::flag).front());
    EXPECT_TRUE(button().isEnabled());
    QTest::keyClick(&list(), Qt::Key_A);
    giveReason(QStringLiteral("the spare is ordered"));

    EXPECT_EQ(standingFlags(flags()), before - 1);
    EXPECT_EQ(list().currentIndex(), rows(NextModel::Kind::flag).front()) << "the next flag is in front";
    const Flag acknowledged = flags().back();
    EXPECT_EQ(acknowledged.sentence, first.sentence);
    ASSERT_TRUE(acknowledged.acknowledged);
    EXPECT_EQ(acknowledged.acknowledged->reason, "the spare is ordered");
    EXPECT_EQ(rows(NextModel::Kind::flag).size(), before - 1);
    const auto folds = rows(NextModel::Kind::fold);
    ASSERT_EQ(folds.size(), 1U);
    EXPECT_TRUE(folds[0].data().toString().contains(QStringLiteral("Acknowledged, not counted: 1")));

    choose(folds[0]);
    Q_EMIT list().activated(folds[0]);
    ASSERT_EQ(rows(NextModel::Kind::flag).size(), before);
    EXPECT_TRUE(rows(NextModel::Kind::flag)
                    .back()
                    .data(NextModel::reasonRole)
                    .toString()
                    .contains(QStringLiteral("the spare is ordered")));
}

TEST_F(AcknowledgeFlag, IsUndoneAndRedone)
{
    const auto before = standingFlags(flags());
    choose(rows(NextModel::Kind::flag).front());
    button().click();
    giveReason(QStringLiteral("watched"));
    ASSERT_EQ(standingFlags(flags()), before - 1);
    m_undo.undo();
    EXPECT_EQ(standingFlags(flags()), before);
    m_undo.redo();
    EXPECT_EQ(standingFlags(flags()), before - 1);
    m_undo.undo();
    EXPECT_EQ(m_book->record(m_unit).acknowledgements.size(), 2U) << "nothing is removed from the file";
}

TEST_F(AcknowledgeFlag, IsTakenBackFromTheUnfoldedList)
{
    const auto before = standingFlags(flags());
    choose(rows(NextModel::Kind::flag).front());
    button().click();
    giveReason(QStringLiteral("watched"));
    ASSERT_EQ(rows(NextModel::Kind::fold).size(), 1U);
    Q_EMIT list().activated(rows(NextModel::Kind::fold).front());
    choose(rows(NextModel::Kind::flag).back());
    EXPECT_EQ(button().text(), QStringLiteral("Ta&ke back"));
    QTest::keyClick(&list(), Qt::Key_A);
    EXPECT_EQ(standingFlags(flags()), before);
    m_undo.undo();
    EXPECT_EQ(standingFlags(flags()), before - 1);
}

TEST_F(AcknowledgeFlag, GivenUpItStands)
{
    const auto before = standingFlags(flags());
    choose(rows(NextModel::Kind::flag).front());
    button().click();
    auto* dialog = m_page->window()->findChild<AcknowledgeDialog*>();
    ASSERT_NE(dialog, nullptr);
    QTest::keyClick(dialog, Qt::Key_Escape);
    EXPECT_EQ(standingFlags(flags()), before);
    EXPECT_TRUE(m_book->record(m_unit).acknowledgements.empty());
}

TEST_F(AcknowledgeFlag, ThereIsNothingToAcknowledgeOnOtherRows)
{
    choose(rows(NextModel::Kind::check).front());
    EXPECT_FALSE(button().isEnabled());
    QTest::keyClick(&list(), Qt::Key_A);
    EXPECT_EQ(m_page->window()->findChild<AcknowledgeDialog*>(), nullptr);
}

} // namespace padside::test
