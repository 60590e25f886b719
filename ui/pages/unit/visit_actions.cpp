// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/visit_actions.h"

#include "ui/models/speaker.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace padside {

VisitActions::VisitActions(const LocalSpeaker& speaker, QWidget* parent)
    : QWidget(parent)
    , m_speaker(speaker)
    , m_first(new QLabel(tr("Start the first visit:"), this))
    , m_spring(startButton(u"startSpring"_s, tr("Start &spring visit"), tr("Start a spring visit today"),
                           VisitReason::spring))
    , m_fall(startButton(u"startFall"_s, tr("Start fa&ll visit"), tr("Start a fall visit today"), VisitReason::fall))
    , m_callOut(
          startButton(u"startCallOut"_s, tr("Start &call-out"), tr("Start a call-out today"), VisitReason::callOut))
    , m_resume(button(u"resumeVisit"_s, tr("&Resume open visit"), tr("Go on with the visit that is still open")))
    , m_summary(
          button(u"visitSummary"_s, tr("Visit s&ummary"), tr("Show the summary of the last visit, for print or PDF")))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    m_first->setObjectName(u"firstVisit"_s);
    QFont bold = m_first->font();
    bold.setBold(true);
    m_first->setFont(bold);
    row->addWidget(m_first);
    for (QPushButton* one : buttons())
        row->addWidget(one);
    row->addStretch(1);
    connect(m_resume, &QPushButton::clicked, this, [this] { Q_EMIT resumeRequested(m_open); });
    connect(m_summary, &QPushButton::clicked, this, [this] { Q_EMIT summaryRequested(m_last); });
}

std::vector<QPushButton*> VisitActions::buttons() const
{
    return {m_resume, m_spring, m_fall, m_callOut, m_summary};
}

QPushButton* VisitActions::button(const QString& name, const QString& text, const QString& what)
{
    auto* made = new QPushButton(text, this);
    made->setObjectName(name);
    made->setAccessibleName(QString(text).remove(u'&'));
    made->setAccessibleDescription(what);
    made->setToolTip(what);
    made->setAutoDefault(true); // Enter presses it, as the space bar does
    return made;
}

QPushButton* VisitActions::startButton(const QString& name, const QString& text, const QString& what,
                                       VisitReason reason)
{
    QPushButton* made = button(name, text, what);
    connect(made, &QPushButton::clicked, this, [this, reason] { Q_EMIT startRequested(reason); });
    return made;
}

void VisitActions::setSnapshot(const UnitSnapshot& snapshot, bool mayWrite)
{
    m_open = VisitId{};
    m_last = snapshot.record.visits.empty() ? VisitId{} : snapshot.record.visits.back().id;
    for (const Visit& visit : snapshot.record.visits) {
        if (!visit.isOpen())
            continue;
        m_open = visit.id;
        const QString reason = shown(m_speaker.translate(std::string(wordOf(visit.reason))));
        m_resume->setText(tr("&Resume open visit of %1 (%2)").arg(m_speaker.shownDate(visit.on), reason));
        m_resume->setAccessibleName(m_resume->text().remove(u'&'));
        break;
    }
    const bool open = !m_open.isNull();
    m_resume->setVisible(open);
    for (QPushButton* start : {m_spring, m_fall, m_callOut}) {
        start->setVisible(!open);
        start->setEnabled(mayWrite && !snapshot.record.unit.retiredOn);
    }
    m_first->setVisible(snapshot.record.visits.empty() && mayWrite && !snapshot.record.unit.retiredOn);
    m_summary->setEnabled(!m_last.isNull());
}

} // namespace padside
