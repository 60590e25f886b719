// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Made moist_air_states.csv: 10 000 made-up states of moist air and what the open-source library PsychroLib 1.1.1 answers.
// In a folder of its own: npm install psychrolib@1.1.1; node make_moist_air.mjs > moist_air_states.csv

import { createRequire } from "node:module";
const psychrometrics = createRequire(process.cwd() + "/")("psychrolib");
psychrometrics.SetUnitSystem(psychrometrics.SI);

let state = 20260502;
/** The same numbers every time (Park and Miller 1988, minimal standard), 0..1. */
function next() {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
}

const stations = [101325, 95461, 89875, 79495, 61640]; // Pa; 0 to 4000 m
const rounded = (value, digits) => Number(value.toFixed(digits));

console.log("station_pressure_Pa,dry_bulb_C,relative_humidity,wet_bulb_C,dew_point_C,humidity_ratio");
for (let i = 0; i < 10000; ++i) {
    // One in five near freezing, where the equations change over.
    const dryBulb = rounded(i % 5 === 0 ? -3 + 18 * next() : -30 + 80 * next(), 2);
    const humidity = rounded(i % 50 === 0 ? 1 : 0.01 + 0.99 * next(), 4);
    const station = stations[Math.floor(next() * stations.length)];
    const [ratio, wetBulb, dewPoint] = psychrometrics.CalcPsychrometricsFromRelHum(dryBulb, humidity, station);
    console.log([station, dryBulb, humidity, rounded(wetBulb, 4), rounded(dewPoint, 4), ratio.toPrecision(7)].join(","));
}
