// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/judgement_book.h"

#include "core/store/bound.h"
#include "core/store/connection.h"
#include "core/store/rows.h"
#include "core/store/statement_text.h"

using namespace Qt::Literals::StringLiterals;

namespace padside {

JudgementBook::JudgementBook(Connection& connection)
    : m_connection(connection)
{
}

void JudgementBook::acknowledge(const Acknowledgement& acknowledgement)
{
    static const QString sql = insertText("acknowledgement", acknowledgementColumns);
    m_connection.write(sql,
                       {bound(acknowledgement.id), bound(acknowledgement.unitId), bound(acknowledgement.rule),
                        bound(acknowledgement.partId), bound(acknowledgement.zoneId), bound(acknowledgement.severity),
                        acknowledgement.grade ? bound(numeral(*acknowledgement.grade)) : QVariant(),
                        bound(acknowledgement.extent), bound(acknowledgement.reason), bound(acknowledgement.technician),
                        bound(acknowledgement.at), bound(acknowledgement.takenBackAt)});
}

void JudgementBook::takeBack(AcknowledgementId id, const Instant& at)
{
    const int changed
        = m_connection.write(u"UPDATE acknowledgement SET taken_back_at = ? WHERE id = ? AND taken_back_at IS NULL"_s,
                             {bound(at), bound(id)});
    if (changed == 0)
        throw storeError(ProblemKind::refused,
                         PADSIDE_SAY("This acknowledgement is not in the file, or was taken back already."));
}

void JudgementBook::assume(UnitId unit, const UnitAssumption& assumption)
{
    static const QString sql = upsertText("unit_assumption", "unit_id, code, value", "unit_id, code");
    m_connection.write(sql, {bound(unit), bound(assumption.code), bound(assumption.value)});
}

void JudgementBook::forgetAssumption(UnitId unit, const std::string& code)
{
    m_connection.write(u"DELETE FROM unit_assumption WHERE unit_id = ? AND code = ?"_s, {bound(unit), bound(code)});
}

} // namespace padside
