/**
 * Weber's contrast: |Yo - Yb| / Yb, Yo the reflectance of the object, Yb of what is behind it (method of NS 11001, as a secondary source
 * reports it for TEK17 12-18). Not symmetric: from 0 up, above 1 for light things on dark ones.
 * @returns undefined on a background that reflects nothing
 */
export const backgroundContrast = (object: number, background: number): number | undefined =>
  background > 0 ? Math.abs(object - background) / background : undefined
