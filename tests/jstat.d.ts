/** The few functions of the statistics library that tests hold ours against. */
declare module 'jstat' {
  interface Distribution {
    cdf(x: number, ...parameters: number[]): number;
    pdf(x: number, ...parameters: number[]): number;
    inv(p: number, ...parameters: number[]): number;
  }
  const jstat: {
    readonly studentt: Distribution;
    readonly normal: Distribution;
    readonly lognormal: Distribution;
    readonly gamma: Distribution;
    readonly invgamma: Distribution;
    readonly beta: Distribution;
    readonly binomial: Distribution;
    combination(n: number, k: number): number;
    betafn(a: number, b: number): number;
  };
  export default jstat;
}
