// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <chrono>
#include <compare>
#include <cstdint>
#include <cstring>
#include <functional>
#include <optional>
#include <random>
#include <string>
#include <string_view>

namespace padside {

/// The 16 bytes of a UUID (RFC 9562).
using UuidBytes = std::array<std::uint8_t, 16>;

/// "018f3c2e-7b1a-7c3d-9e4f-0123456789ab".
[[nodiscard]] std::string uuidText(const UuidBytes& bytes);

/// Reads what uuidText writes (either case); anything else is empty.
[[nodiscard]] std::optional<UuidBytes> parseUuid(std::string_view text);

/// A key that can't be mixed up with a key of another sort: SiteId, UnitId, …
template <typename Tag> class Id
{
public:
    Id() = default;
    explicit Id(const UuidBytes& bytes)
        : m_bytes(bytes)
    {
    }

    [[nodiscard]] const UuidBytes& bytes() const { return m_bytes; }
    [[nodiscard]] std::string text() const { return uuidText(m_bytes); }
    [[nodiscard]] bool isNull() const { return m_bytes == UuidBytes{}; }

    // NOLINTNEXTLINE(modernize-use-nullptr): a false alarm of clang-tidy 14
    friend auto operator<=>(const Id&, const Id&) = default;

private:
    UuidBytes m_bytes{};
};

using SiteId = Id<struct SiteTag>;
using UnitId = Id<struct UnitTag>;
using PartId = Id<struct PartTag>;
using ZoneId = Id<struct ZoneTag>;
using VisitId = Id<struct VisitTag>;
using FindingId = Id<struct FindingTag>;
using ReadingId = Id<struct ReadingTag>;
using TreatmentId = Id<struct TreatmentTag>;
using PhotoId = Id<struct PhotoTag>;
using ChargeId = Id<struct ChargeTag>;
using FollowUpId = Id<struct FollowUpTag>;
using AcknowledgementId = Id<struct AcknowledgementTag>;

/// Makes UUIDv7 keys: 48 bits of Unix milliseconds, then a 12-bit counter that keeps keys made within one millisecond
/// in order, then random bits. Clock and seed come from outside, so that a demo or a test can be repeated exactly.
class IdMaker
{
public:
    using MillisecondClock = std::function<std::int64_t()>;

    IdMaker(MillisecondClock now, std::uint64_t seed);

    [[nodiscard]] UuidBytes next();

    template <typename AnyId> [[nodiscard]] AnyId make() { return AnyId(next()); }

private:
    MillisecondClock m_now;
    std::mt19937_64 m_random;
    std::int64_t m_lastMillisecond = -1;
    std::uint16_t m_counter = 0;
};

} // namespace padside

template <typename Tag> struct std::hash<padside::Id<Tag>>
{
    std::size_t operator()(const padside::Id<Tag>& id) const noexcept
    {
        std::uint64_t low = 0; // the last eight bytes are random
        std::memcpy(&low, id.bytes().data() + 8, sizeof low);
        return static_cast<std::size_t>(low);
    }
};
