// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/own_sample.h"
#include "core/store/photo_path.h"
#include "core/store/store.h"
#include "core/store/store_error.h"
#include "core/store/verify.h"
#include "sample-db/sample.h"

#include <QDir>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

SampleOptions aSmallOne()
{
    SampleOptions options;
    options.units = 1;
    options.years = 1;
    return options;
}

} // namespace

TEST(OwnSample, IsWholeWithItsPhotographsAndCanBeWritten)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(u"sample.padside"_s);
    EXPECT_TRUE(makeOwnSample(file, aSmallOne(), [](double) { return true; }));
    EXPECT_FALSE(QDir(photoFolderOf(file)).isEmpty());
    const auto store = Store::open(file);
    EXPECT_FALSE(store->isReadOnly());
    EXPECT_TRUE(verify(*store).clean());
    EXPECT_EQ(QDir(folder.path()).entryList({u"sample-*"_s}, QDir::Dirs).size(), 0) << "what it was made in is gone";
}

TEST(OwnSample, AStopLeavesNothing)
{
    const QTemporaryDir folder;
    EXPECT_FALSE(makeOwnSample(folder.filePath(u"sample.padside"_s), aSmallOne(), [](double) { return false; }));
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

TEST(OwnSample, AFolderThatIsClosedIsSaid)
{
    EXPECT_THROW(makeOwnSample(u"/nowhere/sample.padside"_s, aSmallOne(), [](double) { return true; }), StoreError);
}

} // namespace padside::test
