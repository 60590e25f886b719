// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/learn_rates.h"

#include "core/outlook/small_matrix.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace padside {

namespace {

constexpr int mostAscentRounds = 100;
constexpr double slopeStep = 1e-4; ///< of a logarithm
constexpr double curveStep = 3e-3;
constexpr double settledAscent = 1e-9; ///< of the log posterior
constexpr double mostLogMove = 2; ///< in one round

/// The log posterior by the logarithms of the rates over the prior's, in spreads of the prior's.
class Posterior
{
public:
    Posterior(std::vector<const ZoneSteps*> zones, const Rates& prior, double logSigma,
              std::shared_ptr<const Pace> pace, const std::function<bool()>& goOn)
        : m_zones(std::move(zones))
        , m_prior(prior)
        , m_logSigma(logSigma)
        , m_pace(std::move(pace))
        , m_goOn(goOn)
    {
    }

    [[nodiscard]] Rates ratesAt(const Vector4& place) const
    {
        Rates rates{};
        for (std::size_t k = 0; k < 4; ++k)
            rates[k] = m_prior[k] * std::exp(m_logSigma * place[k]);
        return rates;
    }

    /// Not a number once the work is to stop.
    [[nodiscard]] double at(const Vector4& place) const
    {
        if (m_goOn && !m_goOn())
            return std::numeric_limits<double>::quiet_NaN();
        double value = 0;
        for (const double z : place)
            value -= z * z / 2;
        const PacedChain chain(ratesAt(place), m_pace);
        for (const ZoneSteps* zone : m_zones)
            value += follow(zone->steps, zone->beginningKnown, chain).belief.logLikelihood();
        return value;
    }

    [[nodiscard]] Vector4 slopeAt(const Vector4& place) const
    {
        Vector4 slope{};
        for (std::size_t k = 0; k < 4; ++k)
            slope[k] = (at(shifted(place, k, slopeStep)) - at(shifted(place, k, -slopeStep))) / (2 * slopeStep);
        return slope;
    }

    /// Minus the second derivatives.
    [[nodiscard]] Matrix4 informationAt(const Vector4& place) const
    {
        Matrix4 information{};
        for (std::size_t k = 0; k < 4; ++k) {
            const Vector4 up = slopeAt(shifted(place, k, curveStep));
            const Vector4 down = slopeAt(shifted(place, k, -curveStep));
            for (std::size_t l = 0; l < 4; ++l)
                information[k][l] = (down[l] - up[l]) / (2 * curveStep);
        }
        for (std::size_t k = 0; k < 4; ++k) {
            for (std::size_t l = 0; l < k; ++l)
                information[k][l] = information[l][k] = (information[k][l] + information[l][k]) / 2;
        }
        return information;
    }

private:
    [[nodiscard]] static Vector4 shifted(Vector4 place, std::size_t k, double by)
    {
        place[k] += by;
        return place;
    }

    std::vector<const ZoneSteps*> m_zones;
    Rates m_prior;
    double m_logSigma;
    std::shared_ptr<const Pace> m_pace;
    const std::function<bool()>& m_goOn;
};

double dot(const Vector4& one, const Vector4& other)
{
    double sum = 0;
    for (std::size_t k = 0; k < 4; ++k)
        sum += one[k] * other[k];
    return sum;
}

Vector4 product(const Matrix4& matrix, const Vector4& vector)
{
    Vector4 result{};
    for (std::size_t k = 0; k < 4; ++k)
        result[k] = dot(matrix[k], vector);
    return result;
}

constexpr Matrix4 unitMatrix{{{1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}}};

/// The inverse of the curvature as BFGS guesses it; in spreads of the prior's the unit matrix is a good first one.
class CurvatureGuess
{
public:
    [[nodiscard]] Vector4 direction(const Vector4& slope)
    {
        Vector4 way = product(m_inverse, slope);
        if (!(dot(way, slope) > 0)) {
            m_inverse = unitMatrix;
            way = slope;
        }
        const double longest = std::abs(*std::ranges::max_element(way, {}, [](double step) { return std::abs(step); }));
        if (longest > mostLogMove) {
            for (double& step : way)
                step *= mostLogMove / longest;
        }
        return way;
    }

    /// `fall` is by how much the slope fell over `move`.
    void learn(const Vector4& move, const Vector4& fall)
    {
        const double along = dot(move, fall);
        if (!(along > 1e-12))
            return;
        const Vector4 turned = product(m_inverse, fall);
        const double stretch = (1 + dot(fall, turned) / along) / along;
        for (std::size_t k = 0; k < 4; ++k) {
            for (std::size_t l = 0; l < 4; ++l)
                m_inverse[k][l] += stretch * move[k] * move[l] - (turned[k] * move[l] + move[k] * turned[l]) / along;
        }
    }

private:
    Matrix4 m_inverse = unitMatrix;
};

struct Top
{
    Vector4 place{};
    int rounds = 0;
    bool settled = false;
};

Top ascend(const Posterior& posterior)
{
    Top top;
    double value = posterior.at(top.place);
    Vector4 slope = posterior.slopeAt(top.place);
    CurvatureGuess guess;
    while (!top.settled && top.rounds < mostAscentRounds && std::isfinite(value)) {
        ++top.rounds;
        const Vector4 way = guess.direction(slope);
        const double promised = dot(way, slope);
        if (promised < settledAscent) {
            top.settled = true;
            break;
        }
        Vector4 next{};
        double there = value;
        double share = 1;
        for (; share > 1e-8; share /= 2) {
            for (std::size_t k = 0; k < 4; ++k)
                next[k] = top.place[k] + share * way[k];
            there = posterior.at(next);
            if (there >= value + 1e-4 * share * promised)
                break;
        }
        if (share <= 1e-8) {
            top.settled = promised < 1e-5; // rounding hides any further gain
            break;
        }
        const Vector4 nextSlope = posterior.slopeAt(next);
        Vector4 move{};
        Vector4 fall{};
        for (std::size_t k = 0; k < 4; ++k) {
            move[k] = next[k] - top.place[k];
            fall[k] = slope[k] - nextSlope[k];
        }
        guess.learn(move, fall);
        top.place = next;
        value = there;
        slope = nextSlope;
    }
    return top;
}

} // namespace

Result<LearntRates> learnRates(std::span<const ZoneSteps> zones, const Rates& prior, double logSigma,
                               const std::shared_ptr<const Pace>& pace, const std::function<bool()>& goOn)
{
    const bool priorFits = std::ranges::all_of(prior, [](double rate) { return rate > 0 && std::isfinite(rate); });
    if (!priorFits || !(logSigma > 0) || !std::isfinite(logSigma)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("Rates can only be learned around prior rates and a spread above 0."));
    }
    LearntRates learnt;
    learnt.prior = prior;
    std::vector<const ZoneSteps*> used;
    for (const ZoneSteps& zone : zones) {
        if (zone.steps.empty())
            continue;
        used.push_back(&zone);
        learnt.sightings += static_cast<std::size_t>(std::ranges::count_if(zone.steps, [](const TrailStep& step) {
            return step.event == TrailEvent::seen || step.event == TrailEvent::seenOnPaint;
        }));
    }
    learnt.zones = used.size();
    const Posterior posterior(std::move(used), prior, logSigma, pace, goOn);
    const Top top = ascend(posterior);
    if (goOn && !goOn())
        return problem(ProblemKind::refused, PADSIDE_SAY("Learning was stopped."));
    if (!top.settled) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("The rates learned from the records did not settle after {0} rounds; the prior rates "
                        "stay in use."),
            {std::int64_t{top.rounds}});
    }
    learnt.rates = posterior.ratesAt(top.place);
    learnt.rounds = top.rounds;
    const auto lower = choleskyOf(posterior.informationAt(top.place));
    for (std::size_t k = 0; k < 4; ++k) {
        learnt.factor[k] = learnt.rates[k] / prior[k];
        learnt.logSigma[k] = lower ? logSigma * std::sqrt(inverseDiagonalBy(*lower)[k]) : logSigma;
    }
    return learnt;
}

} // namespace padside
