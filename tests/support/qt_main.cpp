// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/test_surroundings.h"

#include <QApplication>

#include <gtest/gtest.h>

int main(int argc, char** argv)
{
    ::testing::InitGoogleTest(&argc, argv);
    const padside::test::TestSurroundings surroundings;
    QCoreApplication::setOrganizationName(QStringLiteral("padside"));
    QCoreApplication::setApplicationName(QStringLiteral("padside-test"));
    const QApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
