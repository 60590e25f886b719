// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/own_catalogue.h"
#include "tests/ui/pages/preferences/preferences_fixture.h"
#include "ui/pages/preferences/own_catalogue_model.h"

#include <QCheckBox>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

class OwnCatalogueTest : public PreferencesFixture
{
protected:
    void openOn(const std::string& partKind, const QLocale& locale = QLocale::c())
    {
        open({}, locale);
        show(partKind);
    }
    void show(const std::string& partKind) const
    {
        auto* list = find<QListWidget>(u"catalogue-parts"_s);
        for (int row = 0; row < list->count(); ++row) {
            if (list->item(row)->data(Qt::UserRole).toString().toStdString() == partKind)
                list->setCurrentRow(row);
        }
    }
    [[nodiscard]] QAbstractItemModel& table() const { return *find<QTableView>(u"catalogue-fields"_s)->model(); }
    [[nodiscard]] int rowOf(const QString& what) const
    {
        for (int row = 0; row < table().rowCount(); ++row) {
            if (table().index(row, OwnCatalogueModel::what).data().toString() == what)
                return row;
        }
        ADD_FAILURE() << "no line " << what.toStdString();
        return 0;
    }
    [[nodiscard]] QString cell(const QString& what, OwnCatalogueModel::Column column) const
    {
        return table().index(rowOf(what), column).data().toString();
    }
    void write(const QString& what, const QString& text) const
    {
        EXPECT_TRUE(table().setData(table().index(rowOf(what), OwnCatalogueModel::own), text));
    }
    [[nodiscard]] std::string kept() const { return m_store->ownCatalogue().changes(); }
};

TEST_F(OwnCatalogueTest, AnOwnSentenceIsKeptAsAChangeAndNothingElse)
{
    openOn("pad");
    write(u"Grade 3 marked"_s, u"leans on the hose"_s);
    EXPECT_EQ(cell(u"Grade 3 marked"_s, OwnCatalogueModel::remark), u"differs from ours"_s);
    EXPECT_TRUE(find<QListWidget>(u"catalogue-parts"_s)->currentItem()->text().contains(u"yours"_s));
    m_dialog->accept();
    EXPECT_TRUE(m_catalogueChanged);
    EXPECT_EQ(kept(), R"({"part_kinds":{"pad":{"grades":{"3":"leans on the hose"}}}})");

    openOn("pad");
    EXPECT_EQ(cell(u"Grade 3 marked"_s, OwnCatalogueModel::own), u"leans on the hose"_s);
}

TEST_F(OwnCatalogueTest, OursIsPutBackByEmptyingALineOrByAButton)
{
    m_store->ownCatalogue().setChanges(R"({"part_kinds":{"pad":{"name":"Slab","grades":{"3":"a","4":"b"}}}})");
    openOn("pad");
    write(u"Name"_s, {});
    EXPECT_EQ(cell(u"Name"_s, OwnCatalogueModel::remark), QString());
    auto* view = find<QTableView>(u"catalogue-fields"_s);
    view->setCurrentIndex(table().index(rowOf(u"Grade 3 marked"_s), OwnCatalogueModel::own));
    find<QPushButton>(u"put-back"_s)->click();
    EXPECT_EQ(cell(u"Grade 3 marked"_s, OwnCatalogueModel::own), QString());
    find<QPushButton>(u"put-all-back"_s)->click();
    m_dialog->accept();
    EXPECT_EQ(kept(), "");
}

TEST_F(OwnCatalogueTest, ABadFigureStaysBesideItsSentenceAndIsNotKept)
{
    openOn("run-capacitor");
    write(u"Median life in years"_s, u"-3"_s);
    EXPECT_EQ(cell(u"Median life in years"_s, OwnCatalogueModel::own), u"-3"_s);
    EXPECT_EQ(cell(u"Median life in years"_s, OwnCatalogueModel::remark),
              u"Median life in years: a number above zero is needed here."_s);
    show("pad");
    m_dialog->accept();
    EXPECT_TRUE(m_dialog->isVisible()) << "also while another part is in front";
    EXPECT_TRUE(said().contains(u"above zero"_s)) << said().toStdString();
    EXPECT_EQ(kept(), "");

    show("run-capacitor");
    write(u"Median life in years"_s, u"ten"_s);
    EXPECT_TRUE(cell(u"Median life in years"_s, OwnCatalogueModel::remark).contains(u"ten"_s));
    write(u"Median life in years"_s, u"8"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"part_kinds":{"run-capacitor":{"median_life":{"years":8.0}}}})");
}

TEST_F(OwnCatalogueTest, FiguresAreReadInThePersonsNumberStyle)
{
    openOn("run-capacitor", QLocale(u"es_ES"_s));
    write(u"Median life in years"_s, u"7,5"_s);
    EXPECT_EQ(cell(u"Median life in years"_s, OwnCatalogueModel::own), u"7,5"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"part_kinds":{"run-capacitor":{"median_life":{"years":7.5}}}})");
}

TEST_F(OwnCatalogueTest, CostsOfAPartKindAreThePersonsOwnAndStandBesideNothingOfOurs)
{
    openOn("run-capacitor");
    EXPECT_EQ(cell(u"Cost of a new one"_s, OwnCatalogueModel::ours), u"(nothing)"_s);
    write(u"Cost of a new one"_s, u"-1"_s);
    EXPECT_TRUE(cell(u"Cost of a new one"_s, OwnCatalogueModel::remark).startsWith(u"Cost of a new one: "_s));
    write(u"Cost of a new one"_s, u"24.5"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"costs":{"run-capacitor":{"part":24.5}}})");
}

TEST_F(OwnCatalogueTest, MoneyAndPricesOfAllUnitsHaveALineOfTheirOwn)
{
    openOn("");
    EXPECT_EQ(cell(u"Interest of a year, in %"_s, OwnCatalogueModel::ours), u"5"_s);
    write(u"Price of electricity per kWh"_s, u"0.24"_s);
    EXPECT_EQ(cell(u"Price of electricity per kWh"_s, OwnCatalogueModel::own), u"0.24"_s);
    write(u"Price of R-410A per kg"_s, u"46"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"money":{"energy_price_per_kwh":0.24},"refrigerant_prices":{"r-410a":{"per_kg":46.0}}})");
}

TEST_F(OwnCatalogueTest, EntriesThatNeedOneAnotherAreTakenTogether)
{
    openOn("bonding"); // ours gives it no life of its own
    ASSERT_EQ(m_catalogue.partKind("bonding")->medianLifeYears, std::nullopt);
    write(u"Median life in years"_s, u"9"_s);
    EXPECT_FALSE(cell(u"Median life in years"_s, OwnCatalogueModel::remark).isEmpty()) << "where is it from?";
    write(u"Source of the median life"_s, u"our own ledger"_s);
    EXPECT_EQ(cell(u"Median life in years"_s, OwnCatalogueModel::remark), u"differs from ours"_s);
    m_dialog->accept();
    EXPECT_FALSE(kept().empty());
}

TEST_F(OwnCatalogueTest, WhatASpentPartMeansIsChosenFromAList)
{
    openOn("pad");
    auto* safety = find<QCheckBox>(u"consequence-safety"_s);
    safety->setChecked(!safety->isChecked());
    m_dialog->accept();
    EXPECT_TRUE(kept().find("consequences") != std::string::npos) << kept();
}

TEST_F(OwnCatalogueTest, LeavingItAloneWritesNothing)
{
    const std::string byHand = R"({ "part_kinds": { "pad": { "name": "Slab" } } })";
    m_store->ownCatalogue().setChanges(byHand);
    openOn("pad");
    m_dialog->accept();
    EXPECT_FALSE(m_catalogueChanged);
    EXPECT_EQ(kept(), byHand);
}

} // namespace padside::test
