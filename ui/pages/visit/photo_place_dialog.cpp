// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/photo_place_dialog.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/lettering.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>

#include <initializer_list>

namespace padside {

using namespace Qt::Literals::StringLiterals;

PhotoPlaceDialog::PhotoPlaceDialog(const RecordBook& book, const UnitRecord& record, const Photo& photo,
                                   QWidget* parent)
    : QDialog(parent)
    , m_photo(photo)
    , m_zone(new QComboBox)
    , m_phase(new QComboBox)
    , m_caption(new QLineEdit(shown(photo.caption)))
{
    setWindowTitle(tr("Where this photo belongs"));
    m_zone->setObjectName(u"photoZone"_s);
    m_zone->setAccessibleName(tr("Zone the photo shows"));
    m_phase->setObjectName(u"photoPhase"_s);
    m_phase->setAccessibleName(tr("Before or after the work"));
    m_caption->setObjectName(u"photoCaption"_s);
    m_caption->setAccessibleName(tr("Caption of the photo"));
    listZones(book, record);
    for (const auto& phase : codesOf(Phase{})) {
        m_phase->addItem(translated(book, phase.word));
        if (phase.value == photo.phase)
            m_phase->setCurrentIndex(m_phase->count() - 1);
    }
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* form = new QFormLayout(this);
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter); // beside the middle of the tall fields, not their top
    form->addRow(tr("Zone"), m_zone);
    form->addRow(tr("Taken"), m_phase);
    form->addRow(tr("Caption"), m_caption);
    form->addRow(buttons);
    for (QWidget* control : std::initializer_list<QWidget*>{m_zone, m_phase, m_caption})
        makeLarge(*control);
}

void PhotoPlaceDialog::listZones(const RecordBook& book, const UnitRecord& record)
{
    m_zone->addItem(tr("the whole unit"));
    for (const Part& part : record.parts) {
        for (const Zone& zone : part.zones) {
            const bool chosen = m_photo.zoneId == zone.id;
            if (part.removedOn && part.removedOn < m_photo.on && !chosen)
                continue; // it was gone by then
            m_zones.push_back(zone.id);
            m_zone->addItem(placeTitle(book, record, zone.id));
            if (chosen)
                m_zone->setCurrentIndex(m_zone->count() - 1);
        }
    }
}

Photo PhotoPlaceDialog::photo() const
{
    Photo photo = m_photo;
    const int zone = m_zone->currentIndex();
    photo.zoneId = zone > 0 ? std::optional(m_zones[static_cast<std::size_t>(zone - 1)]) : std::nullopt;
    photo.phase = codesOf(Phase{})[static_cast<std::size_t>(m_phase->currentIndex())].value;
    photo.caption = m_caption->text().trimmed().toStdString();
    return photo;
}

} // namespace padside
