// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/store/failing_vfs.h"

#include <algorithm>
#include <cstdlib>
#include <fcntl.h>
#include <new>
#include <sqlite3.h>
#include <string>
#include <unistd.h>
#include <utility>
#include <vector>

namespace padside::test {

namespace {

// SQLite calls plain functions, so the state is in the file's own scope; the tests run on one thread.
struct State
{
    bool armed = false;
    int nth = 0;
    int calls = 0;
    bool failed = false;
    FailingVfs::Failure failure = FailingVfs::Failure::once;
};
State state;

/// What one write or truncation replaced.
struct Replaced
{
    std::string path;
    sqlite3_int64 offset = 0;
    std::vector<char> bytes;
    sqlite3_int64 sizeBefore = 0;
};
bool remembering = false;
bool syncsCount = true;
std::vector<Replaced> unsynced; // oldest first
sqlite3_vfs* under = nullptr;
sqlite3_vfs layer;

struct File : sqlite3_file
{
    const char* path = nullptr; ///< SQLite keeps it until the file is closed; empty for a nameless one
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

File* fileOf(sqlite3_file* file)
{
    return static_cast<File*>(file);
}

sqlite3_file* realOf(sqlite3_file* file)
{
    return fileOf(file)->real();
}

enum class Call { works, fails, tears };

Call nextCall()
{
    if (!state.armed)
        return Call::works;
    ++state.calls;
    const bool now = state.calls == state.nth;
    const bool later = state.calls > state.nth && state.failure != FailingVfs::Failure::once;
    if (!now && !later)
        return Call::works;
    state.failed = true;
    return now && state.failure == FailingVfs::Failure::torn ? Call::tears : Call::fails;
}

int errorOr(int usual)
{
    return state.failure == FailingVfs::Failure::full ? SQLITE_FULL : usual;
}

void remember(sqlite3_file* file, sqlite3_int64 offset, sqlite3_int64 count)
{
    if (!remembering || fileOf(file)->path == nullptr)
        return;
    Replaced old{fileOf(file)->path, offset, {}, 0};
    realOf(file)->pMethods->xFileSize(realOf(file), &old.sizeBefore);
    const sqlite3_int64 overlap = std::min(count, old.sizeBefore - offset);
    if (overlap > 0) {
        old.bytes.resize(static_cast<std::size_t>(overlap));
        realOf(file)->pMethods->xRead(realOf(file), old.bytes.data(), static_cast<int>(overlap), offset);
    }
    unsynced.push_back(std::move(old));
}

void forget(sqlite3_file* file)
{
    if (syncsCount && fileOf(file)->path != nullptr)
        std::erase_if(unsynced, [file](const Replaced& old) { return old.path == fileOf(file)->path; });
}

int write(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset)
{
    switch (nextCall()) {
    case Call::works:
        remember(file, offset, count);
        return realOf(file)->pMethods->xWrite(realOf(file), bytes, count, offset);
    case Call::tears:
        remember(file, offset, count / 2);
        realOf(file)->pMethods->xWrite(realOf(file), bytes, count / 2, offset);
        return SQLITE_IOERR_WRITE;
    case Call::fails:
        break;
    }
    return errorOr(SQLITE_IOERR_WRITE);
}

int truncate(sqlite3_file* file, sqlite3_int64 size)
{
    if (nextCall() != Call::works)
        return SQLITE_IOERR_TRUNCATE;
    sqlite3_int64 sizeBefore = 0;
    realOf(file)->pMethods->xFileSize(realOf(file), &sizeBefore);
    remember(file, size, sizeBefore - size);
    return realOf(file)->pMethods->xTruncate(realOf(file), size);
}

int sync(sqlite3_file* file, int)
{
    if (nextCall() != Call::works)
        return errorOr(SQLITE_IOERR_FSYNC);
    forget(file);
    return SQLITE_OK;
}

const sqlite3_io_methods& methods()
{
    static const sqlite3_io_methods table = [] {
        sqlite3_io_methods m{};
        m.iVersion = 2; // no memory-mapped reads: every byte passes here
        m.xClose = [](sqlite3_file* f) { return realOf(f)->pMethods->xClose(realOf(f)); };
        m.xRead = [](sqlite3_file* f, void* to, int n, sqlite3_int64 at) {
            return realOf(f)->pMethods->xRead(realOf(f), to, n, at);
        };
        m.xWrite = write;
        m.xTruncate = truncate;
        m.xSync = sync;
        m.xFileSize
            = [](sqlite3_file* f, sqlite3_int64* size) { return realOf(f)->pMethods->xFileSize(realOf(f), size); };
        m.xLock = [](sqlite3_file* f, int lock) { return realOf(f)->pMethods->xLock(realOf(f), lock); };
        m.xUnlock = [](sqlite3_file* f, int lock) { return realOf(f)->pMethods->xUnlock(realOf(f), lock); };
        m.xCheckReservedLock
            = [](sqlite3_file* f, int* is) { return realOf(f)->pMethods->xCheckReservedLock(realOf(f), is); };
        m.xFileControl
            = [](sqlite3_file* f, int op, void* arg) { return realOf(f)->pMethods->xFileControl(realOf(f), op, arg); };
        m.xSectorSize = [](sqlite3_file* f) { return realOf(f)->pMethods->xSectorSize(realOf(f)); };
        m.xDeviceCharacteristics
            = [](sqlite3_file* f) { return realOf(f)->pMethods->xDeviceCharacteristics(realOf(f)); };
        m.xShmMap = [](sqlite3_file* f, int page, int size, int extend, void volatile** to) {
            return realOf(f)->pMethods->xShmMap(realOf(f), page, size, extend, to);
        };
        m.xShmLock = [](sqlite3_file* f, int at, int n, int flags) {
            return realOf(f)->pMethods->xShmLock(realOf(f), at, n, flags);
        };
        m.xShmBarrier = [](sqlite3_file* f) { realOf(f)->pMethods->xShmBarrier(realOf(f)); };
        m.xShmUnmap = [](sqlite3_file* f, int gone) { return realOf(f)->pMethods->xShmUnmap(realOf(f), gone); };
        return m;
    }();
    return table;
}

int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    auto* made = new (file) File();
    made->pMethods = nullptr;
    made->path = name;
    const int code = under->xOpen(under, name, made->real(), flags, outFlags);
    if (made->real()->pMethods != nullptr)
        made->pMethods = &methods();
    return code;
}

} // namespace

FailingVfs::FailingVfs()
{
    under = sqlite3_vfs_find(nullptr);
    layer = *under;
    layer.zName = "padside-failing";
    layer.szOsFile = static_cast<int>(sizeof(File)) + under->szOsFile;
    layer.xOpen = open;
    sqlite3_vfs_register(&layer, 1);
}

FailingVfs::~FailingVfs()
{
    disarm();
    sqlite3_vfs_register(under, 1);
    sqlite3_vfs_unregister(&layer);
}

void FailingVfs::arm(int nthCall, Failure failure)
{
    state = {true, nthCall, 0, false, failure};
}

void FailingVfs::disarm()
{
    state.armed = false;
}

void FailingVfs::rememberUnsynced(bool count)
{
    unsynced.clear();
    remembering = true;
    syncsCount = count;
}

void FailingVfs::cutPower()
{
    remembering = false;
    while (!unsynced.empty()) {
        const Replaced old = std::move(unsynced.back());
        unsynced.pop_back();
        const int file = ::open(old.path.c_str(), O_WRONLY | O_CLOEXEC);
        if (file < 0) // removed since
            continue;
        const auto written = ::pwrite(file, old.bytes.data(), old.bytes.size(), old.offset);
        if (written != static_cast<ssize_t>(old.bytes.size()) || ::ftruncate(file, old.sizeBefore) != 0)
            std::abort();
        ::close(file);
    }
}

bool FailingVfs::hasFailed() const
{
    return state.failed;
}

int FailingVfs::calls() const
{
    return state.calls;
}

} // namespace padside::test
