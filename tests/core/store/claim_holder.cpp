// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/file_claim.h"

#include <QCoreApplication>

#include <iostream>

/// Claims the file it is told, says "held" or "refused", and then waits until its input ends or it is killed.
int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const auto outcome = padside::FileClaim::make(QCoreApplication::arguments().at(1));
    std::cout << (std::holds_alternative<padside::FileClaim>(outcome) ? "held" : "refused") << std::endl;
    std::cin.get();
    return 0;
}
