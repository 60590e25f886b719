// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "core/store/store.h"
#include "sample-db/sample.h"

#include <QTemporaryDir>

#include <memory>
#include <vector>

namespace padside::test {

/// The catalogue as shipped.
[[nodiscard]] const Catalogue& shipped();

/// A sample in a folder of its own.
struct Sample
{
    explicit Sample(const SampleOptions& options);

    [[nodiscard]] std::vector<UnitRecord> records() const; ///< by site name, then tag
    [[nodiscard]] UnitRecord record(const std::string& tag) const;

    QTemporaryDir folder;
    std::unique_ptr<Store> store;
};

/// The default sample without photographs, built once.
[[nodiscard]] const Sample& plainSample();

} // namespace padside::test
