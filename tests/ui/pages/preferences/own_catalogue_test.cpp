// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/parts_to_order.h"
#include "core/store/own_catalogue.h"
#include "resources/resources.h"
#include "tests/support/record_builder.h"
#include "tests/ui/pages/preferences/preferences_fixture.h"
#include "ui/models/speaker.h"
#include "ui/pages/preferences/own_catalogue_model.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

class OwnCatalogueTest : public PreferencesFixture
{
protected:
    void openOn(const CatalogueSubject& subject, const QLocale& locale = QLocale::c())
    {
        open({}, locale);
        show(subject);
    }
    /// Chooses it in the list by its name: that of the part kind, or of the figures.
    void show(const CatalogueSubject& subject) const
    {
        QString name = u"Money and prices"_s;
        if (const auto* kind = std::get_if<std::string>(&subject))
            name = QString::fromStdString(m_catalogue.partKind(*kind)->name);
        else if (const auto* topic = std::get_if<AssumptionTopic>(&subject))
            name = shown(wordOf(*topic));
        auto* list = find<QListWidget>(u"catalogue-parts"_s);
        for (int row = 0; row < list->count(); ++row) {
            if (list->item(row)->text() == name || list->item(row)->text() == name + u" (yours)"_s) {
                list->setCurrentRow(row);
                return;
            }
        }
        ADD_FAILURE() << "not in the list: " << name.toStdString();
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
    /// A marked accumulator, reviewed with what the file keeps.
    [[nodiscard]] ReviewedUnit reviewed() const
    {
        const Catalogue catalogue = Catalogue::load(shippedCatalogue(), kept()).value();
        const auto record
            = aUnit("HB-01").withPart("suction-accumulator", {"bottom"}).visit("2026-05-04").graded("bottom", 3);
        return reviewedUnit(record.build(), catalogue, OutlookModel(catalogue), day("2026-05-05"));
    }
    [[nodiscard]] Date firstCheck() const { return reviewed().review.checks.at(0).latest; }
    [[nodiscard]] PartToOrder firstOrder() const
    {
        const std::vector units{std::make_shared<const ReviewedUnit>(reviewed())};
        return partsToOrder(units, Catalogue::load(shippedCatalogue(), kept()).value()).at(0);
    }
};

TEST_F(OwnCatalogueTest, AnOwnSentenceIsKeptAsAChangeAndNothingElse)
{
    openOn(std::string("pad"));
    write(u"Grade 3 marked"_s, u"leans on the hose"_s);
    EXPECT_EQ(cell(u"Grade 3 marked"_s, OwnCatalogueModel::remark), u"differs from ours"_s);
    EXPECT_TRUE(find<QListWidget>(u"catalogue-parts"_s)->currentItem()->text().contains(u"yours"_s));
    m_dialog->accept();
    EXPECT_TRUE(m_catalogueChanged);
    EXPECT_EQ(kept(), R"({"part_kinds":{"pad":{"grades":{"3":"leans on the hose"}}}})");

    openOn(std::string("pad"));
    EXPECT_EQ(cell(u"Grade 3 marked"_s, OwnCatalogueModel::own), u"leans on the hose"_s);
}

TEST_F(OwnCatalogueTest, OursIsPutBackByEmptyingALineOrByAButton)
{
    m_store->ownCatalogue().setChanges(R"({"part_kinds":{"pad":{"name":"Slab","grades":{"3":"a","4":"b"}}}})");
    openOn(std::string("pad"));
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
    openOn(std::string("run-capacitor"));
    write(u"Median life in years"_s, u"-3"_s);
    EXPECT_EQ(cell(u"Median life in years"_s, OwnCatalogueModel::own), u"-3"_s);
    EXPECT_EQ(cell(u"Median life in years"_s, OwnCatalogueModel::remark),
              u"Median life in years: a number above zero is needed here."_s);
    show(std::string("pad"));
    m_dialog->accept();
    EXPECT_TRUE(m_dialog->isVisible()) << "also while another part is in front";
    EXPECT_TRUE(said().contains(u"above zero"_s)) << said().toStdString();
    EXPECT_EQ(kept(), "");

    show(std::string("run-capacitor"));
    write(u"Median life in years"_s, u"ten"_s);
    EXPECT_TRUE(cell(u"Median life in years"_s, OwnCatalogueModel::remark).contains(u"ten"_s));
    write(u"Median life in years"_s, u"8"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"part_kinds":{"run-capacitor":{"median_life":{"years":8.0}}}})");
}

TEST_F(OwnCatalogueTest, FiguresAreReadInThePersonsNumberStyle)
{
    openOn(std::string("run-capacitor"), QLocale(u"es_ES"_s));
    write(u"Median life in years"_s, u"7,5"_s);
    EXPECT_EQ(cell(u"Median life in years"_s, OwnCatalogueModel::own), u"7,5"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"part_kinds":{"run-capacitor":{"median_life":{"years":7.5}}}})");
}

TEST_F(OwnCatalogueTest, CostsOfAPartKindAreThePersonsOwnAndStandBesideNothingOfOurs)
{
    openOn(std::string("run-capacitor"));
    EXPECT_EQ(cell(u"Cost of a new one"_s, OwnCatalogueModel::ours), u"(nothing)"_s);
    write(u"Cost of a new one"_s, u"-1"_s);
    EXPECT_TRUE(cell(u"Cost of a new one"_s, OwnCatalogueModel::remark).startsWith(u"Cost of a new one: "_s));
    write(u"Cost of a new one"_s, u"24.5"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"costs":{"run-capacitor":{"part":24.5}}})");
}

TEST_F(OwnCatalogueTest, MoneyAndPricesOfAllUnitsHaveALineOfTheirOwn)
{
    openOn(MoneyFigures{});
    EXPECT_EQ(cell(u"Interest of a year, in %"_s, OwnCatalogueModel::ours), u"5"_s);
    write(u"Price of electricity per kWh"_s, u"0.24"_s);
    EXPECT_EQ(cell(u"Price of electricity per kWh"_s, OwnCatalogueModel::own), u"0.24"_s);
    write(u"Price of R-410A per kg"_s, u"46"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"money":{"energy_price_per_kwh":0.24},"refrigerant_prices":{"r-410a":{"per_kg":46.0}}})");
}

TEST_F(OwnCatalogueTest, ATolerancesChangeIsKeptAsAShareAndAsksToLookSooner)
{
    const QString line = u"Tolerated chance of spent unseen: loss of refrigerant charge, in %"_s;
    openOn(AssumptionTopic::checks);
    EXPECT_EQ(cell(line, OwnCatalogueModel::ours), u"2"_s);
    write(line, u"0.2"_s);
    EXPECT_EQ(cell(line, OwnCatalogueModel::own), u"0.2"_s);
    EXPECT_TRUE(find<QListWidget>(u"catalogue-parts"_s)->currentItem()->text().contains(u"yours"_s));
    const Date before = firstCheck();
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"assumptions":{"spent-tolerance-loss-of-charge":{"value":0.002}}})");
    EXPECT_LT(firstCheck(), before);
}

TEST_F(OwnCatalogueTest, AnAssumptionThatCanNotBeStaysBesideItsSentenceInTheFiguresShown)
{
    openOn(AssumptionTopic::checks);
    const QString line = u"Tolerated chance of spent unseen: looks, in %"_s;
    write(line, u"60"_s);
    EXPECT_EQ(cell(line, OwnCatalogueModel::own), u"60"_s);
    EXPECT_EQ(cell(line, OwnCatalogueModel::remark), line + u": must lie between 0.01 and 50."_s);
    m_dialog->accept();
    EXPECT_TRUE(m_dialog->isVisible());
    EXPECT_EQ(kept(), "");
    write(line, u"30"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"assumptions":{"spent-tolerance-looks":{"value":0.3}}})");
}

TEST_F(OwnCatalogueTest, TheChosenLineSaysWhatItDecidesAndWhereOursComesFrom)
{
    openOn(AssumptionTopic::flags);
    auto* view = find<QTableView>(u"catalogue-fields"_s);
    view->setCurrentIndex(table().index(rowOf(u"Longest time without a look, in months"_s), OwnCatalogueModel::own));
    const QString about = find<QLabel>(u"catalogue-about"_s)->text();
    EXPECT_TRUE(about.startsWith(u"A zone not seen for longer than this is flagged;"_s)) << about.toStdString();
    EXPECT_TRUE(about.endsWith(u"Source: ours; common practice, no source."_s)) << about.toStdString();
    EXPECT_TRUE(
        view->currentIndex().siblingAtColumn(OwnCatalogueModel::what).data(Qt::ToolTipRole).toString().contains(about));
}

TEST_F(OwnCatalogueTest, TheLeadTimeOfASpareIsAPersonsOwnAndMovesTheDayToOrderBy)
{
    openOn(std::string("suction-accumulator"));
    write(u"Lead time of a spare, in days"_s, u"4"_s);
    m_dialog->accept();
    const PartToOrder soon = firstOrder();
    openOn(std::string("suction-accumulator"));
    write(u"Lead time of a spare, in days"_s, u"9"_s);
    write(u"Spares are still made, yes or no"_s, u"No"_s);
    EXPECT_EQ(cell(u"Spares are still made, yes or no"_s, OwnCatalogueModel::own), u"no"_s);
    m_dialog->accept();
    EXPECT_EQ(kept(), R"({"supply":{"suction-accumulator":{"lead_days":9.0,"made":false}}})");
    EXPECT_EQ(firstOrder().orderBy, soon.orderBy - std::chrono::days(5));
    EXPECT_FALSE(firstOrder().made);
}

TEST_F(OwnCatalogueTest, WhetherSparesAreMadeIsChosenFromAListAndNothingElseIsTaken)
{
    openOn(std::string("compressor"));
    const QString line = u"Spares are still made, yes or no"_s;
    const QModelIndex index = table().index(rowOf(line), OwnCatalogueModel::own);
    write(line, u"maybe"_s);
    EXPECT_EQ(cell(line, OwnCatalogueModel::remark), u"“maybe” is neither “yes” nor “no”. Choose one of the two."_s);
    auto* view = find<QTableView>(u"catalogue-fields"_s);
    view->setCurrentIndex(index);
    view->edit(index);
    auto* list = view->findChild<QComboBox*>();
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->accessibleName(), line);
    list->setCurrentIndex(list->findText(u"no"_s));
    view->itemDelegate()->setModelData(list, &table(), index);
    EXPECT_EQ(cell(line, OwnCatalogueModel::own), u"no"_s);
    list->setCurrentIndex(0); // as ours
    view->itemDelegate()->setModelData(list, &table(), index);
    EXPECT_EQ(cell(line, OwnCatalogueModel::own), QString());
}

TEST_F(OwnCatalogueTest, WhatTheOutlookAssumesStandsWithTheForecasts)
{
    openOn(AssumptionTopic::forecasts);
    EXPECT_EQ(cell(u"Spread of the pace among zones of one kind"_s, OwnCatalogueModel::ours), u"0.6"_s);
    EXPECT_EQ(cell(u"How much “grease” slows decay, in %"_s, OwnCatalogueModel::ours), u"50"_s);
    const QString shares = u"Shares of a life at grades 1 to 4"_s;
    EXPECT_EQ(cell(shares, OwnCatalogueModel::ours), u"0.4 / 0.3 / 0.2 / 0.1"_s);
    write(shares, u"0.5 / 0.5"_s);
    EXPECT_EQ(cell(shares, OwnCatalogueModel::remark),
              shares + u": four shares of at least 0.001 that add up to 1 are needed here."_s);
    write(shares, u"0.25/0.25/0.25/0.25"_s);
    EXPECT_EQ(cell(shares, OwnCatalogueModel::own), u"0.25 / 0.25 / 0.25 / 0.25"_s);
    find<QPushButton>(u"put-all-back"_s)->click();
    EXPECT_EQ(cell(shares, OwnCatalogueModel::own), QString());
    m_dialog->accept();
    EXPECT_EQ(kept(), "");
}

TEST_F(OwnCatalogueTest, EntriesThatNeedOneAnotherAreTakenTogether)
{
    openOn(std::string("bonding")); // ours gives it no life of its own
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
    openOn(std::string("pad"));
    auto* safety = find<QCheckBox>(u"consequence-safety"_s);
    safety->setChecked(!safety->isChecked());
    m_dialog->accept();
    EXPECT_TRUE(kept().find("consequences") != std::string::npos) << kept();
}

TEST_F(OwnCatalogueTest, LeavingItAloneWritesNothing)
{
    const std::string byHand = R"({ "part_kinds": { "pad": { "name": "Slab" } } })";
    m_store->ownCatalogue().setChanges(byHand);
    openOn(std::string("pad"));
    m_dialog->accept();
    EXPECT_FALSE(m_catalogueChanged);
    EXPECT_EQ(kept(), byHand);
}

} // namespace padside::test
