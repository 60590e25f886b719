// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/own_catalogue.h"

#include "core/store/bound.h"
#include "core/store/connection.h"
#include "core/store/cursor.h"

using namespace Qt::Literals::StringLiterals;

namespace padside {

OwnCatalogue::OwnCatalogue(Connection& connection)
    : m_connection(connection)
{
}

std::string OwnCatalogue::changes() const
{
    return m_connection.text("SELECT merge_patch FROM own_catalogue");
}

void OwnCatalogue::setChanges(const std::string& mergePatch)
{
    if (mergePatch.empty()) {
        m_connection.write(u"DELETE FROM own_catalogue"_s, {});
        return;
    }
    {
        Cursor row(m_connection, "SELECT CASE WHEN json_valid(?1) THEN json_type(?1) = 'object' END");
        row.bind(1, mergePatch);
        if (!row.next() || row.integer(0) != 1)
            throw storeError(ProblemKind::badInput,
                             PADSIDE_SAY("The changes to the catalogue are not a JSON object: correct the text."));
    }
    m_connection.write(u"INSERT INTO own_catalogue (only_row, merge_patch) VALUES (1, ?) "
                       "ON CONFLICT (only_row) DO UPDATE SET merge_patch = excluded.merge_patch"_s,
                       {bound(mergePatch)});
}

} // namespace padside
