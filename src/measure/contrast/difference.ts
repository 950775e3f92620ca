/**
 * Difference of the reflectances: |Y1 - Y2|, as a share; 0.3 is 30 points of light reflectance value (BS 8300-2:2018, as reported). From
 * 0 to 1.
 */
export const reflectanceDifference = (a: number, b: number): number => Math.abs(a - b)
