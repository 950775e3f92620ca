/**
 * Michelson's contrast: (Y1 - Y2) / (Y1 + Y2), Y1 the lighter (A. A. Michelson, Studies in Optics, 1927, there called visibility; DIN
 * 32975:2009 asks for it, as https://www.brillux.de/service/farbgestaltung/kontrastrechner/ reports). Strictly of luminances; reflectances stand for them where both
 * areas are lit alike. From 0 to 1; 0 for two black areas.
 */
export const michelsonContrast = (a: number, b: number): number => (a + b > 0 ? Math.abs(a - b) / (a + b) : 0)
