// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <QDialog>

#include <vector>

class QComboBox;
class QLineEdit;

namespace padside {

class RecordBook;

/// Where a photograph belongs and what it shows: its zone, before or after the work, a caption. The picture itself is
/// never changed.
class PhotoPlaceDialog : public QDialog
{
    Q_OBJECT
public:
    /// `record` is that of the photo's unit.
    PhotoPlaceDialog(const RecordBook& book, const UnitRecord& record, const Photo& photo, QWidget* parent = nullptr);

    [[nodiscard]] Photo photo() const; ///< as it stands in the form

private:
    void listZones(const RecordBook& book, const UnitRecord& record);

    Photo m_photo;
    std::vector<ZoneId> m_zones; ///< in the order of the list, after "the whole unit"
    QComboBox* m_zone;
    QComboBox* m_phase;
    QLineEdit* m_caption;
};

} // namespace padside
