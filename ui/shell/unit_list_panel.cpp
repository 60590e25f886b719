// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/unit_list_panel.h"

#include "core/store/record_reader.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/unit_list_model.h"
#include "ui/shell/unit_line_delegate.h"

#include <QLineEdit>
#include <QSortFilterProxyModel>
#include <QTreeView>
#include <QVBoxLayout>

namespace padside {

UnitListPanel::UnitListPanel(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_model(new UnitListModel(this))
    , m_filter(new QSortFilterProxyModel(this))
    , m_search(new QLineEdit)
    , m_tree(new QTreeView)
{
    m_filter->setSourceModel(m_model);
    m_filter->setFilterRole(UnitListModel::searchTextRole);
    m_filter->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_filter->setRecursiveFilteringEnabled(true);

    m_search->setObjectName(QStringLiteral("unitSearch"));
    m_search->setPlaceholderText(tr("Find a unit (Ctrl+F)"));
    m_search->setAccessibleName(tr("Find a unit"));
    m_search->setClearButtonEnabled(true);

    m_tree->setObjectName(QStringLiteral("unitList"));
    m_tree->setAccessibleName(tr("Units by site"));
    m_tree->setModel(m_filter);
    m_tree->setHeaderHidden(true);
    m_tree->setRootIsDecorated(false);
    m_tree->setIndentation(0);
    m_tree->setItemsExpandable(false);
    m_tree->setUniformRowHeights(false);
    m_tree->setFrameShape(QFrame::NoFrame);
    m_tree->setItemDelegate(new UnitLineDelegate(theme, m_tree));
    m_tree->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 8, 0, 8);
    layout->addWidget(m_search);
    layout->addWidget(m_tree);

    connect(m_search, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_filter->setFilterFixedString(text);
        m_tree->expandAll();
    });
    connect(m_search, &QLineEdit::returnPressed, this, &UnitListPanel::selectFirst);
    connect(m_tree->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& current) {
        if (const auto unit = m_model->unitAt(m_filter->mapToSource(current)))
            Q_EMIT unitSelected(*unit);
    });
    connect(&m_book, &RecordBook::unitChanged, this, &UnitListPanel::reload);
    connect(&m_book, &RecordBook::sitesChanged, this, &UnitListPanel::reload);
    reload();
}

void UnitListPanel::reload()
{
    const auto before = selected();
    m_book.attempt([this] { m_model->setLines(m_book.store().records().unitLines()); });
    m_tree->expandAll();
    if (before && selected() != before)
        select(*before);
}

void UnitListPanel::select(UnitId unit)
{
    const QModelIndex place = m_model->indexOf(unit);
    if (place.isValid() && !m_filter->mapFromSource(place).isValid())
        m_search->clear(); // what is shown beside the list is in the list
    const QModelIndex index = m_filter->mapFromSource(place);
    if (index.isValid())
        m_tree->setCurrentIndex(index);
}

void UnitListPanel::selectFirst()
{
    if (m_filter->rowCount() > 0)
        m_tree->setCurrentIndex(m_filter->index(0, 0, m_filter->index(0, 0)));
}

std::optional<UnitId> UnitListPanel::selected() const
{
    return m_model->unitAt(m_filter->mapToSource(m_tree->currentIndex()));
}

bool UnitListPanel::holds(UnitId unit) const
{
    return m_model->indexOf(unit).isValid();
}

bool UnitListPanel::isEmpty() const
{
    return m_model->rowCount() == 0;
}

QAbstractScrollArea* UnitListPanel::list() const
{
    return m_tree;
}

void UnitListPanel::focusSearch()
{
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
}

} // namespace padside
