// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/quantity/problem.h"

#include <QString>

#include <memory>
#include <optional>
#include <variant>

class QLockFile;

namespace padside {

/// Who has a record file open for writing.
struct FileHolder
{
    QString host; ///< empty if the mark beside the file doesn't say
    std::int64_t process = 0; ///< its number on that host
    std::optional<Instant> since;
    bool onThisHost = true;
};

/// The right to write to a record file: one program at a time. While it is held, a small file `<file>.in-use` lies
/// beside the record and names the holder. Reading needs no claim.
///
/// A mark whose program has ended (a crash, a kill, a power cut) is recognised and doesn't stand in the way. A mark
/// from another computer can't be checked from here: the person decides.
class FileClaim
{
public:
    /// The claim, or who has it already, or why neither can be known.
    using Outcome = std::variant<FileClaim, FileHolder, Problem>;

    /// Claims the file at `path` (which need not be there yet; links are followed). Where the folder can't be written
    /// to, the claim is given without a mark: nothing can be written to the record either.
    [[nodiscard]] static Outcome make(const QString& path);

    /// The same for a command that writes: a file in use is thrown as StoreError (refused).
    [[nodiscard]] static FileClaim makeOrThrow(const QString& path);

    /// Takes away the mark another computer left. Only when the person says that no program there has the file open;
    /// false if the mark can't be removed.
    [[nodiscard]] static bool dropMarkOfOtherHost(const QString& path);

    ~FileClaim();
    FileClaim(FileClaim&&) noexcept;
    FileClaim& operator=(FileClaim&&) noexcept;
    FileClaim(const FileClaim&) = delete;
    FileClaim& operator=(const FileClaim&) = delete;

private:
    explicit FileClaim(std::unique_ptr<QLockFile> mark);
    std::unique_ptr<QLockFile> m_mark; ///< null where no mark could be left
};

/// The name of the mark beside a record file.
[[nodiscard]] QString inUseMarkOf(const QString& recordFile);

/// "harbour.padside is open in another Padside window …": who, where, since when, and what to do.
[[nodiscard]] Sentence inUseSentence(const QString& recordFile, const FileHolder& holder);

} // namespace padside
