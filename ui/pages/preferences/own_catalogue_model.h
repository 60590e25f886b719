// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/own_changes.h"

#include <QAbstractTableModel>

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace padside {

class RecordBook;

/// The texts, figures and costs of one part kind, or what money is reckoned from for all units: what each is, ours, the
/// person's own (empty: ours holds), and what is wrong with it. An entry that can't be taken stays as it was typed,
/// beside its sentence, also while another part kind is shown.
class OwnCatalogueModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    enum Column { what, ours, own, remark, columns };

    /// Both outlive it.
    OwnCatalogueModel(const RecordBook& book, OwnChanges& changes, QObject* parent = nullptr);

    static constexpr const char* allUnits = ""; ///< in the place of a part kind: general figures and prices

    void showPartKind(const std::string& code);
    void putBack(int row);
    void putAllBack(); ///< of the part kind shown

    /// The first entry that can't be taken, and why; empty if all can.
    [[nodiscard]] QString problem() const;
    [[nodiscard]] bool hasProblem(const std::string& partKind) const;

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
    using Path = std::vector<std::string>;
    struct Refused
    {
        QString typed;
        std::optional<CatalogueValue> value; ///< empty: not even a number
        QString why;
    };

    void enter(const OwnField& field, const QString& typed);
    void takeIfSound(const OwnField& field);
    [[nodiscard]] QString shownValue(const CatalogueValue& value, bool translate) const;
    [[nodiscard]] QString ownText(const OwnField& field) const;
    [[nodiscard]] const Refused* refused(const OwnField& field) const;
    void readFields();
    void reload();

    const RecordBook& m_book;
    OwnChanges& m_changes;
    std::vector<std::pair<std::string, std::string>> m_refrigerants;
    std::string m_partKind;
    std::vector<OwnField> m_fields;
    std::map<Path, Refused> m_refused;
};

} // namespace padside
