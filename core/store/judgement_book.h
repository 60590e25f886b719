// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/acknowledgement.h"
#include "core/record/unit_assumption.h"

namespace padside {

class Connection;

/// What a person says about a unit apart from its visits: flags acknowledged, figures assumed. Each call is one durable
/// write. All functions throw StoreError.
class JudgementBook
{
public:
    explicit JudgementBook(Connection& connection);

    void acknowledge(const Acknowledgement& acknowledgement);
    /// From then on the flag stands as before. The acknowledgement stays in the file.
    void takeBack(AcknowledgementId id, const Instant& at);

    /// Puts the figure in the place of the one with the same code.
    void assume(UnitId unit, const UnitAssumption& assumption);
    void forgetAssumption(UnitId unit, const std::string& code);

private:
    Connection& m_connection;
};

} // namespace padside
