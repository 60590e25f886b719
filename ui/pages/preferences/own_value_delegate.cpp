// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/own_value_delegate.h"

#include "ui/pages/preferences/own_catalogue_model.h"

#include <QComboBox>

#include <algorithm>

namespace padside {

QWidget* OwnValueDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                        const QModelIndex& index) const
{
    const QStringList choices = index.data(OwnCatalogueModel::choicesRole).toStringList();
    QWidget* editor = nullptr;
    if (choices.isEmpty()) {
        editor = QStyledItemDelegate::createEditor(parent, option, index);
    } else {
        auto* list = new QComboBox(parent);
        list->addItem(tr("as ours"), QString());
        for (const QString& choice : choices)
            list->addItem(choice, choice);
        editor = list;
    }
    if (editor != nullptr)
        editor->setAccessibleName(index.siblingAtColumn(OwnCatalogueModel::what).data().toString());
    return editor;
}

void OwnValueDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const
{
    if (auto* list = qobject_cast<QComboBox*>(editor))
        list->setCurrentIndex(std::max(0, list->findData(index.data(Qt::EditRole))));
    else
        QStyledItemDelegate::setEditorData(editor, index);
}

void OwnValueDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const
{
    if (const auto* list = qobject_cast<QComboBox*>(editor))
        model->setData(index, list->currentData());
    else
        QStyledItemDelegate::setModelData(editor, model, index);
}

} // namespace padside
