/**
 * Natural logarithm of the gamma function for positive arguments. Lanczos approximation with g = 7 and nine terms
 * (Lanczos 1964, SIAM Journal on Numerical Analysis B 1:86-96), about 15 figures.
 *
 * @example
 * Math.exp(logGamma(5)) // 24
 * logGamma(0.5) // 0.572365
 */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  const sum = TERMS.reduce((total, term, index) => total + term / (z + index + 1), 0.9999999999998099);
  const base = z + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(base) - base + Math.log(sum);
}

const TERMS = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];
