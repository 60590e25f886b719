// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "tests/app/command_runner.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <memory>

namespace padside::test {

/// Tests of commands on the sample, made once for all tests of a suite (without photographs: they are tested with the
/// sample).
class OnSample : public ::testing::Test
{
protected:
    static void SetUpTestSuite()
    {
        folder = std::make_unique<QTemporaryDir>();
        file = folder->filePath(QStringLiteral("sample.padside")).toStdString();
        const Said said = run({"demo", "--out", file, "--no-photos"});
        ASSERT_EQ(said.exitCode, exitDone) << said.err;
    }
    static void TearDownTestSuite() { folder.reset(); }

    static inline std::unique_ptr<QTemporaryDir> folder; // NOLINT(readability-identifier-naming)
    static inline std::string file; // NOLINT(readability-identifier-naming)
};

} // namespace padside::test
