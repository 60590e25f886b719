// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/bound.h"

#include "core/store/sqlite_failure.h"

#include <QString>
#include <QUtf8StringView>

#include <cmath>

namespace padside {

QVariant bound(const std::string& text)
{
    const QUtf8StringView utf8(text.data(), static_cast<qsizetype>(text.size()));
    if (!utf8.isValidUtf8())
        throw storeError(ProblemKind::badInput,
                         PADSIDE_SAY("A text is not valid UTF-8 and would be changed by keeping it: type it again."));
    return text.empty() ? QString(QLatin1StringView("")) : utf8.toString(); // a null QString would be kept as NULL
}

QVariant bound(double value)
{
    if (!std::isfinite(value))
        throw storeError(ProblemKind::badInput, PADSIDE_SAY("A number is not finite: check what was typed."));
    return value;
}

QVariant bound(Date date)
{
    return bound(isoText(date));
}

QVariant bound(const Instant& instant)
{
    return bound(instantText(instant));
}

} // namespace padside
