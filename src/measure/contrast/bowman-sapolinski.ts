/**
 * Bowman's and Sapolinski's contrast: 125 (Y2 - Y1) / (Y1 + Y2 + 25) percent, Y2 the lighter, both light reflectance values from 0 to 100
 * (AS 1428.1, appendix B, as https://luminancecontrast.net.au/about/ reports it). Here as a share, of
 * reflectances from 0 to 1. From 0 to 1.
 */

const FACTOR = 1.25
const FLARE = 0.25

export const bowmanSapolinskiContrast = (a: number, b: number): number => (FACTOR * Math.abs(a - b)) / (a + b + FLARE)
