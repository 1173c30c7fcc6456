import type { Estimate } from "../../../src/domain/outlook/estimate";
import type { Random } from "../../../src/domain/random";

const { exp, log, pow, sqrt } = Math;

/** Standard normal draw by the polar method (Marsaglia and Bray 1964). */
export function drawNormal(random: Random): number {
  for (;;) {
    const u = 2 * random() - 1;
    const v = 2 * random() - 1;
    const s = u * u + v * v;
    if (s > 0 && s < 1) return u * sqrt((-2 * log(s)) / s);
  }
}

/** Gamma draw with scale 1 (Marsaglia and Tsang 2000); below shape 1 by a power of a uniform draw. */
export function drawGamma(shape: number, random: Random): number {
  if (shape < 1) return drawGamma(shape + 1, random) * pow(1 - random(), 1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / sqrt(9 * d);
  for (;;) {
    const x = drawNormal(random);
    const v = (1 + c * x) ** 3;
    if (v > 0 && log(1 - random()) < 0.5 * x * x + d - d * v + d * log(v)) return d * v;
  }
}

/** Beta draw from two gamma draws. */
export function drawBeta(a: number, b: number, random: Random): number {
  const one = drawGamma(a, random);
  return one / (one + drawGamma(b, random));
}

/** Draw from an estimate's law; shares no code with the convolution. */
function draw({ law, value, standardError, degrees, shape }: Estimate, random: Random): number {
  const score = () =>
    degrees === Infinity
      ? drawNormal(random)
      : drawNormal(random) / sqrt((2 * drawGamma(degrees / 2, random)) / degrees);
  switch (law) {
    case "exact":
      return value;
    case "t":
      for (;;) {
        const drawn = value + standardError * score();
        if (drawn > 0) return drawn;
      }
    case "logT":
      return value * exp((standardError / value) * score());
    case "logitT": {
      const logit = log(value / (1 - value)) + (standardError / (value * (1 - value))) * score();
      return 1 / (1 + exp(-logit));
    }
    case "beta":
      return drawBeta(shape!.a, shape!.b, random);
  }
}

/** Quantiles of (product of `first` + `amount`) times `rest` from random draws, each with its own standard error. */
export function monteCarlo(
  first: readonly Estimate[],
  amount: number,
  rest: readonly Estimate[],
  probabilities: readonly number[],
  draws: number,
  random: Random,
): { quantile: number; error: number }[] {
  const drawn = new Float64Array(draws);
  for (let index = 0; index < draws; index++) {
    let value = 1;
    for (const estimate of first) value *= draw(estimate, random);
    value += amount;
    for (const estimate of rest) value *= draw(estimate, random);
    drawn[index] = value;
  }
  drawn.sort();
  return probabilities.map((p) => {
    const at = (q: number) => drawn[Math.max(0, Math.min(draws - 1, Math.round(q * draws)))];
    const reach = sqrt((p * (1 - p)) / draws);
    return { quantile: at(p), error: (at(p + reach) - at(p - reach)) / 2 };
  });
}
