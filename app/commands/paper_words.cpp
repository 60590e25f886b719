// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/paper_words.h"

#include "core/store/photo_files.h"
#include "ui/paper/visit_summary.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>

namespace padside {

void addPaperWords(CLI::App& command, PaperWords& words)
{
    command.add_option("file", words.file, "the record file")->required()->type_name("FILE");
    command.add_option("--unit", words.unit, "the unit's tag")->required()->type_name("TAG");
    command.add_option("--out", words.out, "the PDF to write")->required()->type_name("PDF");
    command.add_option("--contractor", words.contractor, "the name at the head of the page")->type_name("NAME");
    command.add_option("--paper", words.size, "paper size")
        ->transform(CLI::CheckedTransformer(
            std::map<std::string, PaperSize>{{"a4", PaperSize::a4}, {"letter", PaperSize::letter}}))
        ->type_name("a4|letter")
        ->default_str("a4");
}

PhotoSource photosFor(Store& store, const UnitRecord& record)
{
    return [&store, &record](PhotoId id) {
        const auto photo = std::ranges::find(record.photos, id, &Photo::id);
        return photo == record.photos.end() ? QImage() : readPhotoForPaper(store.photos().path(*photo));
    };
}

} // namespace padside
