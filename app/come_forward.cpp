// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/come_forward.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>
#include <QLocalServer>
#include <QLocalSocket>
#include <QStandardPaths>

namespace padside {

namespace {

constexpr int longestWaitMilliseconds = 1000; ///< a window that is busy longer than this does not answer
const QByteArray shown = "shown\n";

QString socketOf(const QString& file)
{
    const QByteArray path = QFileInfo(file).canonicalFilePath().toUtf8();
    const QByteArray name = QCryptographicHash::hash(path, QCryptographicHash::Sha256).toHex().left(16);
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation));
    return folder.filePath(QStringLiteral("padside-") + QString::fromLatin1(name));
}

} // namespace

ComeForward::ComeForward(const QString& file, QObject* parent)
    : QObject(parent)
    , m_server(new QLocalServer(this))
{
    m_server->setSocketOptions(QLocalServer::UserAccessOption);
    connect(m_server, &QLocalServer::newConnection, this, &ComeForward::answer);
    QLocalServer::removeServer(socketOf(file)); // left by a crash: whoever holds the claim is the only one to listen
    m_server->listen(socketOf(file));
}

bool ComeForward::call(const QString& file)
{
    QLocalSocket socket;
    socket.connectToServer(socketOf(file), QIODevice::ReadOnly);
    return socket.waitForConnected(longestWaitMilliseconds) && socket.waitForReadyRead(longestWaitMilliseconds)
        && socket.readAll() == shown;
}

void ComeForward::answer()
{
    QLocalSocket* caller = m_server->nextPendingConnection();
    connect(caller, &QLocalSocket::disconnected, caller, &QObject::deleteLater);
    Q_EMIT called();
    caller->write(shown);
    caller->disconnectFromServer(); // after what was written has gone out
}

} // namespace padside
