// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTemporaryDir>

namespace padside::test {

/// No screen unless one is asked for; settings, data and caches in a folder of their own while this lives, never in the
/// person's. To be made before the application.
class TestSurroundings
{
public:
    TestSurroundings()
    {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        for (const char* variable : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"})
            qputenv(variable, m_home.filePath(QString::fromLatin1(variable)).toUtf8());
    }

private:
    QTemporaryDir m_home;
};

} // namespace padside::test
