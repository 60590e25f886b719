// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <functional>

namespace padside {

/// How the program talks to the person outside its own window. Functions, so that tests meet no dialog.
struct Dialogs
{
    std::function<void(const QString& sentence)> tell;
    std::function<bool(const QString& question, const QString& yes, const QString& no)> agree;
};

/// Message boxes; the question's safe answer is the one that Enter and Escape give.
[[nodiscard]] Dialogs messageBoxes();

} // namespace padside
