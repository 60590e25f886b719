// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"
#include "tests/ui/pages/setup/setup_fixture.h"
#include "ui/pages/setup/retire_dialog.h"

#include <QDateEdit>
#include <QLabel>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

TEST_F(SetupFixture, RetiringAsksForTheDayAndWhy)
{
    Unit unit;
    unit.id = m_ids.make<UnitId>();
    unit.siteId = m_site.id;
    unit.tag = "RT-1";
    unit.kind = m_catalogue.unitKinds().front().code;
    unit.installedOn = parseDate("2008-06-14");
    m_store->sites().addUnit(unit);
    RetireDialog* dialog = show(std::make_unique<RetireDialog>(*m_book, *m_log, unit));

    dialog->accept();
    EXPECT_FALSE(problem(u"retire-reason"_s).isEmpty());
    EXPECT_FALSE(units().at(0).retiredOn.has_value());

    type(u"retire-reason"_s, u"replaced"_s);
    find<QDateEdit>(u"retire-day"_s)->setDate(QDate(2007, 1, 1));
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(find<QLabel>(u"setup-said"_s)->text().contains(u"can't be retired before"_s));
    EXPECT_EQ(typed(u"retire-reason"_s), u"replaced"_s);

    find<QDateEdit>(u"retire-day"_s)->setDate(QDate(2026, 5, 1));
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible());
    EXPECT_EQ(units().at(0).retiredOn, parseDate("2026-05-01"));
    EXPECT_NE(units().at(0).note.find("replaced"), std::string::npos);
}

} // namespace padside::test
