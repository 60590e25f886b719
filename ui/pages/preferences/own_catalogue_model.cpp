// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/own_catalogue_model.h"

#include "core/catalogue/cost_figures.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/preferences/catalogue_value_words.h"

#include <QFont>

#include <algorithm>
#include <iterator>

namespace padside {

namespace {

void append(std::vector<OwnField>& fields, std::vector<OwnField> more)
{
    fields.insert(fields.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

/// Codes as the catalogue's text has them, and how they are written.
std::vector<std::pair<std::string, std::string>> refrigerantsOf(const Catalogue& catalogue)
{
    std::vector<std::pair<std::string, std::string>> all;
    for (const Refrigerant& one : catalogue.refrigerants())
        all.emplace_back(priceCode(one.code), one.code);
    return all;
}

} // namespace

OwnCatalogueModel::OwnCatalogueModel(const RecordBook& book, OwnChanges& changes, QObject* parent)
    : QAbstractTableModel(parent)
    , m_book(book)
    , m_changes(changes)
    , m_refrigerants(refrigerantsOf(book.catalogue()))
{
}

void OwnCatalogueModel::show(const CatalogueSubject& subject)
{
    beginResetModel();
    m_subject = subject;
    m_fields = fieldsOf(subject);
    endResetModel();
}

std::vector<OwnField> OwnCatalogueModel::fieldsOf(const CatalogueSubject& subject) const
{
    const OwnFields all = m_changes.fields();
    if (const auto* partKind = std::get_if<std::string>(&subject)) {
        std::vector<OwnField> fields = all.ofPartKind(*partKind);
        append(fields, all.supply(*partKind));
        append(fields, all.costs(*partKind));
        return fields;
    }
    if (std::holds_alternative<MoneyFigures>(subject))
        return all.money(m_refrigerants);
    const auto topic = std::get<AssumptionTopic>(subject);
    std::vector<OwnField> fields = all.assumptions(topic);
    if (topic == AssumptionTopic::forecasts)
        append(fields, all.outlook());
    return fields;
}

void OwnCatalogueModel::reload()
{
    m_fields = fieldsOf(m_subject);
    if (!m_fields.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
    Q_EMIT edited();
}

void OwnCatalogueModel::putBack(int row)
{
    if (row >= 0 && row < rowCount())
        setData(index(row, own), QString());
}

void OwnCatalogueModel::putAllBack()
{
    for (const OwnField& field : m_fields)
        m_refused.erase(field.path);
    if (const auto* partKind = std::get_if<std::string>(&m_subject)) {
        m_changes.putBackPartKind(*partKind);
    } else {
        for (const OwnField& field : m_fields)
            m_changes.putBack(field.path);
    }
    reload();
}

QString OwnCatalogueModel::problem() const
{
    return m_refused.empty() ? QString() : m_refused.begin()->second.why;
}

bool OwnCatalogueModel::differs(const CatalogueSubject& subject) const
{
    const auto* partKind = std::get_if<std::string>(&subject);
    if (partKind != nullptr && m_changes.differs(*partKind))
        return true;
    return std::ranges::any_of(fieldsOf(subject),
                               [this](const OwnField& field) { return field.own || refused(field) != nullptr; });
}

QString OwnCatalogueModel::about(int row) const
{
    return row >= 0 && row < rowCount() ? valueAbout(m_book, m_fields[static_cast<std::size_t>(row)]) : QString();
}

const OwnCatalogueModel::Refused* OwnCatalogueModel::refused(const OwnField& field) const
{
    const auto found = m_refused.find(field.path);
    return found == m_refused.end() ? nullptr : &found->second;
}

int OwnCatalogueModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_fields.size());
}

int OwnCatalogueModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(columns);
}

QString OwnCatalogueModel::ownText(const OwnField& field) const
{
    const Refused* bad = refused(field);
    return bad != nullptr ? bad->typed : ownValueText(m_book, field);
}

QVariant OwnCatalogueModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    const OwnField& field = m_fields[static_cast<std::size_t>(index.row())];
    if (role == Qt::FontRole && index.column() == own) {
        QFont font;
        font.setBold(true);
        return font;
    }
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(Qt::AlignLeft | Qt::AlignTop);
    if (role == choicesRole)
        return valueChoices(m_book, field);
    if (role == Qt::AccessibleDescriptionRole)
        return about(index.row());
    if (role == Qt::ToolTipRole) {
        const QString text = data(index, Qt::DisplayRole).toString();
        const QString why = index.column() == what || index.column() == ours ? about(index.row()) : QString();
        return why.isEmpty() ? text : text + u'\n' + why;
    }
    if (role != Qt::DisplayRole && role != Qt::EditRole)
        return {};
    switch (static_cast<Column>(index.column())) {
    case what:
        return m_book.speaker().said(field.label);
    case ours:
        return ourValueText(m_book, field);
    case own:
        return ownText(field);
    case remark:
        if (const Refused* bad = refused(field))
            return bad->why;
        return field.own ? tr("differs from ours") : QString();
    case columns:
        break;
    }
    return {};
}

QVariant OwnCatalogueModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (static_cast<Column>(section)) {
    case what:
        return tr("What");
    case ours:
        return tr("Ours");
    case own:
        return tr("Yours");
    case remark:
        return tr("Remark");
    case columns:
        break;
    }
    return {};
}

Qt::ItemFlags OwnCatalogueModel::flags(const QModelIndex& index) const
{
    const Qt::ItemFlags usual = QAbstractTableModel::flags(index);
    return index.column() == own ? usual | Qt::ItemIsEditable : usual;
}

bool OwnCatalogueModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    if (!index.isValid() || index.column() != own || role != Qt::EditRole)
        return false;
    const OwnField field = m_fields[static_cast<std::size_t>(index.row())];
    const QString typed = value.toString().trimmed();
    if (typed == ownText(field))
        return true;
    if (typed.isEmpty()) {
        m_refused.erase(field.path);
        m_changes.putBack(field.path);
    } else {
        enter(field, typed);
    }
    reload();
    return true;
}

void OwnCatalogueModel::enter(const OwnField& field, const QString& typed)
{
    Refused& entry = m_refused[field.path]; // until it is taken
    entry.typed = typed;
    entry.why.clear();
    const auto value = readValue(m_book, field, typed);
    if (!value) {
        entry.value.reset();
        entry.why = m_book.speaker().said(value.error().what);
        return;
    }
    entry.value = *value;
    takeIfSound(field);
}

/// Entries may need one another (a life in years and where it comes from), so what was refused before is tried again
/// together with the newest; alone, if together they fail.
void OwnCatalogueModel::takeIfSound(const OwnField& field)
{
    OwnChanges together = m_changes;
    for (const auto& [path, one] : m_refused) {
        if (one.value)
            together.set(path, *one.value);
    }
    if (together.catalogue()) {
        m_changes = together;
        std::erase_if(m_refused, [](const auto& one) { return one.second.value.has_value(); });
        return;
    }
    OwnChanges alone = m_changes;
    alone.set(field.path, *m_refused.at(field.path).value);
    const auto result = alone.catalogue();
    const auto before = m_changes.catalogue(); // trouble that was there already is not this entry's
    if (result || (!before && before.error().what == result.error().what)) {
        m_changes = alone;
        m_refused.erase(field.path);
        return;
    }
    m_refused.at(field.path).why
        = m_book.speaker().said(troubleWith(field, say(field.label, m_book.speaker()), result.error().what));
}

} // namespace padside
