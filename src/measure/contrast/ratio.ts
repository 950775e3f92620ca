/**
 * Contrast ratio: (L1 + 0.05) / (L2 + 0.05), L1 the lighter relative luminance (WCAG 2.2, definition of contrast ratio). From 1 to 21.
 */

const FLARE = 0.05

export function contrastRatio(a: number, b: number): number {
  const [dark, light] = a < b ? [a, b] : [b, a]
  return (light + FLARE) / (dark + FLARE)
}
