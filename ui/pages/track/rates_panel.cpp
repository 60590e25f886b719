// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/track/rates_panel.h"

#include "core/store/own_catalogue.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "ui/drawing/spread_columns.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/track_work.h"
#include "ui/models/work_line.h"
#include "ui/pages/track/rates_model.h"
#include "ui/pages/track/rates_words.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace padside {

RatesPanel::RatesPanel(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_theme(theme)
    , m_model(new RatesModel(book, this))
    , m_work(new WorkLine)
    , m_table(new QTableView)
    , m_columns(new SpreadColumns(*m_table))
    , m_state(new QLabel)
    , m_details(new QLabel)
    , m_learn(new QPushButton(tr("Learn from &these records")))
    , m_all(new QPushButton(tr("Choose &all")))
    , m_accept(new QPushButton(tr("Use what was learned for those &chosen")))
    , m_putBack(new QPushButton(tr("Put &ours back for those chosen")))
{
    makeLayout();
    connectParts();
    followChoice();
}

void RatesPanel::makeLayout()
{
    auto* hint = new QLabel(
        tr("Forecasts begin with our assumptions of how long parts last. Your records can correct them, part kind by "
           "part kind. Nothing changes until you say so, and ours can be put back. Years are those of a dry, bare part "
           "in middling air; wet and salt count extra."));
    hint->setWordWrap(true);
    m_state->setObjectName(QStringLiteral("state"));
    m_state->setWordWrap(true);
    m_details->setObjectName(QStringLiteral("details"));
    m_details->setWordWrap(true);
    m_details->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_learn->setObjectName(QStringLiteral("learn"));
    m_all->setObjectName(QStringLiteral("all"));
    m_accept->setObjectName(QStringLiteral("accept"));
    m_putBack->setObjectName(QStringLiteral("putBack"));
    makeTable();

    auto* above = new QHBoxLayout;
    above->addWidget(m_learn);
    above->addWidget(m_state, 1);
    auto* below = new QHBoxLayout;
    below->addWidget(m_all);
    below->addStretch(1);
    below->addWidget(m_putBack);
    below->addWidget(m_accept);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 8);
    column->addWidget(hint);
    column->addLayout(above);
    m_work->layout()->setContentsMargins(0, 4, 0, 4); // its edges those of the panel
    column->addWidget(m_work);
    column->addWidget(m_table, 1);
    column->addWidget(m_details);
    column->addStretch(0); // takes the room while there is nothing to list
    column->addLayout(below);
    setFocusProxy(m_learn);
}

void RatesPanel::makeTable()
{
    m_table->setObjectName(QStringLiteral("rates"));
    m_table->setAccessibleName(tr("How long parts last; Space chooses a line"));
    m_table->setModel(m_model);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false); // Tab leaves the table
    m_table->setShowGrid(false);
    m_table->setMinimumHeight(6 * fontMetrics().height());
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setHighlightSections(false);
    fitTable();
}

void RatesPanel::fitTable()
{
    m_table->verticalHeader()->setDefaultSectionSize(std::max(fontMetrics().height() + 12, m_theme.size.entry));
    m_columns->fit();
}

void RatesPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        fitTable();
}

bool RatesPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_table && event->type() == QEvent::KeyPress
        && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space) {
        const QModelIndex line = m_table->currentIndex().siblingAtColumn(RatesModel::kind);
        const bool isChosen = line.data(Qt::CheckStateRole).toInt() == Qt::Checked;
        return m_model->setData(line, isChosen ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
    }
    return QWidget::eventFilter(watched, event);
}

void RatesPanel::connectParts()
{
    m_table->installEventFilter(this); // Space chooses a line, whichever cell is the current one

    connect(m_learn, &QPushButton::clicked, this, &RatesPanel::learn);
    connect(m_all, &QPushButton::clicked, this, [this] {
        const auto count = static_cast<int>(m_model->chosen().size());
        m_model->chooseAll(count < m_model->rowCount());
    });
    connect(m_accept, &QPushButton::clicked, this, &RatesPanel::accept);
    connect(m_putBack, &QPushButton::clicked, this, &RatesPanel::putBack);
    connect(m_model, &RatesModel::choiceChanged, this, &RatesPanel::followChoice);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &RatesPanel::sayCurrent);
    const LongWork& work = m_work->work();
    connect(&work, &LongWork::done, this, [this] { take(**std::exchange(m_found, nullptr)); });
    connect(&work, &LongWork::cancelled, this, [this] {
        m_learn->setEnabled(true);
        m_state->setText(tr("Cancelled: nothing was learned, and nothing has changed."));
    });
    connect(&work, &LongWork::failed, this, [this](const Sentence& why) {
        m_learn->setEnabled(true);
        m_state->setText(m_book.speaker().said(why));
    });
}

void RatesPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (!m_isFilled)
        showInUse();
}

void RatesPanel::showInUse()
{
    m_isFilled = true;
    const Catalogue& catalogue = m_book.catalogue();
    auto lessons = kindLessons({}, catalogue, OutlookModel(catalogue, LearntFigures::leftOut), *m_book.outlookModel());
    m_state->setText(lessons.empty() ? tr("Nothing was learned yet: all forecasts rest on our assumptions.")
                                     : tr("These were learned before and are in use."));
    showLessons(std::move(lessons));
    if (window()->focusWidget() == m_learn)
        setFocus(); // a window made anew, in the place where the person was
}

void RatesPanel::showLessons(std::vector<KindLesson> lessons)
{
    m_model->setLessons(std::move(lessons));
    for (const int column : RatesModel::ofLearning)
        m_table->setColumnHidden(column, !m_model->anyLearnt());
    m_columns->fit();
    const bool isFilled = m_model->rowCount() > 0;
    if (isFilled)
        m_table->setCurrentIndex(m_model->index(0, RatesModel::kind));
    setFocusProxy(isFilled ? static_cast<QWidget*>(m_table) : m_learn);
    sayCurrent();
}

void RatesPanel::learn()
{
    const auto found = std::make_shared<std::optional<std::vector<KindLesson>>>();
    const LookBack file{m_book.store().path(), m_book.catalogue(), m_book.today()};
    const bool started = m_work->start(tr("Learning from your records"), [found, file](const LongWork::Tell& tell) {
        *found = learnLives(file, tell);
        return found->has_value();
    });
    if (!started)
        return;
    m_found = found;
    m_learn->setEnabled(false);
    m_state->setText(tr("This may take a while; you can go on working meanwhile."));
}

void RatesPanel::take(const std::vector<KindLesson>& lessons)
{
    m_isFilled = true;
    m_learn->setEnabled(true);
    showLessons(lessons);
    m_state->setText(m_model->anyLearnt()
                         ? tr("Learned, not yet in use: choose the parts whose figures you want to use.")
                         : tr("There is nothing to learn from yet: no zone has been graded at a closed visit."));
    if (isVisible())
        setFocus();
    Q_EMIT learnt();
}

void RatesPanel::followChoice()
{
    const std::vector<KindLesson> chosen = m_model->chosen();
    const bool mayWrite = !m_book.store().isReadOnly();
    const auto isLearnt = [](const KindLesson& one) { return one.learnt.has_value(); };
    const auto isInUse = [](const KindLesson& one) { return one.learntOn.has_value(); };
    m_accept->setEnabled(mayWrite && std::ranges::any_of(chosen, isLearnt));
    m_putBack->setEnabled(mayWrite && std::ranges::any_of(chosen, isInUse));
    const bool isFilled = m_model->rowCount() > 0;
    for (QWidget* const onlyFilled : {static_cast<QWidget*>(m_table), static_cast<QWidget*>(m_all),
                                      static_cast<QWidget*>(m_accept), static_cast<QWidget*>(m_putBack)})
        onlyFilled->setVisible(isFilled);
    m_all->setText(static_cast<int>(chosen.size()) < m_model->rowCount() || chosen.empty() ? tr("Choose &all")
                                                                                           : tr("Choose &none"));
}

void RatesPanel::sayCurrent()
{
    const QModelIndex current = m_table->currentIndex();
    m_details->setText(current.isValid() ? lessonText(m_book, m_model->lesson(current.row())) : QString());
    m_details->setVisible(current.isValid());
}

void RatesPanel::change(const std::function<void(OwnChanges&)>& edit)
{
    std::string patch;
    if (!m_book.attempt([&] { patch = m_book.store().ownCatalogue().changes(); }))
        return;
    auto changes = OwnChanges::read(shippedCatalogue(), patch);
    if (changes) {
        edit(*changes);
        if (const auto fits = changes->catalogue(); !fits) {
            m_state->setText(m_book.speaker().said(fits.error().what));
            return;
        }
    } else {
        m_state->setText(m_book.speaker().said(changes.error().what));
        return;
    }
    if (m_book.attempt([&] { m_book.store().ownCatalogue().setChanges(changes->patch()); }))
        Q_EMIT catalogueChanged();
}

void RatesPanel::accept()
{
    change([this](OwnChanges& changes) {
        for (const KindLesson& lesson : m_model->chosen()) {
            if (lesson.learnt)
                changes.setLearntLife(lesson.partKind, lesson.soils,
                                      {lesson.learnt->medianLifeYears, lesson.learnt->gradeShares, m_book.today()});
        }
    });
}

void RatesPanel::putBack()
{
    change([this](OwnChanges& changes) {
        for (const KindLesson& lesson : m_model->chosen()) {
            if (lesson.learntOn)
                changes.putBackLearntLife(lesson.partKind, lesson.soils);
        }
    });
}

} // namespace padside
