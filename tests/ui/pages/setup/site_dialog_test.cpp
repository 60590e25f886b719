// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/setup/setup_fixture.h"
#include "ui/pages/setup/site_dialog.h"

#include <QSignalSpy>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

class SiteDialogTest : public SetupFixture
{
protected:
    SiteDialog* open(const std::optional<Site>& site = {})
    {
        return show(std::make_unique<SiteDialog>(*m_book, *m_log, site));
    }
};

TEST_F(SiteDialogTest, ANameIsEnoughForANewSite)
{
    SiteDialog* dialog = open();
    QSignalSpy kept(dialog, &SiteDialog::kept);
    expectEveryFieldIsNamed();
    expectTabReachesEveryControl();
    type(u"site-name"_s, u"Old Mill"_s);
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible());
    EXPECT_EQ(kept.count(), 1);
    ASSERT_EQ(sites().size(), 2U);
    EXPECT_EQ(sites().back().name, "Old Mill");
}

TEST_F(SiteDialogTest, ABadFieldIsSaidBesideItAndWhatWasTypedStays)
{
    SiteDialog* dialog = open();
    type(u"site-name"_s, u"Old Mill"_s);
    type(u"site-altitude"_s, u"quite high"_s);
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_FALSE(problem(u"site-altitude"_s).isEmpty());
    EXPECT_TRUE(problem(u"site-name"_s).isEmpty());
    EXPECT_EQ(typed(u"site-altitude"_s), u"quite high"_s);
    EXPECT_EQ(sites().size(), 1U);

    type(u"site-altitude"_s, u"40"_s);
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible());
    EXPECT_EQ(sites().back().altitudeM, 40);
}

TEST_F(SiteDialogTest, AChangeIsOneStepThatCanBeTakenBack)
{
    SiteDialog* dialog = open(m_site);
    EXPECT_EQ(typed(u"site-name"_s), u"Harbour House"_s);
    type(u"site-access"_s, u"Ladder in the shed"_s);
    dialog->accept();
    EXPECT_EQ(sites().at(0).access, "Ladder in the shed");
    m_stack.undo();
    EXPECT_EQ(sites().at(0), m_site);
}

} // namespace padside::test
