// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"
#include "core/store/store.h"
#include "ui/paper/paper_painter.h"

#include <string>

namespace CLI { // NOLINT(readability-identifier-naming): the library's own name
class App;
}

namespace padside {

/// What every command that writes a paper about one unit is asked.
struct PaperWords
{
    std::string file;
    std::string unit;
    std::string out;
    std::string contractor;
    PaperSize size = PaperSize::a4;
};

/// Adds FILE, --unit, --out, --contractor and --paper.
void addPaperWords(CLI::App& command, PaperWords& words);

/// Reads the record's photographs from beside the file; both outlive it. A photograph it does not know is a null image.
[[nodiscard]] PhotoSource photosFor(Store& store, const UnitRecord& record);

} // namespace padside
