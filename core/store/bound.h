// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/record/coded.h"
#include "core/record/id.h"

#include <QByteArray>
#include <QVariant>

#include <concepts>
#include <optional>
#include <string>

namespace padside {

/// Values of the record as Qt's queries bind them: text as UTF-16, keys as 16 bytes, enums as their codes, absent as
/// NULL.
[[nodiscard]] QVariant bound(const std::string& text); ///< throws StoreError if it is not UTF-8
[[nodiscard]] QVariant bound(double value); ///< throws StoreError if it is not finite: SQLite would keep it as NULL
[[nodiscard]] QVariant bound(Date date);
[[nodiscard]] QVariant bound(const Instant& instant);

template <std::integral Integer> [[nodiscard]] QVariant bound(Integer value)
{
    return QVariant::fromValue(static_cast<qint64>(value));
}

template <typename Tag> [[nodiscard]] QVariant bound(const Id<Tag>& id)
{
    return QByteArray(reinterpret_cast<const char*>(id.bytes().data()), static_cast<qsizetype>(id.bytes().size()));
}

template <typename Enum>
requires std::is_enum_v<Enum>
[[nodiscard]] QVariant bound(Enum value)
{
    return bound(std::string(codeOf(value)));
}

template <typename T> [[nodiscard]] QVariant bound(const std::optional<T>& value)
{
    return value ? bound(*value) : QVariant();
}

} // namespace padside
