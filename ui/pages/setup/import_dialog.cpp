// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/import_dialog.h"

#include "core/store/site_book.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/unit_plan_model.h"
#include "ui/pages/setup/column_choices.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDropEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr QSize importSize{1160, 680};
constexpr int outcomeWidth = 400;
constexpr int tableColumnWidth = 100; ///< at least
constexpr int widestColumn = 220; ///< of what the list says
constexpr int steps = 1000;

QString fileIn(const QMimeData& data)
{
    const QList<QUrl> urls = data.urls();
    return urls.size() == 1 ? urls.front().toLocalFile() : QString();
}

} // namespace

ImportDialog::ImportDialog(RecordBook& book, SetupLog& log, QWidget* parent)
    : QDialog(parent)
    , m_book(book)
    , m_import(new UnitImport(book, log, this))
    , m_model(new UnitPlanModel(book.catalogue(), book.speaker(), this))
    , m_file(
          new QLabel(tr("No list is chosen. Its first line names the columns; a tag and a kind are needed, everything "
                        "else may be missing. A file can also be dropped here.")))
    , m_choose(new QPushButton(tr("&Choose a list…")))
    , m_columns(new ColumnChoices(book.speaker()))
    , m_usualSite(new QComboBox)
    , m_onlyBad(new QCheckBox(tr("Show only the &rows that are skipped")))
    , m_table(new QTableView)
    , m_rowSaid(new QLabel)
    , m_counts(new QLabel)
    , m_said(new QLabel)
    , m_progress(new QProgressBar)
    , m_add(new QPushButton(tr("&Add")))
    , m_close(new QPushButton(tr("Close")))
{
    setObjectName(u"import-dialog"_s);
    setWindowTitle(tr("Units from a list"));
    setAttribute(Qt::WA_DeleteOnClose);
    setAcceptDrops(true);
    resize(importSize);
    makeTable();
    m_columnPart = columnPart();
    m_said->setObjectName(u"import-said"_s);
    m_said->setWordWrap(true);
    m_counts->setObjectName(u"import-counts"_s);
    m_counts->setWordWrap(true);
    m_rowSaid->setObjectName(u"import-row"_s);
    m_rowSaid->setWordWrap(true);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(fileLine());
    layout->addWidget(m_columnPart);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_rowSaid);
    layout->addWidget(m_said);
    layout->addWidget(m_counts);
    layout->addLayout(footLine());
    m_columnPart->setEnabled(false);
    m_said->hide();
    connectImport();
    showBusy(false);
}

QLayout* ImportDialog::fileLine()
{
    auto* line = new QHBoxLayout;
    m_file->setObjectName(u"import-file"_s);
    m_file->setWordWrap(true);
    m_choose->setObjectName(u"import-choose"_s);
    line->addWidget(m_choose);
    line->addWidget(m_file, 1);
    connect(m_choose, &QPushButton::clicked, this, &ImportDialog::chooseFile);
    return line;
}

QWidget* ImportDialog::columnPart()
{
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 6, 0, 6);
    auto* heading = new QLabel(tr("Which column holds what"));
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    column->addWidget(heading);
    column->addWidget(m_columns);
    auto* line = new QHBoxLayout;
    auto* label = new QLabel(tr("&Site of rows that name none"));
    m_usualSite->setObjectName(u"import-site"_s);
    m_usualSite->setEditable(true);
    m_usualSite->setInsertPolicy(QComboBox::NoInsert);
    m_usualSite->setMinimumWidth(240);
    m_usualSite->setAccessibleName(tr("Site of rows that name none"));
    m_usualSite->lineEdit()->setAccessibleName(m_usualSite->accessibleName());
    label->setBuddy(m_usualSite);
    m_onlyBad->setObjectName(u"import-only-bad"_s);
    line->addWidget(label);
    line->addWidget(m_usualSite);
    line->addStretch(1);
    line->addWidget(m_onlyBad);
    column->addLayout(line);
    m_usualSite->addItem(QString());
    m_book.attempt([this] {
        for (const Site& site : m_book.store().sites().sites())
            m_usualSite->addItem(shown(site.name));
    });
    return part;
}

void ImportDialog::makeTable()
{
    m_table->setObjectName(u"import-table"_s);
    m_table->setAccessibleName(tr("Rows of the list and what will be made of them"));
    m_table->setModel(m_model);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->verticalHeader()->setDefaultSectionSize(m_table->fontMetrics().height() + 8);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    for (int column = 0; column < UnitPlanModel::columns; ++column)
        m_table->setColumnWidth(column,
                                std::max(tableColumnWidth, m_table->horizontalHeader()->sectionSizeHint(column)));
    m_table->setColumnWidth(UnitPlanModel::row, 50);
    m_table->setColumnWidth(UnitPlanModel::outcome, outcomeWidth);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ImportDialog::showRow);
}

QLayout* ImportDialog::footLine()
{
    m_progress->setObjectName(u"import-progress"_s);
    m_progress->setRange(0, steps);
    m_progress->setFormat({});
    m_add->setObjectName(u"import-add"_s);
    m_add->setDefault(true);
    m_close->setObjectName(u"import-close"_s);
    m_close->setAutoDefault(false);
    auto* line = new QHBoxLayout;
    line->addWidget(m_progress, 1);
    line->addStretch(1);
    line->addWidget(m_add);
    line->addWidget(m_close);
    connect(m_add, &QPushButton::clicked, m_import, &UnitImport::add);
    connect(m_close, &QPushButton::clicked, this, &ImportDialog::reject);
    return line;
}

void ImportDialog::connectImport()
{
    connect(m_columns, &ColumnChoices::chosen, this, [this] { m_import->setColumns(m_columns->columns()); });
    connect(m_usualSite, &QComboBox::currentTextChanged, m_import, &UnitImport::setUsualSite);
    connect(m_onlyBad, &QCheckBox::toggled, this, [this](bool only) {
        m_model->setOnlyBad(only);
        chooseFirstSkipped();
    });
    connect(m_import, &UnitImport::started, this, [this](const QString& doing) {
        m_progress->setAccessibleName(doing);
        m_progress->setFormat(doing);
        m_progress->setValue(0);
        say({});
        showBusy(true);
    });
    connect(m_import, &UnitImport::progressed, this,
            [this](double share) { m_progress->setValue(static_cast<int>(std::lround(share * steps))); });
    connect(m_import, &UnitImport::ended, this, [this] { showBusy(false); });
    connect(m_import, &UnitImport::listRead, this, &ImportDialog::showList);
    connect(m_import, &UnitImport::planned, this, &ImportDialog::showPlan);
    connect(m_import, &UnitImport::failed, this, [this](const Sentence& why) { say(m_book.speaker().said(why)); });
    connect(m_import, &UnitImport::cancelled, this, [this] { say(tr("Stopped; nothing was added.")); });
    connect(m_import, &UnitImport::added, this, [this](int count) {
        accept();
        Q_EMIT added(count);
    });
    connect(&m_book, &RecordBook::failed, this, &ImportDialog::say);
}

void ImportDialog::chooseFile()
{
    const QString file
        = QFileDialog::getOpenFileName(this, tr("Choose a list of units"), {}, tr("Lists (*.csv);;All files (*)"));
    if (!file.isEmpty())
        read(file);
}

void ImportDialog::read(const QString& file)
{
    m_file->setText(QFileInfo(file).fileName());
    m_file->setToolTip(file);
    m_import->read(file);
}

void ImportDialog::showList()
{
    m_columns->show(m_import->headings(), m_import->columns());
    m_columnPart->setEnabled(!m_import->headings().empty());
}

void ImportDialog::showPlan()
{
    m_model->setPlan(m_import->plan());
    fitColumns();
    chooseFirstSkipped();
    const auto good = static_cast<int>(m_import->plan()->goodCount());
    const auto bad = static_cast<int>(m_import->plan()->badCount());
    QString counts = good == 0 ? tr("There is no row that can be added.")
        : good == 1            ? tr("One unit will be added.")
                    : tr("%n units will be added, all together or, if something fails, not at all.", nullptr, good);
    if (bad > 0)
        counts += u' ' + (bad == 1 ? tr("One row is skipped.") : tr("%n rows are skipped.", nullptr, bad));
    if (m_import->plan()->goodCount() > UnitImport::mostUndone)
        counts += u' ' + tr("So many can't be undone in one step: back the file up first if you are not sure.");
    m_counts->setText(m_import->plan()->rows.empty() ? QString() : counts);
    m_add->setText(good == 0 ? tr("&Add") : good == 1 ? tr("&Add one unit") : tr("&Add %n units", nullptr, good));
    showBusy(m_import->isBusy());
}

void ImportDialog::fitColumns()
{
    for (int column = UnitPlanModel::tag; column < UnitPlanModel::columns; ++column) {
        const int before = m_table->columnWidth(column);
        m_table->resizeColumnToContents(column);
        m_table->setColumnWidth(column, std::max(before, std::min(m_table->columnWidth(column), widestColumn)));
    }
}

void ImportDialog::chooseFirstSkipped()
{
    const QModelIndex first = m_model->index(m_model->firstSkipped().value_or(0), UnitPlanModel::row);
    m_table->setCurrentIndex(first);
    showRow(first); // also where there is no row, and nothing to choose
}

void ImportDialog::showRow(const QModelIndex& row)
{
    m_rowSaid->setText(row.siblingAtColumn(UnitPlanModel::outcome).data().toString());
}

void ImportDialog::showBusy(bool busy)
{
    m_progress->setVisible(busy);
    m_choose->setEnabled(!busy);
    m_add->setEnabled(!busy && m_import->plan()->goodCount() > 0);
    m_close->setText(busy ? tr("Stop") : tr("Close"));
}

void ImportDialog::say(const QString& sentence)
{
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
}

void ImportDialog::reject()
{
    if (m_import->isBusy())
        m_import->cancel();
    else
        QDialog::reject();
}

void ImportDialog::dragEnterEvent(QDragEnterEvent* event)
{
    if (!m_import->isBusy() && !fileIn(*event->mimeData()).isEmpty()) {
        event->setDropAction(Qt::CopyAction); // the list stays where it lies
        event->accept();
    }
}

void ImportDialog::dropEvent(QDropEvent* event)
{
    event->setDropAction(Qt::CopyAction);
    event->accept();
    read(fileIn(*event->mimeData()));
}

} // namespace padside
