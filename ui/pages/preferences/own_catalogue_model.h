// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/own_changes.h"
#include "ui/pages/preferences/catalogue_subject.h"

#include <QAbstractTableModel>

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace padside {

class RecordBook;

/// The texts, figures and costs of one part kind, or figures that hold for all units: what each is, ours, the person's
/// own (empty: ours holds), and what is wrong with it. An entry that can't be taken stays as it was typed, beside its
/// sentence, also while something else is shown.
class OwnCatalogueModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    enum Column { what, ours, own, remark, columns };
    static constexpr int choicesRole = Qt::UserRole; ///< what may be chosen as an own value; none: anything is written

    /// Both outlive it.
    OwnCatalogueModel(const RecordBook& book, OwnChanges& changes, QObject* parent = nullptr);

    void show(const CatalogueSubject& subject);
    void putBack(int row);
    void putAllBack(); ///< of what is shown
    [[nodiscard]] QString about(int row) const; ///< what the line decides and where ours comes from; may be empty

    /// The first entry that can't be taken, and why; empty if all can.
    [[nodiscard]] QString problem() const;
    /// Whether something of it is the person's own, or was meant to be.
    [[nodiscard]] bool differs(const CatalogueSubject& subject) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

Q_SIGNALS:
    void edited();

private:
    struct Refused
    {
        QString typed;
        std::optional<CatalogueValue> value; ///< empty: not even of the field's form
        QString why;
    };

    void enter(const OwnField& field, const QString& typed);
    void takeIfSound(const OwnField& field);
    [[nodiscard]] QString ownText(const OwnField& field) const;
    [[nodiscard]] const Refused* refused(const OwnField& field) const;
    [[nodiscard]] std::vector<OwnField> fieldsOf(const CatalogueSubject& subject) const;
    void reload();

    const RecordBook& m_book;
    OwnChanges& m_changes;
    std::vector<std::pair<std::string, std::string>> m_refrigerants;
    CatalogueSubject m_subject;
    std::vector<OwnField> m_fields;
    std::map<JsonPath, Refused> m_refused;
};

} // namespace padside
