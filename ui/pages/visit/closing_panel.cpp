// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/closing_panel.h"

#include "core/review/outlook_change.h"
#include "core/review/visit_changes.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/draft_note.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/outlook_change_words.h"

#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int noteHeight = 72;

QPushButton* largeButton(const QString& text, const QString& objectName)
{
    auto* button = new QPushButton(text);
    button->setObjectName(objectName);
    makeLarge(*button);
    return button;
}

/// Shown one by one; the rest is counted.
bool isWorthASentence(ZoneChangeKind kind)
{
    return kind != ZoneChangeKind::same && kind != ZoneChangeKind::firstSeen;
}

} // namespace

ClosingPanel::ClosingPanel(RecordBook& book, VisitLog& log, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_changes(new QLabel)
    , m_outlookHeading(headingLabel(tr("What that does to the outlook")))
    , m_outlook(new QLabel)
    , m_open(new QLabel)
    , m_goToOpen(largeButton(tr("Go to the next of them"), u"goToOpenZone"_s))
    , m_note(new DraftNote(book))
    , m_close(largeButton(tr("Close the visit"), u"closeVisit"_s))
    , m_question(new QWidget)
    , m_questionText(new QLabel)
    , m_confirm(largeButton(tr("Close it now"), u"confirmClose"_s))
    , m_keepOpen(largeButton(tr("Keep it open"), u"keepOpen"_s))
    , m_correcting(new QWidget)
    , m_reason(new QLineEdit)
    , m_correct(largeButton(tr("Correct an entry"), u"correctEntry"_s))
{
    for (QLabel* label : {m_changes, m_open, m_questionText}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    m_outlook->setTextFormat(Qt::RichText);
    m_outlook->setWordWrap(true);
    m_outlook->setObjectName(u"outlookChanges"_s);
    m_changes->setObjectName(u"changes"_s);
    m_open->setObjectName(u"notLookedAt"_s);
    m_questionText->setObjectName(u"closeQuestion"_s);
    m_note->setObjectName(u"visitNote"_s);
    m_note->setAccessibleName(tr("Note on the whole visit"));
    m_note->setPlaceholderText(tr("Note on the whole visit"));
    m_note->setFixedHeight(noteHeight);
    m_reason->setObjectName(u"correctionReason"_s);
    m_reason->setAccessibleName(tr("Why an entry is corrected"));
    m_reason->setPlaceholderText(tr("Why? (needed)"));
    makeLarge(*m_reason);

    auto* question = new QVBoxLayout(m_question);
    question->setContentsMargins(0, 0, 0, 0);
    question->addWidget(m_questionText);
    auto* answers = new QHBoxLayout;
    answers->addWidget(m_confirm);
    answers->addWidget(m_keepOpen);
    question->addLayout(answers);
    auto* correcting = new QVBoxLayout(m_correcting);
    correcting->setContentsMargins(0, 0, 0, 0);
    correcting->addWidget(quietLabel(
        tr("This visit is closed. An entry can be corrected with a reason; the old one stays in the record.")));
    correcting->addWidget(m_reason);
    correcting->addWidget(m_correct);

    auto* content = new QWidget;
    auto* text = new QVBoxLayout(content);
    text->setContentsMargins(0, 0, 8, 0);
    text->addWidget(headingLabel(tr("What changed")));
    text->addWidget(m_changes);
    text->addSpacing(8);
    text->addWidget(m_outlookHeading);
    text->addWidget(m_outlook);
    text->addSpacing(8);
    text->addWidget(m_open);
    text->addWidget(m_goToOpen);
    text->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(content);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(scroll, 1);
    layout->addWidget(m_note);
    layout->addWidget(m_close);
    layout->addWidget(m_question);
    layout->addWidget(m_correcting);
    setAsking(false);

    connect(m_note, &DraftNote::leftWith, this, [this](const QString& note) {
        if (m_log.setVisitNote(note.toStdString()))
            m_note->settle(note);
    });
    connect(m_goToOpen, &QPushButton::clicked, this, &ClosingPanel::nextOpenZoneRequested);
    connect(m_close, &QPushButton::clicked, this, &ClosingPanel::askToClose);
    connect(m_keepOpen, &QPushButton::clicked, this, [this] {
        setAsking(false);
        m_close->setFocus(); // else it would go to the first field of the page, and the next key would change that
    });
    connect(m_confirm, &QPushButton::clicked, this, [this] {
        setAsking(false);
        Q_EMIT closeConfirmed();
    });
    connect(m_correct, &QPushButton::clicked, this, &ClosingPanel::startCorrecting);
    connect(m_reason, &QLineEdit::returnPressed, this, &ClosingPanel::startCorrecting);
}

void ClosingPanel::showSheet(const VisitSheet& sheet, const QStringList& unfinished)
{
    m_unfinished = unfinished;
    const bool open = sheet.visit.isOpen();
    m_note->showNote(QString::fromStdString(m_log.draftKey("visit-note")), shown(sheet.visit.note));
    m_note->setReadOnly(!open);
    m_close->setVisible(open && m_question->isHidden());
    if (!open)
        setAsking(false);
    m_close->setVisible(open && m_question->isHidden());
    m_correcting->setVisible(!open);
    const bool correcting = !m_log.correctionReason().empty();
    m_reason->setEnabled(!correcting);
    m_correct->setText(correcting ? tr("Done correcting") : tr("Correct an entry"));
    showChanges(sheet);
    showOutlook(sheet);
}

void ClosingPanel::showOutlook(const VisitSheet& sheet)
{
    const auto changes = outlookChanges(sheet.record, m_book.catalogue(), *m_book.outlookModel(), sheet.visit.id);
    const QString text = outlookChangesSaid(m_book, sheet.record, changes);
    m_outlook->setText(text);
    m_outlookHeading->setVisible(!text.isEmpty());
    m_outlook->setVisible(!text.isEmpty());
}

void ClosingPanel::showChanges(const VisitSheet& sheet)
{
    const VisitChanges changes = visitChanges(sheet.record, m_book.catalogue(), sheet.visit.id);
    QStringList lines;
    for (const ZoneChange& change : changes.zones) {
        if (isWorthASentence(change.kind))
            lines << u"– "_s + m_book.speaker().said(change.sentence);
    }
    if (const int count = changes.count(ZoneChangeKind::firstSeen))
        lines << u"– "_s + tr("Zones seen for the first time: %1.").arg(count);
    if (const int count = changes.count(ZoneChangeKind::same))
        lines << u"– "_s + tr("Zones the same as before: %1.").arg(count);
    if (!changes.readings.empty())
        lines << u"– "_s + tr("Readings taken: %1.").arg(changes.readings.size());
    if (!changes.treatments.empty())
        lines << u"– "_s + tr("Work done: %1.").arg(changes.treatments.size());
    if (!changes.charges.empty())
        lines << u"– "_s + tr("Refrigerant entries: %1.").arg(changes.charges.size());
    m_changes->setText(lines.isEmpty() ? tr("Nothing has been entered yet.") : lines.join(u'\n'));

    m_left = static_cast<int>(changes.notLookedAt.size());
    QStringList parts;
    for (const ZoneId zone : changes.notLookedAt) {
        const Part* part = partOfZone(sheet.record, zone);
        const Zone* one = findZone(sheet.record, zone);
        if (!part || !one)
            continue;
        const QString title = partTitle(m_book, *part);
        const QString name = zoneTitle(m_book, *part, *one);
        if (!parts.isEmpty() && parts.last().startsWith(title + u": "_s))
            parts.last() += u", "_s + name;
        else
            parts << title + u": "_s + name;
    }
    m_open->setText(m_left == 0
                        ? tr("Every zone was looked at.")
                        : (sheet.visit.isOpen() ? tr("Not looked at yet (%1):") : tr("Not looked at (%1):")).arg(m_left)
                            + u'\n' + parts.join(u'\n'));
    m_goToOpen->setVisible(m_left > 0 && sheet.visit.isOpen());
}

void ClosingPanel::askToClose()
{
    const bool ready = m_unfinished.isEmpty();
    QString text;
    if (!ready)
        text = tr("Not entered yet: %1. Enter or clear it first, so that nothing is lost.")
                   .arg(m_unfinished.join(u"; "_s));
    else if (m_left > 0)
        text = tr("Zones not looked at: %1. Once closed, entries can no longer be undone, only corrected with a "
                  "reason. Close it?")
                   .arg(m_left);
    else
        text = tr("Once closed, entries can no longer be undone, only corrected with a reason. Close it?");
    m_questionText->setText(text);
    m_confirm->setVisible(ready);
    setAsking(true);
    (ready ? m_confirm : m_keepOpen)->setFocus();
}

void ClosingPanel::setAsking(bool asking)
{
    m_question->setVisible(asking);
    m_close->setVisible(!asking);
}

void ClosingPanel::startCorrecting()
{
    if (!m_log.correctionReason().empty()) {
        m_log.correctBecause({});
        m_reason->clear();
    } else if (const QString reason = m_reason->text().trimmed(); reason.isEmpty()) {
        m_reason->setFocus();
        return;
    } else {
        m_log.correctBecause(reason.toStdString());
    }
    Q_EMIT correctingChanged();
}

void ClosingPanel::focusFirst()
{
    if (m_close->isVisibleTo(this))
        m_close->setFocus();
    else if (m_question->isVisibleTo(this))
        m_keepOpen->setFocus();
    else
        m_reason->setFocus();
}

} // namespace padside
