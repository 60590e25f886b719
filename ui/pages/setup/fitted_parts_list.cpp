// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/fitted_parts_list.h"

#include "ui/models/speaker.h"

#include <algorithm>

namespace padside {

FittedPartsList::FittedPartsList(const Catalogue& catalogue, const LocalSpeaker& speaker, QWidget* parent)
    : QListWidget(parent)
    , m_catalogue(catalogue)
    , m_speaker(speaker)
{
    setObjectName(QStringLiteral("unit-parts"));
    setAccessibleName(tr("Parts it has"));
    auto* hint = new QListWidgetItem(tr("Its kind brings the usual parts."), this);
    hint->setFlags(Qt::NoItemFlags);
    hint->setForeground(palette().color(QPalette::PlaceholderText)); // to be read, though not chosen
}

void FittedPartsList::showKind(const std::string& kind)
{
    const UnitKind* now = m_catalogue.unitKind(kind);
    if (now == m_kind)
        return;
    m_kind = now;
    clear();
    if (m_kind == nullptr)
        return;
    for (const UnitKind::Fitted& fitted : m_kind->parts) {
        const PartKind* part = m_catalogue.partKind(fitted.partKind);
        const QString name = shown(m_speaker.translate(part ? part->name : fitted.partKind));
        const QString position = shown(m_speaker.translate(fitted.position));
        auto* item = new QListWidgetItem(position.isEmpty() ? name : tr("%1 (%2)").arg(name, position), this);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(Qt::Checked);
    }
    setCurrentRow(0);
}

void FittedPartsList::tickOnly(const std::vector<Part>& parts)
{
    for (int i = 0; i < count(); ++i) {
        const UnitKind::Fitted& fitted = m_kind->parts[static_cast<std::size_t>(i)];
        const bool has = std::ranges::any_of(parts, [&](const Part& part) {
            return !part.removedOn && part.kind == fitted.partKind && part.position == fitted.position;
        });
        item(i)->setCheckState(has ? Qt::Checked : Qt::Unchecked);
    }
}

std::set<std::size_t> FittedPartsList::leftOut() const
{
    std::set<std::size_t> places;
    if (m_kind == nullptr)
        return places;
    for (int i = 0; i < count(); ++i) {
        if (item(i)->checkState() == Qt::Unchecked)
            places.insert(static_cast<std::size_t>(i));
    }
    return places;
}

} // namespace padside
