/** The part of jstat that the tests use as a reference; the package ships no types. */
declare module "jstat" {
  const jstat: {
    readonly normal: {
      inv(probability: number, mean: number, sd: number): number;
    };
    readonly studentt: {
      inv(probability: number, degrees: number): number;
    };
    readonly beta: {
      inv(probability: number, a: number, b: number): number;
      cdf(x: number, a: number, b: number): number;
    };
    mean(values: readonly number[]): number;
    median(values: readonly number[]): number;
    gammaln(x: number): number;
    stdev(values: readonly number[], sample: boolean): number;
    tci(mean: number, alpha: number, values: readonly number[]): [number, number];
  };
  export default jstat;
}
