// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/store/failing_vfs.h"

#include <new>
#include <sqlite3.h>

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
sqlite3_vfs* under = nullptr;
sqlite3_vfs layer;

struct File : sqlite3_file
{
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

int write(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset)
{
    switch (nextCall()) {
    case Call::works:
        return realOf(file)->pMethods->xWrite(realOf(file), bytes, count, offset);
    case Call::tears:
        realOf(file)->pMethods->xWrite(realOf(file), bytes, count / 2, offset);
        return SQLITE_IOERR_WRITE;
    case Call::fails:
        break;
    }
    return errorOr(SQLITE_IOERR_WRITE);
}

int truncate(sqlite3_file* file, sqlite3_int64 size)
{
    return nextCall() == Call::works ? realOf(file)->pMethods->xTruncate(realOf(file), size) : SQLITE_IOERR_TRUNCATE;
}

int sync(sqlite3_file*, int)
{
    return nextCall() == Call::works ? SQLITE_OK : errorOr(SQLITE_IOERR_FSYNC);
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

bool FailingVfs::hasFailed() const
{
    return state.failed;
}

int FailingVfs::calls() const
{
    return state.calls;
}

} // namespace padside::test
