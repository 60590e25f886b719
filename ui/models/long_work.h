// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <QObject>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>

class QThread;

namespace padside {

/// One long piece of work (a backup, an import, a large export) done beside the window, so that the window goes on
/// answering: it tells how far it is, can be cancelled, and ends with exactly one of done(), cancelled() and failed().
/// The work runs in a thread of its own and must open its own Store. All signals come in the thread of this object.
class LongWork : public QObject
{
    Q_OBJECT
public:
    /// Tells how far the work is, 0 to 1; false asks it to stop and leave nothing behind.
    using Tell = std::function<bool(double)>;
    /// True if it was finished, false if it stopped when asked to. May throw StoreError.
    using Work = std::function<bool(const Tell&)>;

    explicit LongWork(QObject* parent = nullptr);
    ~LongWork() override; ///< cancels and waits for the end

    /// False, and nothing happens, while another work is still going on.
    bool start(Work work);
    void cancel();
    [[nodiscard]] bool isRunning() const { return m_thread != nullptr; }

Q_SIGNALS:
    void progressed(double share);
    void done();
    void cancelled();
    void failed(const padside::Sentence& why);

private:
    enum class End { done, cancelled, failed };
    void ended(End end, const std::optional<Sentence>& why);

    std::unique_ptr<QThread> m_thread;
    std::atomic<bool> m_stop = false;
};

} // namespace padside
