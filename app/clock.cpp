// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/clock.h"

#include <QDateTime>

namespace padside {

Instant now()
{
    const QDateTime moment = QDateTime::currentDateTime();
    return Instant{std::chrono::sys_seconds(std::chrono::seconds(moment.toSecsSinceEpoch())),
                   std::chrono::minutes(moment.offsetFromUtc() / 60)};
}

std::int64_t millisecondsNow()
{
    return QDateTime::currentMSecsSinceEpoch();
}

} // namespace padside
