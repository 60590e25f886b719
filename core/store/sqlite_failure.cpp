// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/sqlite_failure.h"

#include <array>
#include <sqlite3.h>
#include <string_view>
#include <utility>

namespace padside {

namespace {

/// What a trigger or constraint says, and the sentence it becomes.
struct Refusal
{
    std::string_view said;
    const char* pattern;
};

// The left side stands in the schema and never changes with the language; it may follow "UNIQUE constraint failed: "
// and kin.
constexpr std::array refusals{
    Refusal{
        "the visit is closed",
        PADSIDE_SAY("The visit is closed: what was entered there no longer changes. Enter a correction with a reason "
                    "instead.")},
    Refusal{"the visit is still open",
            PADSIDE_SAY("The visit is still open: change the entry itself. A correction is for a closed visit.")},
    Refusal{"the visit is not in the file",
            PADSIDE_SAY("The visit this belongs to is not in the file: open it first.")},
    Refusal{"the entry is not dated as its visit",
            PADSIDE_SAY(
                "The entry names another unit or another day than its visit: enter it at the visit it belongs to.")},
    Refusal{"the correction points elsewhere",
            PADSIDE_SAY("A correction must point at an entry of the same visit: choose the entry it stands for.")},
    Refusal{"the visit keeps its unit and day",
            PADSIDE_SAY("A visit keeps its unit and its day: discard it and open another.")},
    Refusal{"the visit begins open", PADSIDE_SAY("A visit begins open: close it once its entries are in.")},
    Refusal{"the follow-up belongs to a closed visit",
            PADSIDE_SAY("The follow-up was promised or settled at a closed visit: only an open visit can settle it.")},
    Refusal{"visit.unit_id", PADSIDE_SAY("This unit already has an open visit: close or discard that one first.")},
    Refusal{".corrects", PADSIDE_SAY("That entry was corrected already: correct the correction instead.")},
    Refusal{"unit.tag", PADSIDE_SAY("Another unit has this tag already: choose another tag.")},
    Refusal{"site has a name", PADSIDE_SAY("The site has no name: give it one.")},
    Refusal{"unit has a tag", PADSIDE_SAY("The unit has no tag: give it one.")},
    Refusal{"correction has a reason", PADSIDE_SAY("A correction needs a reason: say why the entry was wrong.")},
    Refusal{"fitted before removed",
            PADSIDE_SAY("The part would be removed before it was fitted: check the two dates.")},
    Refusal{"earliest before latest",
            PADSIDE_SAY("The follow-up would end before it begins: check its earliest and latest day.")},
    Refusal{"follow-up says why", PADSIDE_SAY("The follow-up does not say what to look at: write it down.")},
    Refusal{"mass is not negative", PADSIDE_SAY("A mass of refrigerant can't be negative: check the number.")},
};

Problem constraintProblem(int code, const std::string& message)
{
    for (const Refusal& refusal : refusals) {
        if (message.ends_with(refusal.said))
            return {ProblemKind::refused, {refusal.pattern, {}}};
    }
    if (code == SQLITE_CONSTRAINT_FOREIGNKEY)
        return {ProblemKind::refused,
                {PADSIDE_SAY("That points at something the file does not have, or takes away something still in use."),
                 {}}};
    if (code == SQLITE_CONSTRAINT_PRIMARYKEY || code == SQLITE_CONSTRAINT_UNIQUE)
        return {ProblemKind::refused,
                {PADSIDE_SAY("A record with the same key is in the file already ({0})."), {message}}};
    return {ProblemKind::refused,
            {PADSIDE_SAY("A value is missing or outside what the record allows ({0})."), {message}}};
}

Problem ioProblem(int code, const std::string& path)
{
    const bool reading = code == SQLITE_IOERR_READ || code == SQLITE_IOERR_SHORT_READ;
    if (reading)
        return {
            ProblemKind::cannotRead,
            {PADSIDE_SAY("The disk failed while {0} was read: check the disk, then open the latest backup."), {path}}};
    return {
        ProblemKind::cannotWrite,
        {PADSIDE_SAY("The disk failed while {0} was written: this step is not confirmed. Check the disk, open the file "
                     "again and see whether it is there."),
         {path}}};
}

Problem problemOf(int code, const std::string& message, const std::string& path)
{
    switch (code & 0xff) {
    case SQLITE_CONSTRAINT:
        return constraintProblem(code, message);
    case SQLITE_FULL:
        return {ProblemKind::cannotWrite,
                {PADSIDE_SAY("The disk is full: {0} was left as it was. Make room and try again."), {path}}};
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return {ProblemKind::cannotWrite,
                {PADSIDE_SAY("{0} can only be read, not written: check who may write to the file and its folder."),
                 {path}}};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_PROTOCOL:
        return {ProblemKind::cannotWrite,
                {PADSIDE_SAY("Another program is using {0}: close it there or wait, then try again."), {path}}};
    case SQLITE_CORRUPT:
    case SQLITE_FORMAT:
        return {ProblemKind::cannotRead,
                {PADSIDE_SAY("The file {0} is damaged: leave it as it is and open the latest backup."), {path}}};
    case SQLITE_NOTADB:
        return {
            ProblemKind::cannotRead,
            {PADSIDE_SAY("{0} is not a Padside record file, or its beginning is damaged: open another file."), {path}}};
    case SQLITE_IOERR:
        return ioProblem(code, path);
    case SQLITE_CANTOPEN:
        return {ProblemKind::cannotRead,
                {PADSIDE_SAY("{0} can't be opened: check that the file and its folder are there and may be used."),
                 {path}}};
    case SQLITE_NOMEM:
        return {ProblemKind::cannotWrite,
                {PADSIDE_SAY("There is not enough memory to use {0}: close other programs and try again."), {path}}};
    case SQLITE_TOOBIG:
        return {ProblemKind::badInput, {PADSIDE_SAY("That text is too long to be kept: shorten it."), {}}};
    default: // result codes are SQLite's, not an enum of ours
        return {ProblemKind::cannotRead, {PADSIDE_SAY("{0} could not be used: {1}."), {path, message}}};
    }
}

} // namespace

StoreError sqliteFailure(int code, const std::string& message, const std::string& path, std::string statement)
{
    return {problemOf(code, message, path), code, std::move(statement)};
}

StoreError storeError(ProblemKind kind, std::string pattern, std::vector<Argument> arguments)
{
    return StoreError(Problem{kind, Sentence{std::move(pattern), std::move(arguments)}});
}

} // namespace padside
