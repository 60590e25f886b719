// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/own_catalogue_model.h"

#include "core/catalogue/cost_figures.h"
#include "core/quantity/measure.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/worth_words.h"

#include <QFont>

#include <algorithm>

namespace padside {

namespace {

/// The sentence about a path, said about the label a person knows it by.
Sentence named(Sentence problem, const QString& label)
{
    if (!problem.arguments.empty())
        problem.arguments.front() = label.toStdString();
    return problem;
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

void OwnCatalogueModel::showPartKind(const std::string& code)
{
    beginResetModel();
    m_partKind = code;
    readFields();
    endResetModel();
}

void OwnCatalogueModel::readFields()
{
    if (m_partKind == allUnits) {
        m_fields = m_changes.moneyFields(m_refrigerants);
        return;
    }
    m_fields = m_changes.fieldsOf(m_partKind);
    const std::vector<OwnField> costs = m_changes.costFieldsOf(m_partKind);
    m_fields.insert(m_fields.end(), costs.begin(), costs.end());
}

void OwnCatalogueModel::reload()
{
    readFields();
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
    if (m_partKind == allUnits) {
        for (const OwnField& field : m_fields)
            m_changes.putBack(field.path);
    } else {
        m_changes.putBackPartKind(m_partKind);
    }
    reload();
}

QString OwnCatalogueModel::problem() const
{
    return m_refused.empty() ? QString() : m_refused.begin()->second.why;
}

bool OwnCatalogueModel::hasProblem(const std::string& partKind) const
{
    return std::ranges::any_of(m_refused, [&](const auto& one) {
        const bool general = one.first.front() == "money" || one.first.front() == "refrigerant_prices";
        return general ? partKind == allUnits : one.first.at(1) == partKind;
    });
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

QString OwnCatalogueModel::shownValue(const CatalogueValue& value, bool translate) const
{
    if (const auto* number = std::get_if<double>(&value))
        return writtenNumber(m_book, *number);
    const auto& text = std::get<std::string>(value);
    return QString::fromStdString(translate ? m_book.speaker().translate(text) : text);
}

QString OwnCatalogueModel::ownText(const OwnField& field) const
{
    if (const Refused* bad = refused(field))
        return bad->typed;
    return field.own ? shownValue(*field.own, false) : QString();
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
    if (role != Qt::DisplayRole && role != Qt::EditRole && role != Qt::ToolTipRole)
        return {};
    switch (static_cast<Column>(index.column())) {
    case what:
        return m_book.speaker().said(field.label);
    case ours:
        return field.ours ? shownValue(*field.ours, true) : tr("(nothing)");
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
    if (field.isNumber) {
        const auto number = parseNumber(typed.toStdString(), m_book.numberStyle());
        if (!number) {
            entry.value.reset();
            entry.why = m_book.speaker().said(number.error().what);
            return;
        }
        entry.value = *number;
    } else {
        entry.value = typed.toStdString();
    }
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
        = m_book.speaker().said(named(result.error().what, m_book.speaker().said(field.label)));
}

} // namespace padside
