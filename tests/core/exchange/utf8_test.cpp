// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/utf8.h"

#include <gtest/gtest.h>
#include <string>

namespace padside {

TEST(Utf8, WellFormedTextIsGoodToItsEnd)
{
    for (const char* text :
         {"", "plain", "°C “µ” − ü", "\u20ac", "\U0001F600", "\u007f\u0080\u07ff\u0800\uffff\U00010000\U0010ffff"})
        EXPECT_EQ(utf8Length(text), std::string(text).size()) << text;
    EXPECT_EQ(utf8Length(std::string_view("a\0b", 3)), 3U);
}

// RFC 3629, section 4 (the syntax) and section 10 (overlong forms as an attack: C0 80).
TEST(Utf8, MalformedTextIsGoodUpToTheFault)
{
    for (const char* fault : {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xE0\x80\x80", "\xE0\x9F\xBF", "\xED\xA0\x80",
                              "\xED\xBF\xBF", "\xF0\x80\x80\x80", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80",
                              "\xF5\x80\x80\x80", "\xFF", "\xC3", "\xE2\x82", "\xF0\x9F\x98", "\xC3x", "\xE2\x82x"}) {
        EXPECT_EQ(utf8Length("ü" + std::string(fault)), 2U);
        EXPECT_EQ(utf8Length(fault), 0U);
    }
}

} // namespace padside
