// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/small_catalogue.h"
#include "tests/ui/pages/unit/unit_page_fixture.h"
#include "ui/pages/unit/raised_flags.h"

namespace padside::test {

namespace {

const TimelineMark& markOf(const Timeline& timeline, const std::string& lane, std::size_t number)
{
    for (const TimelineGroup& group : timeline.groups) {
        for (const TimelineLane& one : group.lanes) {
            if (one.name == lane)
                return one.marks.at(number);
        }
    }
    throw std::invalid_argument("no such lane in a test: " + lane);
}

std::vector<std::string> rulesSaid(const std::vector<Sentence>& sentences)
{
    std::vector<std::string> said;
    said.reserve(sentences.size());
    for (const Sentence& sentence : sentences)
        said.push_back(say(sentence));
    return said;
}

} // namespace

TEST(RaisedFlags, AFindingSaysWhatItRaisedWhenItWasMade)
{
    const UnitRecord record = worseningUnit().build();
    const Catalogue catalogue = smallCatalogue();
    const Timeline timeline = timelineOf(record, catalogue, today());
    RaisedFlags raised(record, catalogue, std::make_shared<const OutlookModel>(catalogue));
    EXPECT_TRUE(raised.of(markOf(timeline, "bottom", 0)).empty()) << "grade 2 on first sight worries nobody";
    const auto second = rulesSaid(raised.of(markOf(timeline, "bottom", 1)));
    ASSERT_FALSE(second.empty());
    EXPECT_NE(second.front().find("2024-10-10"), std::string::npos) << second.front();
    for (const std::string& sentence : second)
        EXPECT_EQ(sentence.find("2025"), std::string::npos) << "nothing that was found later: " << sentence;
    EXPECT_FALSE(raised.of(markOf(timeline, "bottom", 2)).empty());
}

TEST(RaisedFlags, AZonesNeighbourIsNotBlamed)
{
    const UnitRecord record = worseningUnit().build();
    const Catalogue catalogue = smallCatalogue();
    const Timeline timeline = timelineOf(record, catalogue, today());
    RaisedFlags raised(record, catalogue, std::make_shared<const OutlookModel>(catalogue));
    EXPECT_TRUE(raised.of(markOf(timeline, "root", 1)).empty());
    EXPECT_TRUE(raised.of(markOf(timeline, "visits", 1)).empty());
}

} // namespace padside::test
