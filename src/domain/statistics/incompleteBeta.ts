import { logGamma } from "./logGamma";

/**
 * Regularised incomplete beta function: the share of a beta distribution with parameters a and b that lies below x.
 * Continued fraction 8.17.22 of the NIST Digital Library of Mathematical Functions, by Lentz's method.
 *
 * `x`: 0 to 1. `a`, `b`: above 0.
 *
 * @example
 * incompleteBeta(0.5, 2, 2) // 0.5
 * incompleteBeta(0.3, 1, 1) // 0.3
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2)
    ? (front * continuedFraction(x, a, b)) / a
    : 1 - (front * continuedFraction(1 - x, b, a)) / b;
}

function continuedFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / awayFromZero(1 + even * d);
    c = awayFromZero(1 + even / c);
    value *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / awayFromZero(1 + odd * d);
    c = awayFromZero(1 + odd / c);
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return value;
}

const MOST_TERMS = 20000;
const awayFromZero = (value: number) => (Math.abs(value) < 1e-300 ? 1e-300 : value);
