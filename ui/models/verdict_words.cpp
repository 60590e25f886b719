// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/verdict_words.h"

#include "core/record/coded.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_words.h"

namespace padside {

QString judgementWord(const RecordBook& book, Judgement judgement)
{
    return translated(book, std::string(wordOf(judgement)));
}

QString verdictText(const RecordBook& book, const Verdict& verdict)
{
    return RecordBook::tr("%1. %2").arg(judgementWord(book, verdict.judgement), book.speaker().said(verdict.sentence));
}

QString verdictSource(const RecordBook& book, const Verdict& verdict)
{
    return verdict.source.empty() ? QString() : translated(book, verdict.source);
}

} // namespace padside
