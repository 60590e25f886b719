// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What a person's records taught, once accepted, reaches the open window at once, in the place where they are.

#include "app/window_program.h"
#include "core/store/own_catalogue.h"
#include "tests/app/command_runner.h"
#include "ui/models/record_book.h"
#include "ui/pages/track/rates_model.h"
#include "ui/pages/track/rates_panel.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

TEST(WindowLearning, WhatIsAcceptedIsUsedAtOnceAndCanBePutBack)
{
    QSettings().clear();
    const QTemporaryDir folder;
    const QString file = folder.filePath(u"small.padside"_s);
    ASSERT_EQ(run({"demo", "--out", file.toStdString(), "--units", "2", "--years", "2", "--no-photos"}).exitCode,
              exitDone);
    WindowProgram program(*qobject_cast<QApplication*>(qApp));
    ASSERT_EQ(program.open(file), WindowProgram::Opened::here);
    const auto panel = [&program] { return program.window()->findChild<RatesPanel*>(); };
    const auto press = [&panel](const QString& button) { panel()->findChild<QPushButton*>(button)->click(); };

    program.window()->showTrack(true);
    QSignalSpy learnt(panel(), &RatesPanel::learnt);
    press(u"learn"_s);
    ASSERT_TRUE(learnt.count() > 0 || learnt.wait(120'000));
    const KindLesson lesson = panel()->model().lesson(0);
    press(u"all"_s);
    const auto* before = program.window();
    press(u"accept"_s);
    ASSERT_TRUE(QTest::qWaitFor([&] { return program.window() != before; }, 30'000)) << "a window made anew";
    EXPECT_EQ(program.window()->place()->page, Place::Page::rates);
    ASSERT_GT(panel()->model().rowCount(), 0);
    bool found = false;
    for (int row = 0; row < panel()->model().rowCount(); ++row) {
        const KindLesson& used = panel()->model().lesson(row);
        if (used.partKind != lesson.partKind || used.soils != lesson.soils)
            continue;
        found = true;
        EXPECT_TRUE(used.learntOn);
        EXPECT_NEAR(used.inUse.medianLife / lesson.learntLife.medianLife, 1, 0.006) << "rounded to three figures";
    }
    EXPECT_TRUE(found);

    const auto* second = program.window();
    press(u"all"_s);
    press(u"putBack"_s);
    ASSERT_TRUE(QTest::qWaitFor([&] { return program.window() != second; }, 30'000));
    EXPECT_EQ(panel()->model().rowCount(), 0) << "nothing learned is in use";
    QSettings().clear();
}

} // namespace padside::test
