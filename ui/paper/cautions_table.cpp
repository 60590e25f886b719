// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/cautions_table.h"

#include "core/quantity/sentence.h"
#include "ui/paper/part_words.h"

#include <QCoreApplication>

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

} // namespace

TableBlock cautionsTable(const Catalogue& catalogue, const Speaker& speaker, const std::vector<std::string>& codes)
{
    const auto tr = [](const char* text) { return QCoreApplication::translate("VisitSummary", text); };
    TableBlock table;
    table.heading = tr("Cautions");
    table.columns = {{}, {}};
    std::vector<PaperCell> cells;
    bool cutEndings = false;
    for (const Caution& caution : catalogue.cautions()) {
        if (!caution.always && std::ranges::find(codes, caution.code) == codes.end())
            continue;
        const QString sentence = fromCore(speaker.translate(caution.sentence));
        cells.push_back(PaperCell{withoutEnding(speaker, sentence, cutEndings), {}, {}, false, true});
    }
    if (cutEndings)
        table.closing = tr("For all of this: %1").arg(fromCore(speaker.translate(sharedEndings.front())));
    if (!catalogue.caution("advice")) {
        cells.push_back(PaperCell{tr("Grades, limits and dates are advice: local codes, the maker's instructions "
                                     "and a licensed technician come first."),
                                  {},
                                  {},
                                  false,
                                  true});
    }
    // Two to a row: the sentences are long, the paper is not.
    for (std::size_t i = 0; i < cells.size(); i += 2)
        table.rows.push_back({cells[i], i + 1 < cells.size() ? cells[i + 1] : PaperCell{}});
    return table;
}

} // namespace padside
