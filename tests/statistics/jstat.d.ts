/** The few functions of the reference library that the tests use; it has no types. */
declare module 'jstat' {
  interface JStat {
    normal: { cdf(x: number, mean: number, sd: number): number; inv(p: number, mean: number, sd: number): number }
    chisquare: { cdf(x: number, freedom: number): number; inv(p: number, freedom: number): number }
    noncentralt: { cdf(t: number, freedom: number, noncentrality: number): number }
  }
  const jstat: JStat
  export default jstat
}
