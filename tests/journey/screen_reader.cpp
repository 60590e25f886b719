// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/journey/screen_reader.h"

#include <atspi/atspi.h>
#include <thread>

namespace padside::test {

namespace {

/// A thing may vanish while it is asked: then it says nothing.
struct Failure
{
    Failure() = default;
    Failure(const Failure&) = delete;
    Failure& operator=(const Failure&) = delete;
    ~Failure() { g_clear_error(&error); }
    GError* error = nullptr;
};

std::string taken(char* text)
{
    const std::string result = text != nullptr ? text : "";
    g_free(text);
    return result;
}

std::shared_ptr<AtspiAccessible> owned(AtspiAccessible* accessible)
{
    return {accessible, [](AtspiAccessible* one) {
                if (one != nullptr)
                    g_object_unref(one);
            }};
}

bool hasState(AtspiAccessible* accessible, AtspiStateType state)
{
    AtspiStateSet* states = atspi_accessible_get_state_set(accessible);
    const bool has = states != nullptr && atspi_state_set_contains(states, state) != FALSE;
    if (states != nullptr)
        g_object_unref(states);
    return has;
}

void collect(const Heard& from, std::vector<Heard>& into)
{
    for (const Heard& child : from.children()) {
        if (!child.isShowing())
            continue;
        into.push_back(child);
        collect(child, into);
    }
}

} // namespace

Heard::Heard(std::shared_ptr<AtspiAccessible> accessible)
    : m_accessible(std::move(accessible))
{
}

std::string Heard::name() const
{
    Failure failure;
    return taken(atspi_accessible_get_name(m_accessible.get(), &failure.error));
}

std::string Heard::description() const
{
    Failure failure;
    return taken(atspi_accessible_get_description(m_accessible.get(), &failure.error));
}

std::string Heard::role() const
{
    Failure failure;
    return taken(atspi_accessible_get_role_name(m_accessible.get(), &failure.error));
}

bool Heard::isShowing() const
{
    return hasState(m_accessible.get(), ATSPI_STATE_SHOWING);
}

bool Heard::takesFocus() const
{
    return hasState(m_accessible.get(), ATSPI_STATE_FOCUSABLE);
}

std::vector<Heard> Heard::children() const
{
    Failure failure;
    const int count = atspi_accessible_get_child_count(m_accessible.get(), &failure.error);
    std::vector<Heard> result;
    for (int i = 0; i < count; ++i) {
        Failure ofChild;
        if (auto child = owned(atspi_accessible_get_child_at_index(m_accessible.get(), i, &ofChild.error)))
            result.emplace_back(std::move(child));
    }
    return result;
}

bool Heard::press() const
{
    AtspiAction* action = atspi_accessible_get_action_iface(m_accessible.get());
    if (action == nullptr)
        return false;
    Failure failure;
    const bool done = atspi_action_do_action(action, 0, &failure.error) != FALSE;
    g_object_unref(action);
    return done;
}

bool Heard::write(const std::string& text) const
{
    AtspiEditableText* field = atspi_accessible_get_editable_text_iface(m_accessible.get());
    if (field == nullptr)
        return false;
    Failure failure;
    const bool done = atspi_editable_text_set_text_contents(field, text.c_str(), &failure.error) != FALSE;
    g_object_unref(field);
    return done;
}

ScreenReader::ScreenReader()
{
    atspi_init();
}

std::vector<Heard> ScreenReader::everythingOf(const std::string& program) const
{
    const auto desktop = owned(atspi_get_desktop(0));
    // What the library remembers is out of date as soon as the window changes: ask each time.
    atspi_accessible_set_cache_mask(desktop.get(), ATSPI_CACHE_NONE);
    std::vector<Heard> everything;
    for (const Heard& application : Heard(desktop).children()) {
        if (application.name() == program)
            collect(application, everything);
    }
    return everything;
}

std::optional<Heard> ScreenReader::waitFor(const std::string& program, const Wanted& wanted,
                                           std::chrono::seconds atMost) const
{
    const auto end = std::chrono::steady_clock::now() + atMost;
    while (std::chrono::steady_clock::now() < end) {
        for (const Heard& heard : everythingOf(program)) {
            if (wanted(heard))
                return heard;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(200));
    }
    return std::nullopt;
}

} // namespace padside::test
