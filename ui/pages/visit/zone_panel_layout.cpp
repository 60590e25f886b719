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

#include <QGridLayout>
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
    auto* sight = new QWidget;
    auto* layout = new QVBoxLayout(sight);
    layout->setContentsMargins(sideMargin, 10 - outlineRoom, sideMargin, 0);
    layout->setSpacing(4);
    layout->addLayout(head);
    layout->addWidget(m_caution);
    layout->addWidget(m_phaseRow);
    layout->addLayout(makeComparison(), 1);
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
    foot->setSpacing(4);
    foot->addLayout(touch);
    foot->addWidget(m_note);
    return foot;
}

QLayout* ZonePanel::makeComparison()
{
    m_lastHeading->setObjectName(u"lastHeading"_s);
    m_lastText->setObjectName(u"lastText"_s);
    m_todayHeading->setWordWrap(true);
    auto* today = new QHBoxLayout; // the button beside the words: below the frame it would cost a small screen a row
    today->setSpacing(4);
    today->addWidget(m_todayHeading, 1);
    today->addWidget(m_addPhoto);
    auto* grid = new QGridLayout; // so that both frames stand at one height
    grid->setHorizontalSpacing(16);
    grid->setVerticalSpacing(4);
    grid->addWidget(m_lastHeading, 0, 0);
    grid->addWidget(m_lastFrame, 1, 0);
    grid->addWidget(m_lastText, 2, 0, Qt::AlignTop);
    grid->addLayout(today, 0, 1);
    grid->addWidget(m_todayFrame, 1, 1);
    grid->addWidget(m_photos, 2, 1);
    grid->setRowStretch(1, 1);
    for (const int column : {0, 1})
        grid->setColumnStretch(column, 1);
    return grid;
}

} // namespace padside
