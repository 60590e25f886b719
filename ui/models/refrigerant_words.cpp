// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/refrigerant_words.h"

#include "core/catalogue/catalogue.h"
#include "ui/models/speaker.h"

namespace padside {

QString refrigerantWords(const std::string& written, const Catalogue& catalogue, const LocalSpeaker& speaker)
{
    if (shown(written).trimmed().isEmpty())
        return {};
    const Refrigerant* refrigerant = catalogue.refrigerant(written);
    if (refrigerant == nullptr) {
        return speaker.said(
            {PADSIDE_SAY("{0} is not in the catalogue: superheat and subcooling can't be told with it."),
             {shown(written).trimmed().toStdString()}});
    }
    const WarmingPotential& warming = refrigerant->warmingPotentials.front();
    QString words = speaker.said(
        {PADSIDE_SAY("{0}: safety class {1}, {2}; global warming potential {3} ({4})."),
         {refrigerant->code, std::string(codeOf(refrigerant->safetyClass)),
          Word{std::string(wordOf(refrigerant->safetyClass))}, Number{warming.value, 0}, warming.report}});
    const Caution* caution = catalogue.caution("flammable-refrigerant");
    if (isFlammable(refrigerant->safetyClass) && caution != nullptr)
        words += QLatin1Char('\n') + shown(speaker.translate(caution->sentence));
    return words;
}

} // namespace padside
