// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_painter.h"

#include "sample-db/photo_noise.h"

#include <QBuffer>

namespace padside {

namespace {

float spread(std::uint64_t key, float reach)
{
    return reach * (2 * static_cast<float>(fraction(key)) - 1);
}

QByteArray jpegOf(const QImage& image, int quality)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPG", quality);
    return bytes;
}

} // namespace

QImage drawPhoto(const PhotoOrder& order)
{
    // Nobody stands in exactly the same place twice.
    Framing framing = framingOf(order.subject);
    framing.x += spread(order.moment + 1, 14);
    framing.y += spread(order.moment + 2, 11);
    framing.zoom *= 1 + spread(order.moment + 3, 0.035F);
    framing.tilt = spread(order.moment + 4, 0.022F);

    Scene scene(framing);
    const float age = ramp(1.2F, 4.6F, static_cast<float>(order.weathering.decay));
    paintSubject(scene, order.subject, order.unitKey, age);
    Weathering weathering = order.weathering;
    if (order.subject == PhotoSubject::contactor)
        weathering.decay
            = 1 + 0.35 * (weathering.decay - 1); // what ages there is the points; the plate behind rusts little
    weather(scene, weathering);

    Light light;
    light.sun = static_cast<float>(fraction(order.moment + 5)) * (order.weathering.wet > 0.5 ? 0.4F : 1.0F);
    light.exposure = 1.06F + spread(order.moment + 6, 0.07F);
    light.warmth = spread(order.moment + 7, 0.8F);
    light.grain = order.moment + 8;
    return takePicture(scene, light);
}

MadePhoto makePhoto(const PhotoOrder& order)
{
    const QImage image = drawPhoto(order);
    return {jpegOf(image, 85), jpegOf(image.scaledToWidth(320, Qt::SmoothTransformation), 80)};
}

} // namespace padside
