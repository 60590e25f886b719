// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_subjects.h"

namespace padside {

void paintSubject(Scene& scene, PhotoSubject subject, std::uint64_t variant, float age)
{
    switch (subject) {
    case PhotoSubject::vesselCrown:
    case PhotoSubject::vesselShell:
    case PhotoSubject::vesselBottom:
    case PhotoSubject::vesselJoints:
        return paintVessel(scene, variant);
    case PhotoSubject::tubing:
        return paintTubing(scene, variant);
    case PhotoSubject::cabinet:
        return paintCabinet(scene, variant);
    case PhotoSubject::fins:
        return paintFins(scene, variant, age);
    case PhotoSubject::basePan:
        return paintBasePan(scene, variant, age);
    case PhotoSubject::contactor:
        return paintContactor(scene, variant, age);
    case PhotoSubject::capacitor:
        return paintCapacitor(scene, variant, age);
    }
}

Framing framingOf(PhotoSubject subject)
{
    switch (subject) {
    case PhotoSubject::vesselCrown:
        return {480, 215, 1.45F};
    case PhotoSubject::vesselShell:
        return {480, 400, 1.35F};
    case PhotoSubject::vesselBottom:
        return {480, 560, 1.45F};
    case PhotoSubject::vesselJoints:
        return {480, 110, 2.10F};
    case PhotoSubject::tubing:
    case PhotoSubject::cabinet:
    case PhotoSubject::fins:
    case PhotoSubject::basePan:
    case PhotoSubject::contactor:
    case PhotoSubject::capacitor:
        return {480, 360, 1.05F};
    }
    return {};
}

} // namespace padside
