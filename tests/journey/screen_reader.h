// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

struct _AtspiAccessible; // NOLINT(bugprone-reserved-identifier,readability-identifier-naming) as libatspi names it

namespace padside::test {

/// One thing on the screen as a screen reader is told of it over AT-SPI.
class Heard
{
public:
    explicit Heard(std::shared_ptr<_AtspiAccessible> accessible);

    [[nodiscard]] std::string name() const;
    [[nodiscard]] std::string description() const;
    [[nodiscard]] std::string role() const; ///< AT-SPI's word: "push button", "list item", "text", …
    [[nodiscard]] bool isShowing() const;
    [[nodiscard]] bool takesFocus() const;
    [[nodiscard]] std::vector<Heard> children() const;

    /// Carries out its first action ("Press", "Toggle"); false if it has none.
    [[nodiscard]] bool press() const;
    /// Puts text into an editable field; false if it can't be edited.
    [[nodiscard]] bool write(const std::string& text) const;

private:
    std::shared_ptr<_AtspiAccessible> m_accessible;
};

/// Listens to the desktop of the session bus.
class ScreenReader
{
public:
    using Wanted = std::function<bool(const Heard&)>;

    ScreenReader();

    /// Everything of the program that shows, from the window downwards. Empty while it is not there.
    [[nodiscard]] std::vector<Heard> everythingOf(const std::string& program) const;

    /// Waits until something that shows fits; nothing after `atMost`.
    [[nodiscard]] std::optional<Heard> waitFor(const std::string& program, const Wanted& wanted,
                                               std::chrono::seconds atMost = std::chrono::seconds(30)) const;
};

} // namespace padside::test
