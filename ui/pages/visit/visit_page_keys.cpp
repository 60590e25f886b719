// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The keys of the visit page. Text fields take letters and digits for themselves; everywhere else they are these.

#include "ui/pages/visit/grade_choice.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/photo_strip.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/pages/visit/zone_panel.h"

#include <QShortcut>

namespace padside {

using namespace Qt::Literals::StringLiterals;

void VisitPage::onKey(const QKeySequence& keys, QWidget* scope, std::function<void()> action)
{
    auto* shortcut = new QShortcut(keys, scope);
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    connect(shortcut, &QShortcut::activated, this, std::move(action));
}

void VisitPage::makeKeys()
{
    const auto whenWritable = [this](std::function<void()> action) {
        return [this, action = std::move(action)] {
            if (m_log.mayWrite())
                action();
            else
                hint(tr("This visit is closed. To correct an entry, press F6 and say why."));
        };
    };
    for (int digit = 1; digit <= 7; ++digit) {
        const auto press = whenWritable([this, digit] {
            if (!m_zone->grades().digit(digit))
                hint(tr("A grade is a number from 1 to 5; N is for not seen."));
        });
        onKey(QKeySequence(QString::number(digit)), m_zoneArea, press);
        onKey(QKeySequence(frenchDigit(digit)), m_zoneArea, press);
    }
    onKey(QKeySequence(tr("N", "key: not seen")), m_zoneArea, whenWritable([this] { m_zone->grades().askReason(); }));
    onKey(QKeySequence(tr("D", "key: dry")), m_zoneArea, whenWritable([this] { m_zone->setWetness(Wetness::dry); }));
    onKey(QKeySequence(tr("M", "key: damp")), m_zoneArea, whenWritable([this] { m_zone->setWetness(Wetness::damp); }));
    onKey(QKeySequence(tr("W", "key: wet")), m_zoneArea, whenWritable([this] { m_zone->setWetness(Wetness::wet); }));
    onKey(QKeySequence(tr("S", "key: same as last time")), m_zoneArea,
          whenWritable([this] { m_zone->sameAsLastTime(); }));
    onKey(QKeySequence(tr("P", "key: photo")), m_zoneArea, whenWritable([this] { m_zone->photos().chooseFiles(); }));
    onKey(QKeySequence(tr("B", "key: where the photo belongs")), m_zoneArea,
          [this] { m_zone->photos().placeCurrent(); });
    onKey(QKeySequence(QKeySequence::Paste), m_zoneArea, whenWritable([this] { m_zone->photos().paste(); }));
    onKey(QKeySequence(tr("T", "key: note")), m_zoneArea, [this] { m_zone->writeNote(); });
    onKey(QKeySequence(tr("C", "key: cautions")), m_zoneArea, [this] { m_zone->toggleCautions(); });
    onKey(QKeySequence(tr("L", "key: as found or as left")), m_zoneArea, [this] { m_zone->togglePhase(); });
    onKey(QKeySequence(Qt::Key_Escape), m_zoneArea, [this] {
        if (m_zone->isWritingNote())
            m_zone->setFocus();
        else
            m_zone->grades().cancelReason();
    });
    for (const auto key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Down})
        onKey(QKeySequence(key), m_zoneArea, [this] { step(1); });
    onKey(QKeySequence(Qt::Key_Up), m_zoneArea, [this] { step(-1); });
    onKey(QKeySequence(tr("O", "key: next zone not looked at")), m_zoneArea, [this] { goToNextOpenZone(); });
    onKey(QKeySequence(Qt::Key_Escape), m_side, [this] { m_zone->setFocus(); });
    onKey(QKeySequence(Qt::Key_F2), this, [this] { m_zone->setFocus(); });
    onKey(QKeySequence(Qt::Key_F3), this, [this] { openSide(readingsSide); });
    onKey(QKeySequence(Qt::Key_F4), this, [this] { openSide(workSide); });
    onKey(QKeySequence(Qt::Key_F5), this, [this] { openSide(chargeSide); });
    onKey(QKeySequence(Qt::Key_F6), this, [this] { openSide(closingSide); });
}

} // namespace padside
