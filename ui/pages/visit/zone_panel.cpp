// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/zone_panel.h"

#include "core/store/photo_files.h"
#include "core/store/store.h"
#include "ui/drawing/focus_outline.h"
#include "ui/drawing/page_area.h"
#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/caution_line.h"
#include "ui/pages/visit/grade_choice.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/photo_frame.h"
#include "ui/pages/visit/photo_strip.h"
#include "ui/pages/visit/wetness_choice.h"
#include "ui/pages/visit/zone_panel_room.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int frameEdge = 900; // pixels a photo is read at: sharp on a large screen, quick on a small one
constexpr int zoneNoteHeight = 50;

QPushButton* phaseButton(const QString& text)
{
    auto* button = new QPushButton(text);
    makeLarge(*button);
    return button;
}

} // namespace

ZonePanel::ZonePanel(RecordBook& book, VisitLog& log, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_title(headingLabel())
    , m_place(quietLabel())
    , m_caution(new CautionLine(theme))
    , m_phaseRow(new QWidget)
    , m_asFound(phaseButton(tr("As found")))
    , m_asLeft(phaseButton(tr("As left  L")))
    , m_lastFrame(new PhotoFrame(theme))
    , m_lastHeading(new QLabel)
    , m_lastText(quietLabel())
    , m_todayFrame(new PhotoFrame(theme))
    , m_photos(new PhotoStrip(book, log))
    , m_addPhoto(new QPushButton(tr("Add photo  P")))
    , m_todayHeading(new QLabel)
    , m_grades(new GradeChoice(book, theme))
    , m_wetness(new WetnessChoice(book))
    , m_same(new QPushButton(tr("Same as last time  S")))
    , m_note(new QPlainTextEdit)
{
    setObjectName(u"zonePanel"_s);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("The zone at hand"));
    m_title->setObjectName(u"zoneTitle"_s);
    m_place->setWordWrap(false);
    m_title->setWordWrap(true);
    m_lastHeading->setWordWrap(true);
    m_asFound->setObjectName(u"asFound"_s);
    m_asLeft->setObjectName(u"asLeft"_s);
    m_asLeft->setAccessibleName(tr("As left"));
    m_same->setObjectName(u"sameAsLastTime"_s);
    m_same->setAccessibleName(tr("Same as last time"));
    makeLarge(*m_same);
    m_addPhoto->setAccessibleName(tr("Add a photo"));
    makeLarge(*m_addPhoto);
    m_note->setObjectName(u"zoneNote"_s);
    m_note->setAccessibleName(tr("Note on this zone"));
    m_note->setPlaceholderText(tr("Note (T to write, Esc when done)"));
    m_note->setTabChangesFocus(true);
    m_note->setFixedHeight(zoneNoteHeight);
    m_note->installEventFilter(this);

    m_area = new PageArea(makeSight());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(outlineRoom, outlineRoom, outlineRoom, 6);
    layout->setSpacing(4);
    layout->addWidget(m_area, 1);
    layout->addLayout(makeFoot());
    connectAll();
}

void ZonePanel::connectAll()
{
    connect(m_grades, &GradeChoice::graded, this, [this](Grade grade) {
        if (m_line)
            m_log.see(look(), grade);
        showToday();
    });
    connect(m_grades, &GradeChoice::notSeen, this, [this](NotSeenReason reason) {
        if (m_line)
            m_log.notSee(look(), reason);
        showToday();
    });
    connect(m_wetness, &WetnessChoice::chosen, this, &ZonePanel::setWetness);
    connect(m_same, &QPushButton::clicked, this, &ZonePanel::sameAsLastTime);
    makeChoice(*m_asFound, [this] { setPhase(Phase::asFound); });
    makeChoice(*m_asLeft, [this] { setPhase(Phase::asLeft); });
    connect(m_addPhoto, &QPushButton::clicked, m_photos, &PhotoStrip::chooseFiles);
    connect(m_photos, &PhotoStrip::refused, this, &ZonePanel::refused);
    connect(m_note, &QPlainTextEdit::textChanged, this, [this] {
        if (m_line && m_mayWrite && m_note->toPlainText() != m_shownNote)
            m_log.draftNote(look(), m_note->toPlainText().toStdString());
    });
}

void ZonePanel::showLine(const ZoneLine& line, const QString& place, bool mayWrite)
{
    const bool another = !m_line || m_line->zone.id != line.zone.id;
    m_line = line;
    m_mayWrite = mayWrite;
    if (another)
        m_phase = line.fittedToday ? Phase::asLeft : Phase::asFound;
    m_title->setText(tr("%1: %2").arg(partTitle(m_book, line.part), zoneTitle(m_book, line.part, line.zone)));
    m_place->setText(place);
    showCautions();
    for (QWidget* control : std::initializer_list<QWidget*>{m_grades, m_wetness, m_same, m_addPhoto})
        control->setEnabled(mayWrite);
    m_photos->setAcceptDrops(mayWrite);
    m_note->setReadOnly(!mayWrite);
    if (another)
        showLastTime();
    showToday();
}

void ZonePanel::showCautions()
{
    QStringList cautions;
    if (const PartKind* kind = m_book.catalogue().partKind(m_line->part.kind)) {
        for (const std::string& code : kind->cautions) {
            if (const Caution* caution = m_book.catalogue().caution(code))
                cautions << translated(m_book, caution->sentence);
        }
    }
    m_caution->showCautions(cautions.join(u' '));
}

void ZonePanel::toggleCautions()
{
    m_caution->toggle();
}

void ZonePanel::showEmpty()
{
    m_line.reset();
    m_title->setText(tr("This unit has no parts in the record."));
}

void ZonePanel::showLastTime()
{
    const std::optional<Finding>& last = m_line->lastSeen;
    const std::optional<Finding>& lastLook = m_line->lastLook;
    QStringList lines;
    if (last) {
        m_lastHeading->setText(
            tr("Last seen %1:  %2").arg(m_book.speaker().shownDate(last->on), sightText(m_book, *last)));
        // What the grade means stands beside its button, which is marked as that of last time.
        if (last->wetness)
            lines << tr("It was %1.").arg(translated(m_book, wordOf(*last->wetness)));
        if (!last->note.empty())
            lines << tr("“%1”").arg(shown(last->note));
    } else {
        m_lastHeading->setText(tr("Never seen before"));
    }
    if (lastLook && !lastLook->seen())
        lines << tr("%1: %2.").arg(m_book.speaker().shownDate(lastLook->on), sightText(m_book, *lastLook));
    m_lastText->setText(lines.join(u' '));
    m_same->setEnabled(m_mayWrite && last.has_value());
    QImage image;
    if (m_line->lastPhoto) {
        m_book.attempt([&] {
            image = smallImage(m_book.store().photos().path(*m_line->lastPhoto), frameEdge);
            if (image.isNull())
                image.loadFromData(m_book.store().photos().thumbnail(m_line->lastPhoto->id));
        });
    }
    if (image.isNull())
        m_lastFrame->showNothing(m_line->lastPhoto ? tr("The photo file is missing.") : tr("No earlier photo"));
    else
        m_lastFrame->showImage(image, tr("Photo of %1").arg(m_book.speaker().shownDate(m_line->lastPhoto->on)));
}

void ZonePanel::showToday()
{
    if (!m_line)
        return;
    const bool worked = !m_line->work.empty() || m_line->left || m_line->fittedToday;
    m_phaseRow->setVisible(worked);
    showChosen(*m_asFound, m_phase == Phase::asFound);
    showChosen(*m_asLeft, m_phase == Phase::asLeft);
    m_same->setText(m_line->lastSeen ? tr("Same as last time: %1  S").arg(numeral(*m_line->lastSeen->grade()))
                                     : tr("Same as last time  S"));
    m_todayHeading->setText(m_phase == Phase::asFound ? tr("This visit, as found") : tr("This visit, as left"));
    m_same->setEnabled(m_mayWrite && m_line->lastSeen.has_value());
    m_grades->showLine(*m_line, m_phase);
    m_photos->showLine(*m_line, m_phase);
    m_photos->setVisible(!m_line->photos.empty());

    const std::optional<Finding>& today = m_line->today(m_phase);
    m_wetness->showWetness(today ? today->wetness : m_log.waitingWetness(look()));
    const QString note
        = QString::fromStdString(m_log.waitingNote(look()).value_or(today ? today->note : std::string()));
    const auto owner = std::pair(m_line->zone.id, m_phase);
    if (owner != m_noteOwner || m_note->toPlainText() == m_shownNote) { // never over what is being typed
        m_noteOwner = owner;
        m_shownNote = note;
        if (m_note->toPlainText() != note)
            m_note->setPlainText(note);
    }
    showTodaysPhoto();
}

void ZonePanel::showTodaysPhoto()
{
    QImage image;
    if (!m_line->photos.empty())
        m_book.attempt([&] { image = smallImage(m_book.store().photos().path(m_line->photos.back()), frameEdge); });
    if (image.isNull())
        m_todayFrame->showNothing(m_mayWrite ? tr("Drop or paste a photo here, or press P")
                                             : tr("No photo of this visit"));
    else
        m_todayFrame->showImage(image, tr("The newest photo of this visit"));
}

void ZonePanel::setPhase(Phase phase)
{
    if (keepNote())
        m_phase = phase;
    showToday();
}

void ZonePanel::togglePhase()
{
    if (m_phaseRow->isVisibleTo(this))
        setPhase(m_phase == Phase::asFound ? Phase::asLeft : Phase::asFound);
    else
        Q_EMIT nothingToDo(tr("No work was entered on this zone, so there is nothing as left to grade. "
                              "Enter the work first: F4."));
}

void ZonePanel::setWetness(Wetness wetness)
{
    if (m_line)
        m_log.setWetness(look(), wetness);
    showToday();
}

void ZonePanel::sameAsLastTime()
{
    if (!m_line)
        return;
    if (m_line->lastSeen)
        m_log.see(look(), *m_line->lastSeen->grade());
    else
        Q_EMIT nothingToDo(tr("This zone was never seen before, so there is no grade of last time. Give one: 1 to 5."));
    showToday();
}

void ZonePanel::scrollToTop()
{
    m_area->verticalScrollBar()->setValue(0);
}

void ZonePanel::writeNote()
{
    m_note->setFocus();
    m_note->moveCursor(QTextCursor::End);
}

bool ZonePanel::isWritingNote() const
{
    return m_note->hasFocus();
}

bool ZonePanel::keepNote()
{
    if (!m_line || !m_mayWrite)
        return true;
    const QString typed = m_note->toPlainText();
    const std::optional<std::string> waiting = m_log.waitingNote(look());
    const std::optional<Finding>& today = m_line->today(m_phase);
    const std::string entered = today ? today->note : std::string();
    if (typed.toStdString() == entered && !waiting)
        return true;
    if (waiting == typed.toStdString() && !today) // already kept: it waits for a grade
        return true;
    const QString before = m_shownNote;
    m_shownNote = typed;
    if (m_log.setNote(look(), typed.toStdString()))
        return true;
    m_shownNote = before;
    return false;
}

bool ZonePanel::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_note && event->type() == QEvent::FocusOut)
        keepNote();
    const bool typing = m_note->toPlainText() != m_shownNote;
    if (watched == m_note && event->type() == QEvent::ShortcutOverride && !typing
        && isUndoOrRedo(*static_cast<QKeyEvent*>(event))) {
        event->ignore(); // undo is the visit's, not the typing's
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void ZonePanel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (hasFocus())
        paintFocusOutline(painter, rect(), palette());
}

void ZonePanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Space)
        Q_EMIT nextRequested();
    else
        QWidget::keyPressEvent(event);
}

} // namespace padside
