// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/readings_panel.h"

#include "core/review/record_at.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/draft_field.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/measure_field.h"
#include "ui/pages/visit/suspicion_list.h"
#include "ui/pages/visit/verdict_label.h"

#include <QGridLayout>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int fieldWidth = 128;
constexpr int linesOfRow = 3; // label and field; what was understood; what it means

/// The parts a reading can be taken at: each once, in the order of the list.
std::vector<Part> fittedParts(const VisitSheet& sheet)
{
    std::vector<Part> parts;
    for (const ZoneLine& line : sheet.zones) {
        if (std::ranges::find(parts, line.part.id, &Part::id) == parts.end())
            parts.push_back(line.part);
    }
    return parts;
}

/// A call-out has no season of its own: what either season asks for is at hand.
bool isUsual(const ReadingKind& kind, VisitReason season)
{
    return std::ranges::count(kind.seasons, season) > 0 || (season == VisitReason::callOut && !kind.seasons.empty());
}

} // namespace

ReadingsPanel::ReadingsPanel(RecordBook& book, VisitLog& log, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_asFound(new QPushButton(tr("As found")))
    , m_asLeft(new QPushButton(tr("As left")))
    , m_search(new QLineEdit)
    , m_rowsHolder(new QWidget)
    , m_scroll(new QScrollArea)
    , m_grid(new QGridLayout(m_rowsHolder))
    , m_pointsToBar(new QWidget)
    , m_pointsTo(new QLabel)
{
    m_search->setObjectName(u"readingSearch"_s);
    m_search->setPlaceholderText(tr("Find another reading"));
    m_search->setAccessibleName(tr("Find another reading"));
    makeLarge(*m_search);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(m_rowsHolder);
    auto* phases = new QHBoxLayout;
    phases->setSpacing(4);
    m_asFound->setObjectName(u"readingsAsFound"_s);
    m_asFound->setAccessibleName(tr("Readings as found"));
    m_asLeft->setObjectName(u"readingsAsLeft"_s);
    m_asLeft->setAccessibleName(tr("Readings as left"));
    for (QPushButton* button : {m_asFound, m_asLeft}) {
        makeLarge(*button);
        phases->addWidget(button);
    }
    makeChoice(*m_asFound, [this] { choose(Phase::asFound); });
    makeChoice(*m_asLeft, [this] { choose(Phase::asLeft); });
    showChosen(*m_asFound, true);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(phases);
    layout->addWidget(m_search);
    layout->addWidget(m_pointsToBar);
    layout->addWidget(m_scroll, 1);
    m_pointsTo->setObjectName(u"pointsTo"_s);
    m_pointsTo->setWordWrap(true);
    auto* why = new QPushButton(tr("Why"));
    why->setObjectName(u"whySuspicion"_s);
    why->setAccessibleName(tr("Why: show what speaks for and against it"));
    auto* bar = new QHBoxLayout(m_pointsToBar);
    bar->setContentsMargins(0, 0, 0, 0);
    bar->addWidget(m_pointsTo, 1);
    bar->addWidget(why);
    m_pointsToBar->hide();
    connect(why, &QPushButton::clicked, this, [this] {
        m_scroll->verticalScrollBar()->setValue(m_suspicions->y()); // as far down as it goes
    });
    connect(m_search, &QLineEdit::textChanged, this, &ReadingsPanel::filter);
}

QString ReadingsPanel::keyOf(const Row& row) const
{
    const std::string when = m_phase == Phase::asLeft ? "reading-as-left/" : "reading/";
    return QString::fromStdString(m_log.draftKey(when + row.kind.code
                                                 + (row.part ? "/" + row.part->text() : std::string())
                                                 + (row.zone ? "/" + row.zone->text() : std::string())));
}

const MeasuringUnit& ReadingsPanel::unitOf(const ReadingKind& kind) const
{
    return unitFor(kind.quantity, m_book.surroundings().units, kind.metricUnit, kind.customaryUnit);
}

ReadingsPanel::Row& ReadingsPanel::addRow(const ReadingKind& kind, const Part* part, const QString& name, bool usual)
{
    auto made = std::make_unique<Row>();
    Row& row = *made;
    row.kind = kind;
    if (part)
        row.part = part->id;
    row.name = name;
    row.usual = usual;
    row.label = new QLabel(name);
    row.label->setWordWrap(true);
    row.label->setToolTip(translated(m_book, kind.where));
    row.last = quietLabel();
    row.field = new MeasureField(m_book, kind.quantity, unitOf(kind));
    row.field->setUsual(kind.lowest, kind.highest);
    row.field->setName(name);
    row.field->setFixedWidth(fieldWidth);
    row.field->edit().setObjectName(u"reading-"_s + QString::fromStdString(kind.code));
    row.field->edit().setToolTip(translated(m_book, kind.where));
    const int line = linesOfRow * static_cast<int>(m_rows.size());
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(row.label);
    words->addWidget(row.last);
    words->addStretch();
    m_grid->addLayout(words, line, 0);
    m_grid->addWidget(row.field, line, 1, Qt::AlignTop);
    row.echo = row.field->takeEcho();
    row.echo->setAlignment(Qt::AlignRight);
    m_grid->addWidget(row.echo, line + 1, 0, 1, 2);
    row.verdict = new VerdictLabel(m_book);
    row.verdict->setObjectName(u"verdict-"_s + QString::fromStdString(kind.code));
    row.verdict->setContentsMargins(0, 0, 0, 8);
    m_grid->addWidget(row.verdict, line + 2, 0, 1, 2);
    connect(&row.field->edit(), &QLineEdit::textChanged, this, &ReadingsPanel::judge);
    connect(row.field, &MeasureField::entered, this, [this, &row](const Measure& value) { enter(row, value); });
    connect(row.field, &MeasureField::emptied, this, [this, &row] { enter(row, std::nullopt); });
    connect(&row.field->edit(), &QLineEdit::returnPressed, this, [this, &row] {
        if (row.field->isEmpty() || row.field->understood()) // a text that needs a second look keeps the cursor
            goOnFrom(row);
    });
    m_rows.push_back(std::move(made));
    return row;
}

void ReadingsPanel::makeZoneRows(const VisitSheet& sheet)
{
    for (const ReadingKind& kind : m_book.catalogue().readingKinds()) {
        for (const ZoneLine& line : sheet.zones) {
            if (std::ranges::find(kind.zonesOf, line.part.kind) == kind.zonesOf.end())
                continue;
            const QString name
                = tr("%1: %2").arg(translated(m_book, kind.name), zoneTitle(m_book, line.part, line.zone));
            addRow(kind, &line.part, name, false).zone = line.zone.id;
        }
    }
}

void ReadingsPanel::makeRows(const VisitSheet& sheet)
{
    m_rows.clear();
    m_suspicions = nullptr;
    delete m_rowsHolder->layout();
    qDeleteAll(m_rowsHolder->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
    m_grid = new QGridLayout(m_rowsHolder);
    m_grid->setContentsMargins(0, 4, 8, 0);
    m_grid->setVerticalSpacing(4);
    m_grid->setColumnStretch(0, 1);
    const std::vector<Part> parts = fittedParts(sheet);
    makeZoneRows(sheet);
    for (const bool usualFirst : {true, false}) {
        for (const ReadingKind& kind : m_book.catalogue().readingKinds()) {
            const bool usual = isUsual(kind, sheet.visit.reason);
            if (usual != usualFirst || !kind.zonesOf.empty())
                continue;
            const QString name = translated(m_book, kind.name);
            if (kind.partKind.empty()) {
                addRow(kind, nullptr, name, usual);
                continue;
            }
            const auto ofKind = std::ranges::count(parts, kind.partKind, &Part::kind);
            for (const Part& part : parts) {
                if (part.kind == kind.partKind)
                    addRow(kind, &part, ofKind > 1 ? tr("%1 (%2)").arg(name, partTitle(m_book, part)) : name, usual);
            }
        }
    }
    m_suspicions = new SuspicionList(m_book);
    const int line = linesOfRow * static_cast<int>(m_rows.size());
    m_grid->addWidget(m_suspicions, line, 0, 1, 2);
    m_grid->setRowStretch(line + 1, 1);
}

void ReadingsPanel::showSheet(const VisitSheet& sheet, bool mayWrite)
{
    m_filling = true;
    m_sheet = sheet;
    m_past = recordBefore(sheet.record, sheet.visit);
    std::vector<PartId> parts;
    for (const Part& part : fittedParts(sheet))
        parts.push_back(part.id);
    if (sheet.visit.id != m_visit || sheet.visit.reason != m_season || parts != m_parts) {
        m_visit = sheet.visit.id;
        m_season = sheet.visit.reason;
        m_parts = parts;
        makeRows(sheet);
    }
    m_before.clear();
    for (const auto& row : m_rows) {
        row->standing = sheet.readingToday(row->kind.code, row->part, m_phase, row->zone);
        row->field->showEntered(keyOf(*row),
                                row->standing ? std::optional<Measure>(row->standing->value) : std::nullopt);
        row->field->edit().setReadOnly(!mayWrite);
        const auto before = sheet.readingBefore(row->kind.code, row->part, row->zone);
        if (before) {
            m_before.push_back({row->kind.code, row->part, before->value.si, row->zone});
            const std::string last = showMeasure(before->value.si, unitOf(row->kind), m_book.numberStyle());
            row->last->setText(
                tr("last %1, %2").arg(QString::fromStdString(last), m_book.speaker().shownDate(before->on)));
        }
        row->last->setVisible(before.has_value());
    }
    m_filling = false;
    judge();
    filter();
}

void ReadingsPanel::showZone(ZoneId zone)
{
    if (zone == m_zone)
        return;
    m_zone = zone;
    filter();
}

void ReadingsPanel::enter(Row& row, const std::optional<Measure>& value)
{
    if (!value) {
        if (!row.standing || m_log.remove(Reading(*row.standing)))
            row.field->settle(std::nullopt);
        return;
    }
    Reading reading = row.standing.value_or(Reading{});
    reading.kind = row.kind.code;
    reading.partId = row.part;
    reading.zoneId = row.zone;
    reading.phase = m_phase;
    reading.value = *value;
    const auto keep = QPointer<MeasureField>(row.field); // writing shows the sheet again
    if (m_log.put(reading) && keep)
        keep->settle(value);
}

void ReadingsPanel::filter()
{
    const QString wanted = m_search->text().trimmed();
    for (const auto& row : m_rows) {
        const bool inUse = row->zone ? row->zone == m_zone || row->field->edit().hasUnfinished()
                                     : row->usual || row->standing || row->field->edit().hasUnfinished();
        const bool visible = wanted.isEmpty() ? inUse : row->name.contains(wanted, Qt::CaseInsensitive);
        row->label->setVisible(visible);
        row->field->setVisible(visible);
        row->echo->setVisible(visible && !row->echo->text().isEmpty());
        row->verdict->setVisible(visible && !row->verdict->isBlank());
        if (!visible)
            row->last->hide();
        else
            row->last->setVisible(!row->last->text().isEmpty());
    }
}

void ReadingsPanel::choose(Phase phase)
{
    showChosen(*m_asFound, phase == Phase::asFound);
    showChosen(*m_asLeft, phase == Phase::asLeft);
    if (phase == m_phase)
        return;
    m_phase = phase;
    Q_EMIT phaseChosen();
}

void ReadingsPanel::goOnFrom(const Row& row)
{
    auto next = std::ranges::find_if(m_rows, [&](const auto& one) { return one.get() == &row; });
    while (next != m_rows.end() && ++next != m_rows.end()) {
        if ((*next)->field->isVisibleTo(this)) {
            (*next)->field->edit().setFocus();
            return;
        }
    }
    m_search->setFocus(); // after the last: another one
}

void ReadingsPanel::focusReading(const std::string& kind, Phase phase)
{
    choose(phase);
    for (const auto& row : m_rows) {
        if (row->kind.code == kind && row->field->isVisibleTo(this)) {
            row->field->edit().setFocus();
            return;
        }
    }
    focusFirst();
}

void ReadingsPanel::focusFirst()
{
    for (const auto& row : m_rows) {
        if (!row->zone && row->field->isVisibleTo(this) && row->field->isEmpty()) {
            row->field->edit().setFocus();
            return;
        }
    }
    m_search->setFocus();
}

QStringList ReadingsPanel::unfinished() const
{
    QStringList names;
    for (const auto& row : m_rows) {
        if (row->field->edit().hasUnfinished())
            names << tr("%1 “%2”").arg(row->name, row->field->edit().text());
    }
    return names;
}

} // namespace padside
