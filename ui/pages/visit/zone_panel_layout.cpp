// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What stands where on the panel of a zone.

#include "ui/pages/visit/caution_line.h"
#include "ui/pages/visit/grade_choice.h"
#include "ui/pages/visit/photo_frame.h"
#include "ui/pages/visit/photo_strip.h"
#include "ui/pages/visit/wetness_choice.h"
#include "ui/pages/visit/zone_panel.h"
#include "ui/pages/visit/zone_panel_room.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

QWidget* ZonePanel::makeSight()
{
    auto* head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(m_place);
    auto* phases = new QHBoxLayout(m_phaseRow);
    phases->setContentsMargins(0, 0, 0, 0);
    phases->addWidget(m_asFound);
    phases->addWidget(m_asLeft);
    phases->addStretch();
    auto* compare = new QHBoxLayout;
    compare->setSpacing(16);
    compare->addWidget(makeLastTime(), 1);
    compare->addWidget(makeToday(), 1);
    auto* sight = new QWidget;
    auto* layout = new QVBoxLayout(sight);
    layout->setContentsMargins(sideMargin, 10 - outlineRoom, sideMargin, 0);
    layout->setSpacing(5);
    layout->addLayout(head);
    layout->addWidget(m_caution);
    layout->addWidget(m_phaseRow);
    layout->addLayout(compare, 1);
    layout->addWidget(m_grades);
    return sight;
}

QLayout* ZonePanel::makeFoot()
{
    auto* touch = new QHBoxLayout;
    touch->setSpacing(4);
    touch->addWidget(m_same);
    touch->addStretch();
    touch->addWidget(m_wetness);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(sideMargin, 0, sideMargin, 0);
    foot->setSpacing(6);
    foot->addLayout(touch);
    foot->addWidget(m_note);
    return foot;
}

QWidget* ZonePanel::makeLastTime()
{
    auto* side = new QWidget;
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_lastHeading);
    layout->addWidget(m_lastFrame, 1);
    layout->addWidget(m_lastText);
    m_lastHeading->setObjectName(u"lastHeading"_s);
    m_lastText->setObjectName(u"lastText"_s);
    return side;
}

QWidget* ZonePanel::makeToday()
{
    auto* side = new QWidget;
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    auto* head = new QHBoxLayout; // the button beside the words: below the frame it would cost a small screen a row
    head->setSpacing(4);
    head->addWidget(m_todayHeading, 1);
    head->addWidget(m_addPhoto);
    m_todayHeading->setWordWrap(true);
    layout->addLayout(head);
    layout->addWidget(m_todayFrame, 1);
    layout->addWidget(m_photos);
    return side;
}

} // namespace padside
