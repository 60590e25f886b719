// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The lists over all sites that may stand beside the board: what is overdue, what to order.

#include "ui/drawing/theme.h"
#include "ui/models/speaker.h"
#include "ui/pages/season/season_words.h"

namespace padside {

QString SeasonWords::overdue(const OverdueCount& count) const
{
    if (count.checks == 0)
        return tr("Nothing is overdue.");
    return tr("Overdue: %1.").arg(counted(static_cast<int>(count.checks), static_cast<int>(count.units)));
}

QString SeasonWords::overdueHtml(const std::vector<OverdueUnit>& units, const OverdueCount& total,
                                 const Theme& theme) const
{
    const QString soft = theme.softInk.name();
    QString text
        = QStringLiteral("<p style=\"margin: 0; font-size: large\"><b>%1</b></p><p style=\"margin: 2px 0\">%2</p>")
              .arg(tr("Overdue checks"), html(overdue(total)));
    if (!units.empty())
        text += QStringLiteral("<p style=\"margin: 2px 0; color: %1\">%2</p>")
                    .arg(soft,
                         tr("Most pressing first: where the chance that something is spent is furthest past what is "
                            "tolerated."));
    for (const OverdueUnit& one : units) {
        const QString id = keyText(one.unit->unit.id);
        const auto count = static_cast<int>(one.checks.size());
        text += QStringLiteral("<p style=\"margin: 16px 0 0 0\"><b>%1</b> · %2<br><b>%3</b><br>%4 &nbsp; %5</p>")
                    .arg(html(shown(one.unit->unit.tag)), html(shown(one.unit->site.name)),
                         count == 1 ? tr("one check overdue") : tr("%n checks overdue", nullptr, count),
                         link(QStringLiteral("trip:") + id, tr("Its trip")),
                         link(QStringLiteral("unit:") + id, tr("History")));
        text += checkHtml(one.checks.front(), soft);
        for (std::size_t i = 1; i < one.checks.size(); ++i)
            text += QStringLiteral("<p style=\"margin: 6px 0 0 0\">%1<br><span style=\"color: %2\">%3</span></p>")
                        .arg(html(m_speaker.said(one.checks[i].check().what)), soft,
                             html(window(one.checks[i].check(), one.unit->review.today)));
    }
    return text;
}

QString SeasonWords::ordersHtml(const std::vector<PartToOrder>& orders, Date today, const Theme& theme) const
{
    const QString soft = theme.softInk.name();
    QString text = QStringLiteral("<p style=\"margin: 0; font-size: large\"><b>%1</b></p>").arg(tr("Parts to order"));
    if (orders.empty())
        return text + QStringLiteral("<p>%1</p>").arg(tr("No part is likely to be needed before it could be there."));
    text += QStringLiteral("<p style=\"margin: 2px 0; color: %1\">%2</p>")
                .arg(soft,
                     tr("Parts whose chance of being spent passes what is tolerated within %n months. How long a "
                        "spare takes to come is an assumption.",
                        nullptr, riskMonths));
    for (const PartToOrder& order : orders) {
        const Unit& unit = order.unit->unit;
        text += QStringLiteral("<p style=\"margin: 12px 0 0 0\"><b>%1</b> · %2 · %3<br>%4</p>")
                    .arg(html(orderWords(order.orderBy, order.made, today)),
                         link(QStringLiteral("unit:") + keyText(unit.id), html(shown(unit.tag))),
                         html(shown(order.unit->site.name)), html(m_speaker.said(order.why)));
    }
    return text;
}

} // namespace padside
