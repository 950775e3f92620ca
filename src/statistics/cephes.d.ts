/** Its package has types that its export map does not name; these are the few functions that are used. */
declare module 'cephes' {
  export function igam(a: number, x: number): number
  export function igamc(a: number, x: number): number
  export function lgam(a: number): number
  export function ndtr(z: number): number
  export function ndtri(p: number): number
}
