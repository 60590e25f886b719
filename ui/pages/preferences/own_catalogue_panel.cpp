// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/own_catalogue_panel.h"

#include "core/store/own_catalogue.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/preferences/own_catalogue_model.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int codeRole = Qt::UserRole;
constexpr int listWidth = 210;
constexpr int consequencesInARow = 4;
constexpr int narrowColumn = 150;

OwnChanges readChanges(RecordBook& book, const std::vector<std::string>& shipped, QString& unreadable)
{
    std::string patch;
    book.attempt([&] { patch = book.store().ownCatalogue().changes(); });
    if (auto changes = OwnChanges::read(shipped, patch))
        return *std::move(changes);
    else
        unreadable = book.speaker().said(changes.error().what);
    return OwnChanges::read(shipped, {}).value(); // ours is built in and tested
}

} // namespace

OwnCataloguePanel::OwnCataloguePanel(RecordBook& book, const std::vector<std::string>& shipped, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_changes(readChanges(book, shipped, m_unreadable))
    , m_kept(m_changes.patch())
    , m_model(new OwnCatalogueModel(book, m_changes, this))
    , m_list(new QListWidget)
    , m_table(new QTableView)
    , m_said(new QLabel)
{
    setEnabled(m_unreadable.isEmpty());
    makeList();
    makeTable();
    m_said->setObjectName(u"catalogue-said"_s);
    m_said->setWordWrap(true);
    auto* hint
        = new QLabel(tr("Write your own words or figures beside ours; an empty field means ours. Your changes are "
                        "kept in this file, and an update of ours leaves them alone."));
    hint->setWordWrap(true);
    auto* putBack = new QPushButton(tr("Put &ours back here"));
    putBack->setObjectName(u"put-back"_s);
    putBack->setToolTip(tr("For the chosen line"));
    auto* putAllBack = new QPushButton(tr("Put ours back for the &whole part"));
    putAllBack->setObjectName(u"put-all-back"_s);
    connect(putBack, &QPushButton::clicked, this, &OwnCataloguePanel::putBackSelected);
    connect(putAllBack, &QPushButton::clicked, this, [this] {
        m_model->putAllBack();
        showPartKind();
    });

    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_said, 1);
    buttons->addWidget(putBack);
    buttons->addWidget(putAllBack);
    auto* right = new QVBoxLayout;
    right->addWidget(m_table, 1);
    right->addWidget(makeConsequences());
    right->addLayout(buttons);
    auto* both = new QHBoxLayout;
    both->addWidget(m_list);
    both->addLayout(right, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hint);
    layout->addLayout(both, 1);

    connect(m_model, &OwnCatalogueModel::edited, this, &OwnCataloguePanel::markList);
    connect(m_list, &QListWidget::currentItemChanged, this, &OwnCataloguePanel::showPartKind);
    m_list->setCurrentRow(0);
    markList();
}

void OwnCataloguePanel::makeList()
{
    m_list->setObjectName(u"catalogue-parts"_s);
    m_list->setAccessibleName(tr("Part kinds"));
    m_list->setFixedWidth(listWidth);
    m_list->setTextElideMode(Qt::ElideRight); // the tool tip has the whole name
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const std::string& code : m_changes.partKinds()) {
        auto* item = new QListWidgetItem(m_list);
        item->setData(codeRole, QString::fromStdString(code));
    }
    auto* money = new QListWidgetItem(m_list);
    money->setData(codeRole, QString::fromUtf8(OwnCatalogueModel::allUnits));
}

void OwnCataloguePanel::makeTable()
{
    m_table->setObjectName(u"catalogue-fields"_s);
    m_table->setAccessibleName(tr("Texts and figures of the part kind"));
    m_table->setModel(m_model);
    m_table->setWordWrap(true);
    m_table->setTabKeyNavigation(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::AllEditTriggers);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    QHeaderView* header = m_table->horizontalHeader();
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setSectionResizeMode(QHeaderView::Stretch);
    for (const auto narrow : {OwnCatalogueModel::what, OwnCatalogueModel::remark}) {
        header->setSectionResizeMode(narrow, QHeaderView::Fixed);
        header->resizeSection(narrow, narrowColumn);
    }
    header->setHighlightSections(false);
}

QWidget* OwnCataloguePanel::makeConsequences()
{
    auto* box = new QGroupBox(tr("Once spent, it means"));
    m_consequencesBox = box;
    auto* grid = new QGridLayout(box);
    int count = 0;
    for (const auto& row : codesOf(Consequence{})) {
        auto* check = new QCheckBox(shown(m_book.speaker().translate(std::string(row.word))));
        check->setObjectName(u"consequence-"_s + shown(row.code));
        grid->addWidget(check, count / consequencesInARow, count % consequencesInARow);
        connect(check, &QCheckBox::toggled, this, &OwnCataloguePanel::setConsequences);
        m_consequences[row.value] = check;
        ++count;
    }
    return box;
}

std::string OwnCataloguePanel::shownPartKind() const
{
    const QListWidgetItem* item = m_list->currentItem();
    return item ? item->data(codeRole).toString().toStdString() : std::string();
}

void OwnCataloguePanel::showPartKind()
{
    const std::string code = shownPartKind();
    m_model->showPartKind(code);
    m_consequencesBox->setVisible(code != OwnCatalogueModel::allUnits);
    const std::set<Consequence> meant = m_changes.consequences(code);
    for (const auto& [consequence, check] : m_consequences) {
        const QSignalBlocker blocked(check);
        check->setChecked(meant.contains(consequence));
    }
}

void OwnCataloguePanel::setConsequences()
{
    std::set<Consequence> meant;
    for (const auto& [consequence, check] : m_consequences) {
        if (check->isChecked())
            meant.insert(consequence);
    }
    m_changes.setConsequences(shownPartKind(), meant);
    markList();
}

void OwnCataloguePanel::putBackSelected()
{
    m_model->putBack(m_table->currentIndex().row());
}

void OwnCataloguePanel::markList()
{
    for (int row = 0; row < m_list->count(); ++row) {
        QListWidgetItem* item = m_list->item(row);
        const std::string code = item->data(codeRole).toString().toStdString();
        const PartKind* kind = m_book.catalogue().partKind(code);
        const QString name = shown(m_book.speaker().translate(kind ? kind->name : code));
        if (code == OwnCatalogueModel::allUnits) {
            item->setText(tr("Money and prices"));
            continue;
        }
        const bool own = m_changes.differs(code) || m_model->hasProblem(code);
        item->setText(own ? tr("%1 (yours)").arg(name) : name);
        item->setToolTip(item->text());
        QFont font = m_list->font();
        font.setBold(own);
        item->setFont(font);
    }
    m_said->setText(m_unreadable.isEmpty() ? problem() : m_unreadable);
}

QString OwnCataloguePanel::problem() const
{
    return m_model->problem();
}

bool OwnCataloguePanel::differs() const
{
    return m_unreadable.isEmpty() && m_changes.patch() != m_kept;
}

bool OwnCataloguePanel::keep()
{
    if (!differs())
        return true;
    const std::string patch = m_changes.patch();
    if (!m_book.attempt([&] { m_book.store().ownCatalogue().setChanges(patch); }))
        return false;
    m_kept = patch;
    return true;
}

} // namespace padside
