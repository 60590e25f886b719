// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace padside::test {

/// A disk that fails on purpose: a layer over SQLite's own file system, registered as the default, so that Qt's driver
/// uses it. Writes, syncs and truncations are counted while it is armed; the n-th fails. Syncs never reach the disk
/// (that tests power cuts, which this does not), so runs are quick.
class FailingVfs
{
public:
    enum class Failure {
        once, ///< the n-th call fails, later ones work
        fromThenOn, ///< the disk has died
        torn, ///< half of the n-th write arrives, then the disk has died
        full, ///< no more room from then on
    };

    FailingVfs();
    ~FailingVfs();
    FailingVfs(const FailingVfs&) = delete;
    FailingVfs& operator=(const FailingVfs&) = delete;

    void arm(int nthCall, Failure failure);
    void disarm();
    /// From now on remembers what each write replaced until its file is synced. With `syncsCount` false the disk lies:
    /// it says that it synced and did not.
    void rememberUnsynced(bool syncsCount = true);
    /// Takes back every write that no sync made last, in all files, and stops remembering. Close the files first.
    void cutPower();

    [[nodiscard]] bool hasFailed() const; ///< since it was armed
    [[nodiscard]] int calls() const; ///< since it was armed
};

} // namespace padside::test
