/**
 * Difference over the lighter: (B1 - B2) / B1, B1 the light reflectance value of the lighter area, B2 of the darker (ADAAG 1991 as
 * amended to 2002, appendix A4.30.5). From 0 to 1; 0 for two black areas.
 */
export function reflectanceContrast(a: number, b: number): number {
  const [dark, light] = a < b ? [a, b] : [b, a]
  return light > 0 ? (light - dark) / light : 0
}
