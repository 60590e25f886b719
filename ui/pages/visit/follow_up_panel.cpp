// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/follow_up_panel.h"

#include "ui/drawing/level_labels.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/draft_field.h"
#include "ui/pages/visit/entry_lines.h"
#include "ui/pages/visit/lettering.h"

#include <QDateEdit>
#include <QFormLayout>
#include <QPushButton>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int daysUntilEarliest = 7;
constexpr int daysUntilLatest = 30;

QDateEdit* dayEdit(const RecordBook& book, const QString& objectName, const QString& name)
{
    auto* edit = new QDateEdit;
    edit->setObjectName(objectName);
    edit->setAccessibleName(name);
    edit->setCalendarPopup(true);
    edit->setLocale(book.surroundings().locale);
    QString format = book.surroundings().locale.dateFormat(QLocale::ShortFormat);
    if (!format.contains(u"yyyy"_s))
        format.replace(u"yy"_s, u"yyyy"_s);
    edit->setDisplayFormat(format);
    makeLarge(*edit);
    return edit;
}

} // namespace

FollowUpPanel::FollowUpPanel(RecordBook& book, VisitLog& log, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_why(new DraftField(book, u"followUpWhy"_s, tr("Why to look again")))
    , m_earliest(dayEdit(book, u"followUpEarliest"_s, tr("Look again from")))
    , m_latest(dayEdit(book, u"followUpLatest"_s, tr("Look again until")))
    , m_enter(new QPushButton(tr("Promise to look again")))
    , m_entries(new EntryLines)
{
    m_why->setPlaceholderText(tr("like: bottom was wet, see it dry"));
    m_why->setToolTip(m_why->placeholderText());
    m_enter->setObjectName(u"enterFollowUp"_s);
    makeLarge(*m_enter);
    auto* form = new QFormLayout;
    form->addRow(tr("Why"), m_why);
    form->addRow(tr("From"), m_earliest);
    form->addRow(tr("Until"), m_latest);
    form->addRow(QString(), m_enter);
    levelLabels(*form);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(headingLabel(tr("Look again")));
    layout->addWidget(quietLabel(tr("A promise for this zone, beside the checks that are worked out.")));
    layout->addLayout(form);
    layout->addWidget(m_entries);
    connect(m_enter, &QPushButton::clicked, this, &FollowUpPanel::enter);
    connect(m_why, &QLineEdit::returnPressed, this, &FollowUpPanel::enter);
}

void FollowUpPanel::showLine(const ZoneLine& line, const VisitSheet& sheet, bool mayWrite)
{
    if (!m_line || m_line->zone.id != line.zone.id) {
        m_why->show(QString::fromStdString(m_log.draftKey("look-again/" + line.zone.id.text())), {});
        const QDate day = toQDate(sheet.visit.on);
        m_earliest->setDate(day.addDays(daysUntilEarliest));
        m_latest->setDate(day.addDays(daysUntilLatest));
    }
    m_line = line;
    for (QWidget* control : std::initializer_list<QWidget*>{m_why, m_earliest, m_latest, m_enter})
        control->setEnabled(mayWrite && sheet.visit.isOpen());
    std::vector<EntryLines::Line> lines;
    for (const FollowUp& one : sheet.followUps) {
        if (one.zoneId != line.zone.id)
            continue;
        EntryLines::Line entry{
            tr("%1 to %2: %3")
                .arg(m_book.speaker().shownDate(one.earliest), m_book.speaker().shownDate(one.latest), shown(one.why)),
            {}};
        if (sheet.visit.isOpen())
            entry.takeBack = [this, one] { m_log.remove(one); };
        lines.push_back(entry);
    }
    m_entries->showLines(lines);
}

void FollowUpPanel::suggest(const QString& why)
{
    if (m_why->text().trimmed().isEmpty())
        m_why->setText(why);
    m_why->setFocus();
}

void FollowUpPanel::enter()
{
    if (!m_line)
        return;
    if (m_why->text().trimmed().isEmpty()) {
        Q_EMIT refused(tr("Say why it should be looked at again."));
        m_why->setFocus();
        return;
    }
    if (m_latest->date() < m_earliest->date()) {
        Q_EMIT refused(tr("The last day to look again is before the first. Change one of them."));
        m_latest->setFocus();
        return;
    }
    FollowUp promise;
    promise.zoneId = m_line->zone.id;
    promise.earliest = fromQDate(m_earliest->date());
    promise.latest = fromQDate(m_latest->date());
    promise.why = m_why->text().trimmed().toStdString();
    if (m_log.put(promise))
        m_why->settle({});
}

} // namespace padside
