// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/drafts.h"
#include "core/store/photo_files.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/support/record_builder.h"
#include "tests/ui/models/open_visit_fixture.h"
#include "ui/models/photo_intake.h"
#include "ui/models/record_book.h"
#include "ui/models/visit_log.h"

#include <QSignalSpy>
#include <QTemporaryDir>

#include <algorithm>
#include <functional>
#include <gtest/gtest.h>

namespace padside::test {

namespace {

/// All of the file that an entry may touch, for comparing.
class UndoTest : public OpenVisitFixture
{
protected:
    ~UndoTest() override { EXPECT_TRUE(verify(*m_store).clean()); }

    struct Content
    {
        UnitRecord record;
        std::optional<QString> waitingWetness;
        std::optional<QString> waitingNote;
        std::vector<QByteArray> thumbnails;

        friend bool operator==(const Content&, const Content&) = default;
    };

    [[nodiscard]] Content content() const
    {
        Content now{m_store->records().unitRecord(m_unit), draft("wetness"), draft("note"), {}};
        for (const Photo& photo : now.record.photos)
            now.thumbnails.push_back(m_store->photos().thumbnail(photo.id));
        return now;
    }
    [[nodiscard]] std::optional<QString> draft(const std::string& what) const
    {
        return m_store->drafts().text(
            QString::fromStdString(m_log.draftKey(what + "/" + m_part.zones[0].id.text() + "/as-found")));
    }
    [[nodiscard]] VisitLog::Look look() const
    {
        VisitLog::Look look{m_part.zones[0].id, Phase::asFound, {}};
        for (const Finding& finding : content().record.findings) {
            if (finding.zoneId == look.zoneId)
                look.standing = finding;
        }
        return look;
    }

    /// Does something, takes it back, does it again and takes it back: the file is each time what it was.
    void expectSteps(const QString& name, const std::function<bool()>& act)
    {
        const Content before = content();
        ASSERT_TRUE(act());
        const Content after = content();
        EXPECT_FALSE(before == after);
        EXPECT_EQ(m_log.steps().undoText(), name);
        for (const int round : {1, 2}) {
            EXPECT_TRUE(m_log.undo().has_value());
            EXPECT_TRUE(content() == before) << "undo " << round << " of " << name.toStdString();
            EXPECT_EQ(m_log.steps().redoText(), name);
            EXPECT_TRUE(m_log.redo().has_value());
            EXPECT_TRUE(content() == after) << "redo " << round << " of " << name.toStdString();
        }
        EXPECT_EQ(m_log.visit(), after.record.visits.back()) << "the log knows what the file says";
    }

    [[nodiscard]] Reading suction(double kilopascal) const
    {
        Reading reading;
        reading.kind = "suction-pressure";
        reading.value = Measure{kilopascal * 1000, QuantityKind::gaugePressure, "kPag", "x"};
        return reading;
    }
    [[nodiscard]] Treatment coating() const
    {
        Treatment work;
        work.kind = TreatmentKind::brushAndCoat;
        work.partId = m_part.id;
        work.zoneId = m_part.zones[0].id;
        work.cost = 12.5;
        return work;
    }
};

} // namespace

TEST_F(UndoTest, AGradeAndWhatWaitedForIt)
{
    ASSERT_TRUE(m_log.draftNote(look(), "squeaks"));
    expectSteps(QStringLiteral("“wet” on fan-motor: shaft"), [this] { return m_log.setWetness(look(), Wetness::wet); });
    expectSteps(QStringLiteral("grade 2 on fan-motor: shaft"), [this] { return m_log.see(look(), Grade::worn); });
    expectSteps(QStringLiteral("grade 4 on fan-motor: shaft"), [this] { return m_log.see(look(), Grade::poor); });
    expectSteps(QStringLiteral("“dry” on fan-motor: shaft"), [this] { return m_log.setWetness(look(), Wetness::dry); });
    expectSteps(QStringLiteral("note on fan-motor: shaft"), [this] { return m_log.setNote(look(), "quiet now"); });
    expectSteps(QStringLiteral("“not seen” on fan-motor: shaft"),
                [this] { return m_log.notSee(look(), NotSeenReason::noAccess); });
    while (m_log.undo())
        continue;
    EXPECT_TRUE(content().record.findings.empty());
    EXPECT_EQ(m_log.waitingNote(look()), "squeaks") << "what was typed before the grade waits again";
}

TEST_F(UndoTest, AReadingItsChangeAndItsRemoval)
{
    expectSteps(QStringLiteral("suction-pressure"), [this] { return m_log.put(suction(480)); });
    expectSteps(QStringLiteral("suction-pressure"), [this] {
        Reading again = content().record.readings.front();
        again.value = suction(520).value;
        return m_log.put(again);
    });
    expectSteps(QStringLiteral("removal of suction-pressure"),
                [this] { return m_log.remove(Reading(content().record.readings.front())); });
}

TEST_F(UndoTest, WorkAndItsRemoval)
{
    expectSteps(QStringLiteral("brush and coat"), [this] { return m_log.put(coating()); });
    expectSteps(QStringLiteral("removal of brush and coat"),
                [this] { return m_log.remove(Treatment(content().record.treatments.front())); });
}

TEST_F(UndoTest, ANewPartInTheOldOnesPlace)
{
    ASSERT_TRUE(m_log.see(look(), Grade::spent));
    expectSteps(QStringLiteral("new part for fan-motor"), [this] {
        Treatment work;
        work.note = "seized";
        return m_log.replacePart(m_part, work, "Tidewater Motors", "TM-2");
    });
}

TEST_F(UndoTest, RefrigerantAndItsRemoval)
{
    ChargeEntry charge;
    charge.direction = ChargeDirection::recovered;
    charge.refrigerant = "R-410A";
    charge.mass = Measure{0.2, QuantityKind::mass, "g", "200 g"};
    expectSteps(QStringLiteral("refrigerant recovered"), [&] { return m_log.put(charge); });
    expectSteps(QStringLiteral("removal of refrigerant recovered"),
                [this] { return m_log.remove(ChargeEntry(content().record.charges.front())); });
}

TEST_F(UndoTest, APromiseAndItsRemoval)
{
    FollowUp promise;
    promise.zoneId = m_part.zones[0].id;
    promise.earliest = day("2026-05-11");
    promise.latest = day("2026-06-03");
    promise.why = "see it dry";
    expectSteps(QStringLiteral("promise to look again"), [&] { return m_log.put(promise); });
    expectSteps(QStringLiteral("removal of promise to look again"),
                [this] { return m_log.remove(FollowUp(content().record.followUps.front())); });
}

TEST_F(UndoTest, APhotoWithItsThumbnailAndItsRemoval)
{
    TakenPhoto taken;
    taken.content = QByteArray("not a picture, but kept byte by byte");
    taken.mediaType = "image/jpeg";
    taken.originalName = QStringLiteral("IMG_1.jpg");
    taken.size = QSize(4, 3);
    taken.thumbnail = QByteArray("small");
    expectSteps(QStringLiteral("photo"), [&] { return m_log.addPhoto(taken, m_part.zones[0].id, Phase::asFound); });
    const QString file = m_store->photos().path(content().record.photos.front());
    expectSteps(QStringLiteral("removal of photo"),
                [this] { return m_log.remove(Photo(content().record.photos.front())); });
    EXPECT_TRUE(QFile::exists(file)) << "a file is never removed with its row";
}

TEST_F(UndoTest, WhatBelongsToTheVisitItself)
{
    expectSteps(QStringLiteral("conditions"), [this] {
        return m_log.setConditions(Conditions{293.15, 0.55, Sky::cloudy, Running::cooling});
    });
    expectSteps(QStringLiteral("technician"), [this] { return m_log.setTechnician("B. Second"); });
    expectSteps(QStringLiteral("reason of the visit"), [this] { return m_log.setReason(VisitReason::callOut); });
    expectSteps(QStringLiteral("note on the visit"), [this] { return m_log.setVisitNote("quiet"); });
}

TEST_F(UndoTest, TextTypedInOneFieldIsOneStep)
{
    ASSERT_TRUE(m_log.see(look(), Grade::worn));
    const Content before = content();
    ASSERT_TRUE(m_log.setNote(look(), "squeaks"));
    ASSERT_TRUE(m_log.setNote(look(), "squeaks when cold"));
    EXPECT_EQ(m_log.steps().count(), 2) << "the grade and the note";
    ASSERT_TRUE(m_log.undo().has_value());
    EXPECT_TRUE(content() == before);
    ASSERT_TRUE(m_log.redo().has_value());
    EXPECT_EQ(look().standing->note, "squeaks when cold");
    ASSERT_TRUE(m_log.setNote(look(), ""));
    EXPECT_EQ(m_log.steps().count(), 1) << "typed back to what it was: no step";
}

TEST_F(UndoTest, EachStepSaysWhereItStands)
{
    ASSERT_TRUE(m_log.see(look(), Grade::worn));
    ASSERT_TRUE(m_log.put(suction(480)));
    auto place = m_log.undo();
    ASSERT_TRUE(place.has_value());
    EXPECT_EQ(place->part, VisitPlace::Part::readings);
    EXPECT_EQ(place->reading, "suction-pressure");
    place = m_log.undo();
    ASSERT_TRUE(place.has_value());
    EXPECT_EQ(place->part, VisitPlace::Part::zone);
    EXPECT_EQ(place->zone, m_part.zones[0].id);
    EXPECT_FALSE(m_log.undo().has_value()) << "nothing is left to take back";
}

TEST_F(UndoTest, ARefusedEntryIsNoStep)
{
    QSignalSpy failed(&m_book, &RecordBook::failed);
    Treatment work = coating();
    work.cost = 0.001;
    EXPECT_FALSE(m_log.put(work));
    EXPECT_EQ(failed.count(), 1);
    EXPECT_EQ(m_log.steps().count(), 0);
}

TEST_F(UndoTest, AStepThatCannotBeTakenBackStaysAndSaysWhy)
{
    ASSERT_TRUE(m_log.put(coating()));
    const Treatment work = content().record.treatments.front();
    m_store->visits().remove(work); // behind the log's back
    QSignalSpy failed(&m_book, &RecordBook::failed);
    EXPECT_FALSE(m_log.undo().has_value());
    EXPECT_EQ(failed.count(), 1);
    EXPECT_TRUE(m_log.steps().canUndo());
    m_store->visits().put(work);
    EXPECT_TRUE(m_log.undo().has_value()) << "it can be tried again";
}

TEST_F(UndoTest, ClosingForgetsTheStepsAndACorrectionIsNone)
{
    ASSERT_TRUE(m_log.see(look(), Grade::worn));
    ASSERT_TRUE(m_log.close());
    EXPECT_FALSE(m_log.steps().canUndo());
    EXPECT_FALSE(m_log.undo().has_value());
    m_log.correctBecause("mistyped");
    ASSERT_TRUE(m_log.see(look(), Grade::marked));
    EXPECT_FALSE(m_log.steps().canUndo());
}

} // namespace padside::test
