// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/own_catalogue_panel.h"

#include "core/store/own_catalogue.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/preferences/own_catalogue_model.h"
#include "ui/pages/preferences/own_value_delegate.h"

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

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int listWidth = 240;
constexpr int headingHeight = 3; ///< half lines
constexpr int consequencesInARow = 4;
constexpr int narrowColumn = 150;
constexpr int aboutLines = 2;

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
    , m_about(new QLabel)
    , m_said(new QLabel)
    , m_putAllBack(new QPushButton)
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
    m_putAllBack->setObjectName(u"put-all-back"_s);
    connect(putBack, &QPushButton::clicked, this, &OwnCataloguePanel::putBackSelected);
    connect(m_putAllBack, &QPushButton::clicked, this, [this] {
        m_model->putAllBack();
        showSubject();
    });
    m_about->setObjectName(u"catalogue-about"_s);
    m_about->setWordWrap(true);
    m_about->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_about->setMinimumHeight(aboutLines * m_about->fontMetrics().lineSpacing()); // the table keeps its place

    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_said, 1);
    buttons->addWidget(putBack);
    buttons->addWidget(m_putAllBack);
    auto* right = new QVBoxLayout;
    right->addWidget(m_table, 1);
    right->addWidget(m_about);
    right->addWidget(makeConsequences());
    right->addLayout(buttons);
    auto* both = new QHBoxLayout;
    both->addWidget(m_list);
    both->addLayout(right, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hint);
    layout->addLayout(both, 1);

    connect(m_model, &OwnCatalogueModel::edited, this, &OwnCataloguePanel::markList);
    connect(m_list, &QListWidget::currentItemChanged, this, &OwnCataloguePanel::showSubject);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &OwnCataloguePanel::showAbout);
    m_list->setCurrentRow(1); // below the first heading
    markList();
}

void OwnCataloguePanel::makeList()
{
    m_list->setObjectName(u"catalogue-parts"_s);
    m_list->setAccessibleName(tr("What can be your own"));
    m_list->setFixedWidth(listWidth);
    m_list->setTextElideMode(Qt::ElideRight); // the tool tip has the whole name
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    addHeading(tr("For all units"));
    for (const auto& topic : codesOf(AssumptionTopic{}))
        addSubject(topic.value);
    addSubject(MoneyFigures{});
    addHeading(tr("Part kinds"));
    for (const std::string& code : m_changes.partKinds())
        addSubject(code);
}

void OwnCataloguePanel::addSubject(const CatalogueSubject& subject)
{
    m_subjects.emplace(m_list->count(), subject);
    m_list->addItem(nameOf(subject));
}

void OwnCataloguePanel::addHeading(const QString& text)
{
    auto* item = new QListWidgetItem(text, m_list);
    item->setFlags(Qt::NoItemFlags); // passed over by keys
    QFont font = m_list->font();
    font.setBold(true);
    item->setFont(font);
    item->setTextAlignment(Qt::AlignLeft | Qt::AlignBottom);
    item->setSizeHint({0, headingHeight * m_list->fontMetrics().lineSpacing() / 2});
}

void OwnCataloguePanel::makeTable()
{
    m_table->setObjectName(u"catalogue-fields"_s);
    m_table->setAccessibleName(tr("Texts and figures, ours and yours"));
    m_table->setModel(m_model);
    m_table->setItemDelegate(new OwnValueDelegate(m_table));
    m_table->setWordWrap(true);
    m_table->setTabKeyNavigation(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::AllEditTriggers);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    QHeaderView* header = m_table->horizontalHeader();
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
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

CatalogueSubject OwnCataloguePanel::shownSubject() const
{
    const auto found = m_subjects.find(m_list->currentRow());
    return found != m_subjects.end() ? found->second : CatalogueSubject(MoneyFigures{});
}

/// Texts need as much room as there is; figures little, but what they are needs more.
void OwnCataloguePanel::shareColumns()
{
    const bool texts = std::holds_alternative<std::string>(shownSubject());
    const QFontMetrics letters = m_table->fontMetrics();
    int figures = letters.horizontalAdvance(u"0000000000"_s);
    for (int row = 0; row < m_model->rowCount(); ++row) {
        for (const auto column : {OwnCatalogueModel::ours, OwnCatalogueModel::own})
            figures = std::max(figures, letters.horizontalAdvance(m_model->index(row, column).data().toString()));
    }
    figures += 2 * letters.averageCharWidth(); // beside them
    QHeaderView* header = m_table->horizontalHeader();
    const auto give = [header](OwnCatalogueModel::Column column, bool stretches, int width) {
        header->setSectionResizeMode(column, stretches ? QHeaderView::Stretch : QHeaderView::Fixed);
        if (!stretches)
            header->resizeSection(column, width);
    };
    give(OwnCatalogueModel::what, !texts, narrowColumn);
    give(OwnCatalogueModel::ours, texts, figures);
    give(OwnCatalogueModel::own, texts, figures);
    give(OwnCatalogueModel::remark, false, narrowColumn);
}

void OwnCataloguePanel::showSubject()
{
    const CatalogueSubject subject = shownSubject();
    const auto* partKind = std::get_if<std::string>(&subject);
    m_model->show(subject);
    shareColumns();
    m_table->setCurrentIndex(m_model->index(0, OwnCatalogueModel::what));
    showAbout();
    m_putAllBack->setText(partKind != nullptr ? tr("Put ours back for the &whole part")
                                              : tr("Put ours back for the &whole table"));
    m_consequencesBox->setVisible(partKind != nullptr);
    const auto meant = partKind != nullptr ? m_changes.consequences(*partKind) : std::set<Consequence>();
    for (const auto& [consequence, check] : m_consequences) {
        const QSignalBlocker blocked(check);
        check->setChecked(meant.contains(consequence));
    }
}

void OwnCataloguePanel::showAbout()
{
    m_about->setText(m_model->about(m_table->currentIndex().row()));
}

void OwnCataloguePanel::setConsequences()
{
    std::set<Consequence> meant;
    for (const auto& [consequence, check] : m_consequences) {
        if (check->isChecked())
            meant.insert(consequence);
    }
    const CatalogueSubject subject = shownSubject();
    m_changes.setConsequences(std::get<std::string>(subject), meant); // else the boxes are not there
    markList();
}

void OwnCataloguePanel::putBackSelected()
{
    m_model->putBack(m_table->currentIndex().row());
}

QString OwnCataloguePanel::nameOf(const CatalogueSubject& subject) const
{
    if (const auto* code = std::get_if<std::string>(&subject)) {
        const PartKind* kind = m_book.catalogue().partKind(*code);
        return shown(m_book.speaker().translate(kind != nullptr ? kind->name : *code));
    }
    if (const auto* topic = std::get_if<AssumptionTopic>(&subject))
        return shown(m_book.speaker().translate(std::string(wordOf(*topic))));
    return tr("Money and prices");
}

void OwnCataloguePanel::markList()
{
    for (const auto& [row, subject] : m_subjects) {
        QListWidgetItem* item = m_list->item(row);
        const bool own = m_model->differs(subject);
        const QString name = nameOf(subject);
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
