// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/unit_line.h"

#include "core/quantity/sentence.h"
#include "ui/paper/part_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace padside {

QString unitLine(const Unit& unit, const Catalogue& catalogue, const Speaker& speaker)
{
    const auto tr = [](const char* text) { return QCoreApplication::translate("VisitSummary", text); };
    QStringList parts;
    const UnitKind* kind = catalogue.unitKind(unit.kind);
    parts << capitalised(fromCore(speaker.translate(kind ? kind->name : unit.kind)));
    const QString model = (fromCore(unit.maker) + QLatin1Char(' ') + fromCore(unit.model)).trimmed();
    if (!model.isEmpty())
        parts << model;
    if (!unit.serial.empty())
        parts << tr("serial %1").arg(fromCore(unit.serial));
    if (!unit.refrigerant.empty())
        parts << fromCore(unit.refrigerant);
    const auto charge
        = std::ranges::find_if(unit.nameplate, [](const NameplateValue& value) { return value.item == "charge"; });
    if (charge != unit.nameplate.end())
        parts << tr("charge %1").arg(fromCore(speaker.amount(Amount{charge->value.si, charge->value.kind})));
    return parts.join(QStringLiteral("  ·  "));
}

} // namespace padside
