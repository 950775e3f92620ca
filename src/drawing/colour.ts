import culori from 'culori/require'

const { parse, rgb } = culori
/** Colours as CSS and SVG write them, read by culori (named, hex, rgb, hsl, hwb, lab, lch, color()). */

export interface Colour {
  /** sRGB components from 0 to 1; colours outside of sRGB are moved to its edge. */
  rgb: [number, number, number]
  alpha: number
}

/** Longer texts are no colours. */
const LONGEST = 200

const clamp = (value: number): number => Math.min(1, Math.max(0, value))

/** Undefined for what is not understood. `currentColor`, `none` and `url()` are the caller's. */
export function parseColour(text: string): Colour | undefined {
  if (text.length > LONGEST) return undefined
  // SVG 1.1, 11.2: an sRGB colour may be followed by the same colour in a profile, which is not used.
  const written = text.replace(/\s(icc-color|device-cmyk)\([^)]*\)\s*$/i, '').trim()
  const parsed = parse(written)
  if (!parsed) return undefined
  const colour = rgb(parsed)
  const components: [number, number, number] = [clamp(colour.r), clamp(colour.g), clamp(colour.b)]
  const alpha = clamp(colour.alpha ?? 1)
  return [...components, alpha].every(Number.isFinite) ? { rgb: components, alpha } : undefined
}
