// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/cautions_table.h"

#include "core/quantity/sentence.h"
#include "ui/paper/part_words.h"
#include "ui/paper/visit_summary_content.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>

namespace padside {

namespace {

/// Nearly every caution of the catalogue ends in one of these, longest first. On paper it is said once, for all of
/// them.
const std::array<const char*, 2> sharedEndings{
    PADSIDE_SAY("Follow local codes and the maker's instructions; licensed work only."),
    PADSIDE_SAY("Follow local codes and the maker's instructions."),
};

/// The sentence without its shared ending; `cut` tells whether it had one.
QString withoutEnding(const Speaker& speaker, const QString& sentence, bool& cut)
{
    for (const char* ending : sharedEndings) {
        const QString words = fromCore(speaker.translate(ending));
        if (sentence.endsWith(words) && sentence.size() > words.size()) {
            cut = true;
            return sentence.chopped(words.size()).trimmed();
        }
    }
    return sentence;
}

/// The sentences one below the other in two columns of about the same length: in rows the shorter ones would leave much
/// of the paper empty.
std::vector<PaperCell> inTwoColumns(const QStringList& sentences)
{
    const auto all = sentences.join(QString()).size();
    std::vector<PaperCell> columns(2);
    qsizetype before = 0;
    for (const QString& sentence : sentences) {
        PaperCell& column = columns[before + sentence.size() / 2 < all / 2 ? 0 : 1];
        if (!column.text.isEmpty())
            column.text += QLatin1Char('\n');
        column.text += QStringLiteral("\u2022 ") + sentence;
        column.small = true;
        before += sentence.size();
    }
    return columns;
}

} // namespace

TableBlock cautionsTable(const Catalogue& catalogue, const Speaker& speaker, const std::vector<std::string>& codes)
{
    TableBlock table;
    table.heading = SummaryText::tr("Cautions");
    table.columns = {{}, {}};
    QStringList sentences;
    bool cutEndings = false;
    for (const Caution& caution : catalogue.cautions()) {
        if (!caution.always && std::ranges::find(codes, caution.code) == codes.end())
            continue;
        const QString sentence = fromCore(speaker.translate(caution.sentence));
        sentences << withoutEnding(speaker, sentence, cutEndings);
    }
    if (cutEndings)
        table.closing = SummaryText::tr("For all of this: %1").arg(fromCore(speaker.translate(sharedEndings.front())));
    if (!catalogue.caution("advice")) {
        sentences << SummaryText::tr("Grades, limits and dates are advice: local codes, the maker's instructions and a "
                                     "licensed technician come first.");
    }
    table.rows.push_back(inTwoColumns(sentences));
    return table;
}

} // namespace padside
