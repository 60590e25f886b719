// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/verdict/suspicion.h"
#include "core/verdict/verdict.h"

#include <QString>

namespace padside {

class RecordBook;

/// "Outside": the judgement in the person's language.
[[nodiscard]] QString judgementWord(const RecordBook& book, Judgement judgement);
/// "Outside. Superheat 14 K, above …": for plain text and screen readers.
[[nodiscard]] QString verdictText(const RecordBook& book, const Verdict& verdict);
/// Where what is asked for comes from; empty where nothing is asked for.
[[nodiscard]] QString verdictSource(const RecordBook& book, const Verdict& verdict);

} // namespace padside
