import type { Colour } from '../sign/sign.js'

/**
 * Colours as sRGB components.
 * Luminance: the definition of "relative luminance" in WCAG 2.2. Opacity: source-over compositing of simple alpha, W3C
 * Compositing and Blending Level 1, 5.1, in sRGB components as SVG renders them.
 */

export type Rgb = [number, number, number]

/** From this component value up, sRGB is a power curve; below, a straight line (WCAG 2.2, relative luminance). */
const LINEAR_UP_TO = 0.04045
const WEIGHTS: Rgb = [0.2126, 0.7152, 0.0722]
/** Relative luminance, 0 to 1, of sRGB components 0 to 1. */
export function relativeLuminance(rgb: Rgb): number {
  return rgb.reduce((sum, component, i) => {
    const v = Math.min(1, Math.max(0, component))
    const linear = v <= LINEAR_UP_TO ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
    return sum + WEIGHTS[i] * linear
  }, 0)
}

/** `#rrggbb` of sRGB components 0 to 1. */
export const hexOf = (rgb: Rgb): string =>
  `#${rgb
    .map((v) =>
      Math.round(Math.min(1, Math.max(0, v)) * 255)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`

export const colourOf = (rgb: Rgb): Colour => ({ css: hexOf(rgb), luminance: relativeLuminance(rgb) })

/** `top`, with its opacity, over an opaque colour. */
export const over = (top: Rgb, opacity: number, below: Rgb): Rgb => {
  const mix = (i: 0 | 1 | 2) => top[i] * opacity + below[i] * (1 - opacity)
  return [mix(0), mix(1), mix(2)]
}
