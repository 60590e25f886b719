// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/text_file.h"

#include <filesystem>
#include <fstream>
#include <system_error>

namespace padside {

namespace {

tl::unexpected<Problem> cannotRead(std::string pattern, const std::string& path)
{
    return problem(ProblemKind::cannotRead, std::move(pattern), {path, mostTextFileBytes / 1'000'000});
}

} // namespace

Result<std::string> readTextFile(const std::string& path)
{
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (!std::filesystem::exists(status))
        return cannotRead(PADSIDE_SAY("There is no file “{0}”. Check the path."), path);
    if (std::filesystem::is_directory(status))
        return cannotRead(PADSIDE_SAY("“{0}” is a folder. Name a file in it."), path);
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return cannotRead(PADSIDE_SAY("“{0}” cannot be opened. Check that you may read it."), path);

    std::string text;
    std::string block(65'536, '\0');
    while (file.read(block.data(), static_cast<std::streamsize>(block.size())) || file.gcount() > 0) {
        text.append(block, 0, static_cast<std::size_t>(file.gcount()));
        if (static_cast<std::int64_t>(text.size()) > mostTextFileBytes)
            return cannotRead(
                PADSIDE_SAY("“{0}” is larger than {1} million bytes. Split it, or check that it is the right file."),
                path);
    }
    if (file.bad())
        return cannotRead(PADSIDE_SAY("“{0}” could not be read to its end. Check the disk, then try again."), path);
    return text;
}

} // namespace padside
