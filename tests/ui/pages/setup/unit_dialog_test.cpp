// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"
#include "tests/ui/pages/setup/setup_fixture.h"
#include "ui/pages/setup/fitted_parts_list.h"
#include "ui/pages/setup/unit_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSpinBox>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

class UnitDialogTest : public SetupFixture
{
protected:
    UnitDialogTest() { m_kind = QString::fromStdString(m_catalogue.unitKinds().front().code); }

    UnitDialog* openNew() { return open(UnitDialog::newAt(m_site.id, *m_book)); }
    UnitDialog* open(UnitDialog::Task task)
    {
        return show(std::make_unique<UnitDialog>(*m_book, *m_log, std::move(task)));
    }
    /// Adds a unit through the form.
    Unit added(const QString& tag)
    {
        UnitDialog* dialog = openNew();
        type(u"unit-tag"_s, tag);
        choose(u"unit-kind"_s, m_kind);
        type(u"unit-serial"_s, u"S-1"_s);
        find<FittedPartsList>(u"unit-parts"_s)->item(0)->setCheckState(Qt::Unchecked);
        dialog->accept();
        EXPECT_FALSE(dialog->isVisible());
        return *m_store->sites().unitByTag(tag.toStdString());
    }
    [[nodiscard]] std::size_t usualParts() const { return m_catalogue.unitKinds().front().parts.size(); }

    QString m_kind;
};

TEST_F(UnitDialogTest, TagAndKindAreEnoughAndTheUsualPartsAreFitted)
{
    UnitDialog* dialog = openNew();
    QSignalSpy kept(dialog, &UnitDialog::kept);
    expectEveryFieldIsNamed();
    expectTabReachesEveryControl();
    type(u"unit-tag"_s, u"RT-1"_s);
    choose(u"unit-kind"_s, m_kind);
    dialog->accept();
    ASSERT_EQ(kept.count(), 1);
    ASSERT_EQ(units().size(), 1U);
    EXPECT_EQ(units().at(0).siteId, m_site.id);
    EXPECT_EQ(m_book->record(units().at(0).id).parts.size(), usualParts());
}

TEST_F(UnitDialogTest, PartsItLacksAreUntickedAndNotFitted)
{
    const Unit unit = added(u"RT-1"_s);
    EXPECT_EQ(m_book->record(unit.id).parts.size(), usualParts() - 1);
}

TEST_F(UnitDialogTest, WhatIsMissingIsSaidAndNothingIsLost)
{
    UnitDialog* dialog = openNew();
    type(u"unit-maker"_s, u"Fennick"_s);
    type(u"unit-installed"_s, u"14/6/08"_s);
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    for (const QString& field : {u"unit-tag"_s, u"unit-kind"_s, u"unit-installed"_s})
        EXPECT_FALSE(problem(field).isEmpty()) << field.toStdString();
    EXPECT_EQ(typed(u"unit-maker"_s), u"Fennick"_s);
    EXPECT_EQ(typed(u"unit-installed"_s), u"14/6/08"_s);
    EXPECT_TRUE(units().empty());

    type(u"unit-installed"_s, u"2008"_s);
    EXPECT_TRUE(problem(u"unit-installed"_s).isEmpty()) << "said of what stood there before";
    choose(u"unit-kind"_s, m_kind);
    EXPECT_TRUE(problem(u"unit-kind"_s).isEmpty());
    EXPECT_FALSE(problem(u"unit-tag"_s).isEmpty()) << "not changed yet";
}

TEST_F(UnitDialogTest, SeveralCountUpAndAreOneStep)
{
    UnitDialog* dialog = openNew();
    type(u"unit-tag"_s, u"RT-08"_s);
    choose(u"unit-kind"_s, m_kind);
    find<QSpinBox>(u"unit-count"_s)->setValue(3);
    EXPECT_TRUE(find<QLabel>(u"unit-tags"_s)->text().contains(u"RT-10"_s));
    EXPECT_FALSE(find<QLineEdit>(u"unit-serial"_s)->isEnabled());
    dialog->accept();
    EXPECT_EQ(m_store->sites().tags(), (std::set<std::string>{"RT-08", "RT-09", "RT-10"}));
    m_stack.undo();
    EXPECT_TRUE(units().empty());
}

TEST_F(UnitDialogTest, SeveralOfWhichOneIsTakenAreRefusedBesideTheTag)
{
    added(u"RT-09"_s);
    UnitDialog* dialog = openNew();
    type(u"unit-tag"_s, u"RT-08"_s);
    choose(u"unit-kind"_s, m_kind);
    type(u"unit-installed"_s, u"14/6/08"_s);
    find<QSpinBox>(u"unit-count"_s)->setValue(3);
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(problem(u"unit-tag"_s).contains(u"RT-09"_s));
    EXPECT_FALSE(problem(u"unit-installed"_s).isEmpty()) << "said together";
    EXPECT_EQ(units().size(), 1U);
}

TEST_F(UnitDialogTest, OneLikeAnotherHasItsPartsAndTheNextTagButNotItsSerialNumber)
{
    const Unit pattern = added(u"RT-1"_s);
    UnitDialog* dialog = open(UnitDialog::oneLike({pattern, m_book->record(pattern.id).parts}, *m_book));
    EXPECT_EQ(typed(u"unit-tag"_s), u"RT-2"_s);
    EXPECT_EQ(typed(u"unit-serial"_s), QString());
    dialog->accept();
    const auto copy = m_store->sites().unitByTag("RT-2");
    ASSERT_TRUE(copy.has_value());
    EXPECT_EQ(copy->kind, pattern.kind);
    EXPECT_EQ(m_book->record(copy->id).parts.size(), usualParts() - 1);
}

TEST_F(UnitDialogTest, AUnitIsChangedAndMovedToAnotherSiteInOneStep)
{
    const Unit before = added(u"RT-1"_s);
    Site mill;
    mill.id = m_ids.make<SiteId>();
    mill.name = "Old Mill";
    m_store->sites().addSite(mill);
    UnitDialog* dialog = open(UnitDialog::change(before));
    EXPECT_FALSE(find<QComboBox>(u"unit-kind"_s)->isEnabled());
    auto* site = find<QComboBox>(u"unit-site"_s);
    site->setCurrentIndex(site->findText(u"Old Mill"_s));
    type(u"unit-place"_s, u"north wall"_s);
    dialog->accept();
    Unit after = before;
    after.siteId = mill.id;
    after.place = "north wall";
    EXPECT_EQ(m_store->sites().unitByTag("RT-1"), after);
    m_stack.undo();
    EXPECT_EQ(m_store->sites().unitByTag("RT-1"), before);
}

TEST_F(UnitDialogTest, ANewNameMakesANewSiteInTheSameStep)
{
    UnitDialog* dialog = open(UnitDialog::newAt({}, *m_book));
    EXPECT_FALSE(find<QLineEdit>(u"unit-site-address"_s)->isVisible());
    dialog->accept();
    EXPECT_FALSE(problem(u"unit-site"_s).isEmpty()) << "no site is named";
    EXPECT_FALSE(problem(u"unit-tag"_s).isEmpty()) << "all that is missing is said at once";
    type(u"unit-tag"_s, u"OM-1"_s);
    choose(u"unit-kind"_s, m_kind);

    find<QComboBox>(u"unit-site"_s)->setEditText(u"Old Mill"_s);
    EXPECT_TRUE(find<QLineEdit>(u"unit-site-address"_s)->isVisible());
    type(u"unit-site-address"_s, u"2 Mill Lane"_s);
    dialog->accept();
    ASSERT_EQ(sites().size(), 2U);
    EXPECT_EQ(sites().back().address, "2 Mill Lane");
    EXPECT_EQ(units().at(0).siteId, sites().back().id);
    m_stack.undo();
    EXPECT_EQ(sites().size(), 1U);
    EXPECT_TRUE(units().empty());
}

TEST_F(UnitDialogTest, ASiteThatIsThereIsFoundHoweverItIsCapitalised)
{
    UnitDialog* dialog = open(UnitDialog::newAt({}, *m_book));
    find<QComboBox>(u"unit-site"_s)->setEditText(u" harbour HOUSE"_s);
    EXPECT_FALSE(find<QLineEdit>(u"unit-site-address"_s)->isVisible());
    type(u"unit-tag"_s, u"RT-1"_s);
    choose(u"unit-kind"_s, m_kind);
    dialog->accept();
    EXPECT_EQ(sites().size(), 1U);
    EXPECT_EQ(units().at(0).siteId, m_site.id);
}

TEST_F(UnitDialogTest, TheRefrigerantIsChosenOrTypedAndSaysHowItBurns)
{
    UnitDialog* dialog = openNew();
    auto* refrigerant = find<QComboBox>(u"unit-refrigerant"_s);
    const auto* says = find<QLabel>(u"unit-refrigerant-hint"_s);
    EXPECT_FALSE(says->isVisible());
    refrigerant->setCurrentIndex(refrigerant->findText(u"R-454B"_s));
    EXPECT_TRUE(says->isVisible());
    EXPECT_TRUE(says->text().startsWith(u"R-454B: safety class A2L, mildly flammable;"_s));
    EXPECT_TRUE(says->text().contains(u"no flame or spark"_s));
    EXPECT_EQ(refrigerant->accessibleDescription(), says->text());
    refrigerant->setEditText(u"R-22"_s);
    EXPECT_TRUE(says->text().startsWith(u"R-22: safety class A1,"_s));
    EXPECT_FALSE(says->text().contains(u"no flame or spark"_s));
    refrigerant->setEditText(u"the blue bottle"_s); // as the nameplate says it, whatever that is
    EXPECT_TRUE(says->text().contains(u"not in the catalogue"_s));
    type(u"unit-tag"_s, u"RT-1"_s);
    choose(u"unit-kind"_s, m_kind);
    dialog->accept();
    EXPECT_EQ(units().at(0).refrigerant, "the blue bottle");
}

TEST_F(UnitDialogTest, ARefrigerantInTheRecordIsShownAsItWasWritten)
{
    Unit unit = added(u"RT-1"_s);
    unit.refrigerant = "r410a";
    UnitDialog* dialog = open(UnitDialog::change(unit));
    EXPECT_EQ(find<QComboBox>(u"unit-refrigerant"_s)->currentText(), u"r410a"_s);
    EXPECT_TRUE(find<QLabel>(u"unit-refrigerant-hint"_s)->text().startsWith(u"R-410A: "_s));
    type(u"unit-maker"_s, u"Fennick"_s);
    dialog->accept();
    EXPECT_EQ(units().at(0).refrigerant, "r410a");
}

TEST_F(UnitDialogTest, TakenTagsAreNamedAsTheyAreTyped)
{
    added(u"RT-09"_s);
    openNew();
    type(u"unit-tag"_s, u"RT-08"_s);
    find<QSpinBox>(u"unit-count"_s)->setValue(3);
    const QString says = find<QLabel>(u"unit-tags"_s)->text();
    EXPECT_TRUE(says.contains(u"RT-08, RT-09, RT-10"_s)) << says.toStdString();
    EXPECT_TRUE(says.contains(u"Taken already: RT-09."_s)) << says.toStdString();
}

TEST_F(UnitDialogTest, PartsAreAsOldAsTheUnitOnlyWhereThatIsSaid)
{
    const Unit unknown = added(u"RT-1"_s);
    EXPECT_FALSE(m_book->record(unknown.id).parts.at(0).fittedOn.has_value());
    UnitDialog* dialog = openNew();
    type(u"unit-tag"_s, u"RT-2"_s);
    choose(u"unit-kind"_s, m_kind);
    type(u"unit-installed"_s, u"2008"_s);
    find<QCheckBox>(u"unit-parts-as-old"_s)->setChecked(true);
    dialog->accept();
    const auto unit = m_store->sites().unitByTag("RT-2");
    ASSERT_TRUE(unit.has_value());
    EXPECT_EQ(m_book->record(unit->id).parts.at(0).fittedOn, parseDate("2008-01-01"));
}

} // namespace padside::test
