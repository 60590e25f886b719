// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/refrigerant/shipped_refrigerants.h"

#include "resources/resources.h"

#include <stdexcept>

namespace padside::test {

const Catalogue& shippedAll()
{
    static const Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
    return catalogue;
}

const Refrigerant& shippedRefrigerant(std::string_view code)
{
    const Refrigerant* found = shippedAll().refrigerant(code);
    if (found == nullptr)
        throw std::invalid_argument("no refrigerant " + std::string(code));
    return *found;
}

} // namespace padside::test
