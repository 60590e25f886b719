// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/treatment_panel.h"

#include "ui/drawing/level_labels.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/coat_panel.h"
#include "ui/pages/visit/draft_field.h"
#include "ui/pages/visit/entry_lines.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/measure_field.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QPushButton>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

Instant later(Instant instant, double seconds)
{
    instant.utc += std::chrono::seconds(static_cast<std::int64_t>(seconds));
    return instant;
}

} // namespace

TreatmentPanel::TreatmentPanel(RecordBook& book, VisitLog& log, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_where(headingLabel())
    , m_form(new QWidget)
    , m_wholePart(new QCheckBox(tr("on the whole part")))
    , m_product(new DraftField(book, u"workProduct"_s, tr("Product used")))
    , m_maker(new DraftField(book, u"workMaker"_s, tr("Maker of the new part")))
    , m_model(new DraftField(book, u"workModel"_s, tr("Model of the new part")))
    , m_note(new DraftField(book, u"workNote"_s, tr("Note on the work")))
    , m_coat(new CoatPanel(book, log))
    , m_dryIn(new MeasureField(book, QuantityKind::duration, *unitByCode("h")))
    , m_dryBy(quietLabel())
    , m_cost(new DraftField(book, u"workCost"_s, tr("Cost")))
    , m_enter(new QPushButton(tr("Enter this work")))
    , m_entries(new EntryLines)
{
    setObjectName(u"treatmentPanel"_s);
    m_where->setWordWrap(true);
    auto* kinds = new QGridLayout;
    kinds->setSpacing(4);
    int index = 0;
    for (const auto& [kind, code, word] : codesOf(TreatmentKind{})) {
        auto* button = new QPushButton(u"%1   %2"_s.arg(index + 1).arg(translated(book, word)));
        button->setObjectName(u"work-"_s + shown(code));
        button->setAccessibleName(tr("Work: %1").arg(translated(book, word)));
        makeChoice(*button, [this, picked = kind] { pick(picked); });
        makeLarge(*button);
        kinds->addWidget(button, index / 2, index % 2);
        addDigit(*this, index + 1, *button);
        m_kinds[static_cast<std::size_t>(index++)] = button;
    }
    m_dryIn->setName(tr("Dry in how many hours"));
    m_dryIn->edit().setObjectName(u"workDryIn"_s);
    m_dryIn->edit().setPlaceholderText(tr("hours"));
    m_enter->setObjectName(u"enterWork"_s);
    makeLarge(*m_enter);
    makeLarge(*m_wholePart);

    auto* form = new QFormLayout(m_form);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::DontWrapRows);
    form->addRow(QString(), m_wholePart);
    form->addRow(tr("Product"), m_product);
    form->addRow(tr("Maker"), m_maker);
    form->addRow(tr("Model"), m_model);
    form->addRow(m_coat);
    form->addRow(tr("Note"), m_note);
    form->addRow(tr("Dry in"), m_dryIn);
    form->addRow(QString(), m_dryBy);
    form->addRow(tr("Cost"), m_cost);
    form->addRow(QString(), m_enter);
    levelLabels(*form);
    shareLabelWidth(*m_form);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_where);
    layout->addLayout(kinds);
    layout->addWidget(m_form);
    layout->addWidget(m_entries);
    layout->addStretch();

    connect(m_enter, &QPushButton::clicked, this, &TreatmentPanel::enter);
    connect(&m_dryIn->edit(), &QLineEdit::textChanged, this, [this] {
        m_keepOff.reset(); // what is typed holds
        showDryBy();
    });
    connect(m_product, &QLineEdit::textChanged, m_coat, &CoatPanel::productNamed);
    connect(m_coat, &CoatPanel::kindChosen, m_product, &QLineEdit::setText);
    connect(m_coat, &CoatPanel::lookOverWanted, this, &TreatmentPanel::lookOverWanted);
    connect(m_coat, &CoatPanel::keepOffTaken, this, [this](const Instant& until) {
        m_dryIn->settle(std::nullopt);
        m_keepOff = until;
        showDryBy();
    });
    for (DraftField* one : {m_product, m_maker, m_model, m_note, m_cost, &m_dryIn->edit()})
        connect(one, &QLineEdit::returnPressed, this, &TreatmentPanel::enter);
}

std::optional<Instant> TreatmentPanel::dryBy() const
{
    if (m_keepOff)
        return m_keepOff;
    const auto hours = m_dryIn->understood();
    return hours ? std::optional(later(m_book.now(), hours->si)) : std::nullopt;
}

void TreatmentPanel::showDryBy()
{
    const auto until = dryBy();
    m_dryBy->setText(until ? tr("Keep it dry and the unit off until %1.").arg(dayAndTime(m_book, *until)) : QString());
    static_cast<QFormLayout*>(m_form->layout())->setRowVisible(m_dryBy, until && m_kind != TreatmentKind::replace);
}

void TreatmentPanel::showLine(const ZoneLine& line, const VisitSheet& sheet, bool mayWrite)
{
    const bool another = !m_line || m_line->zone.id != line.zone.id;
    m_line = line;
    m_mayWrite = mayWrite;
    m_where->setText(tr("Work on %1").arg(zoneTitle(m_book, line.part, line.zone)));
    m_wholePart->setText(tr("on the whole part:\n%1").arg(partTitle(m_book, line.part)));
    if (another || !mayWrite)
        m_correcting.reset();
    for (QPushButton* button : m_kinds)
        button->setEnabled(mayWrite && (m_log.visit().isOpen() || m_correcting));
    m_coat->showLine(line, sheet);
    if (another) {
        m_keepOff.reset();
        m_wholePart->setChecked(false);
        const QString zone = QString::fromStdString(line.zone.id.text());
        const auto key = [&](const char* what) {
            return QString::fromStdString(m_log.draftKey(what + ("/" + line.zone.id.text())));
        };
        m_product->show(key("work-product"), {});
        m_maker->show(key("work-maker"), {});
        m_model->show(key("work-model"), {});
        m_note->show(key("work-note"), {});
        m_cost->show(key("work-cost"), {});
        m_dryIn->showEntered(key("work-dry"), std::nullopt);
        m_kind.reset();
        m_form->hide();
        for (QPushButton* button : m_kinds)
            showChosen(*button, false);
        for (const DraftField* one : {m_product, m_maker, m_model, m_note, m_cost}) {
            if (one->hasUnfinished())
                m_form->show(); // so that what was being typed is in sight; the kind is asked for again
        }
    }
    showEntries();
}

void TreatmentPanel::pick(TreatmentKind kind)
{
    m_kind = kind;
    std::size_t index = 0;
    for (const auto& row : codesOf(TreatmentKind{}))
        showChosen(*m_kinds[index++], row.value == kind);
    const bool replacing = kind == TreatmentKind::replace;
    auto* form = static_cast<QFormLayout*>(m_form->layout());
    form->setRowVisible(m_wholePart, !replacing);
    form->setRowVisible(m_product, !replacing);
    form->setRowVisible(m_maker, replacing);
    form->setRowVisible(m_model, replacing);
    form->setRowVisible(m_coat, kind == TreatmentKind::brushAndCoat);
    form->setRowVisible(m_dryIn, !replacing);
    showDryBy();
    if (auto* label = qobject_cast<QLabel*>(form->labelForField(m_note)))
        label->setText(replacing ? tr("Because") : tr("Note"));
    m_enter->setText(replacing ? tr("Fit a new part in its place") : tr("Enter this work"));
    m_form->show();
    (replacing ? m_note : m_product)->setFocus();
}

void TreatmentPanel::correct(const Treatment& work)
{
    m_correcting = work;
    for (QPushButton* button : m_kinds)
        button->setEnabled(true);
    pick(work.kind);
    m_wholePart->setChecked(!work.zoneId);
    m_product->setText(shown(work.product));
    m_note->setText(shown(work.note));
    m_cost->setText(work.cost ? QString::fromStdString(showNumber(*work.cost, 2, m_book.numberStyle())) : QString());
    m_enter->setText(tr("Enter the correction"));
}

std::optional<double> TreatmentPanel::typedCost(bool& good)
{
    good = true;
    const QString text = m_cost->text().trimmed();
    if (text.isEmpty())
        return std::nullopt;
    const auto cost = parseNumber(text.toStdString(), m_book.numberStyle());
    if (cost && *cost >= 0)
        return *cost;
    good = false;
    Q_EMIT refused(cost ? tr("A cost can't be below zero. Type what was paid.")
                        : m_book.speaker().said(cost.error().what));
    m_cost->setFocus();
    return std::nullopt;
}

void TreatmentPanel::enter()
{
    if (!m_line || !m_mayWrite)
        return;
    if (!m_kind) {
        Q_EMIT refused(tr("Choose what kind of work it was: clean, brush and coat, …"));
        return;
    }
    bool good = true;
    Treatment work = m_correcting.value_or(Treatment{});
    work.zoneId.reset();
    work.kind = *m_kind;
    work.cost = typedCost(good);
    if (!good)
        return;
    if (!m_dryIn->isEmpty() && !m_dryIn->understood()) {
        Q_EMIT refused(m_dryIn->echo());
        m_dryIn->edit().setFocus();
        return;
    }
    work.partId = m_line->part.id;
    if (!m_wholePart->isChecked())
        work.zoneId = m_line->zone.id;
    work.product = m_product->text().trimmed().toStdString();
    work.note = m_note->text().trimmed().toStdString();
    if (const auto until = dryBy(); until && work.kind != TreatmentKind::replace)
        work.dryBy = until;
    if (const QString conditions = m_coat->conditions();
        work.kind == TreatmentKind::brushAndCoat && !m_correcting && !conditions.isEmpty())
        work.note += (work.note.empty() ? "" : " ") + conditions.toStdString();
    const bool done = work.kind == TreatmentKind::replace
        ? m_log.replacePart(Part(m_line->part), work, m_maker->text().trimmed().toStdString(),
                            m_model->text().trimmed().toStdString())
        : m_log.put(work);
    if (!done)
        return; // the text stays for another try
    for (DraftField* one : {m_product, m_maker, m_model, m_note, m_cost})
        one->settle({});
    m_dryIn->settle(std::nullopt);
    m_keepOff.reset();
    m_coat->settle();
    m_kind.reset();
    m_correcting.reset();
    for (QPushButton* button : m_kinds) {
        showChosen(*button, false);
        button->setEnabled(m_log.visit().isOpen());
    }
    m_form->hide();
    showEntries();
    focusFirst();
}

QString TreatmentPanel::said(const Treatment& work) const
{
    QStringList words{translated(m_book, wordOf(work.kind))};
    if (!work.zoneId)
        words << tr("whole part");
    if (!work.product.empty())
        words << shown(work.product);
    if (!work.note.empty())
        words << shown(work.note);
    if (work.dryBy)
        words << tr("dry by %1").arg(dayAndTime(m_book, *work.dryBy));
    if (work.cost)
        words << tr("cost %1").arg(shown(m_book.speaker().money({*work.cost, 2})));
    return words.join(u", "_s);
}

void TreatmentPanel::showEntries()
{
    std::vector<EntryLines::Line> lines;
    for (const Treatment& work : m_line->work) {
        EntryLines::Line line{said(work), {}};
        if (m_log.visit().isOpen() && work.kind != TreatmentKind::replace) // a new part can't be taken back by a button
            line.takeBack = [this, work] { m_log.remove(work); };
        if (!m_log.visit().isOpen() && m_mayWrite && work.kind != TreatmentKind::replace)
            line.correct = [this, work] { correct(work); };
        lines.push_back(line);
    }
    m_entries->showLines(lines);
}

void TreatmentPanel::focusFirst()
{
    m_kinds.front()->setFocus();
}

} // namespace padside
