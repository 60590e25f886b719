// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>
#include <QString>

class QLocalServer;

namespace padside {

/// Lets a second start on the same file bring the window that has it to the front instead of opening it twice: a local
/// socket, for this person only, named after the file. Where it can't be made, nothing but this convenience is lost.
class ComeForward : public QObject
{
    Q_OBJECT
public:
    /// Listens for calls about `file`, which this program has claimed.
    explicit ComeForward(const QString& file, QObject* parent = nullptr);

    /// Asks the program that has `file` open to show its window. False: none answered.
    [[nodiscard]] static bool call(const QString& file);

Q_SIGNALS:
    void called();

private:
    void answer();

    QLocalServer* m_server;
};

} // namespace padside
