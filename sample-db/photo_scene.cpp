// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_scene.h"

namespace padside {

Scene::Scene(const Framing& framing)
    : m_framing(framing)
    , m_texels(static_cast<std::size_t>(width) * height)
{
}

} // namespace padside
