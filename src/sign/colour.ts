import culori from 'culori/require'
import { z } from 'zod'
import type { Colour } from './sign.js'

const { clampRgb, parse, wcagLuminance } = culori

/** Colours as a client writes them, and their relative luminance (WCAG 2.2, definition of relative luminance). */

const LONGEST_COLOUR = 100

const OPAQUE = 1

/** The sRGB colour of a CSS colour value, or undefined when it is none or lets something shine through. */
function opaqueColour(css: string) {
  const colour = parse(css.trim())
  if (!colour || (colour.alpha !== undefined && colour.alpha < OPAQUE)) return undefined
  return colour
}

export const ColourDescription = z
  .union(
    [
      z
        .string()
        .max(LONGEST_COLOUR)
        .refine(
          (css) => opaqueColour(css) !== undefined,
          'is no opaque CSS colour; write for example "#1d2b3a" or "white"',
        ),
      z.strictObject({ lrv: z.number().min(0).max(100) }),
    ],
    { error: 'expected a CSS colour such as "#1d2b3a", or { "lrv": 0 to 100 }' },
  )
  .meta({
    id: 'ColourDescription',
    description: 'An opaque CSS colour, or a light reflectance value from 0 (black) to 100 (white).',
    examples: ['#1d2b3a', { lrv: 12 }],
  })
export type ColourDescription = z.infer<typeof ColourDescription>

const LRV_OF_WHITE = 100

/**
 * The colour as the model holds it. A colour outside sRGB is taken at the nearest displayable one.
 * @throws {RangeError} for a text that the schema would refuse.
 */
export function toColour(written: ColourDescription): Colour {
  if (typeof written !== 'string') return { luminance: written.lrv / LRV_OF_WHITE }
  const colour = opaqueColour(written)
  if (!colour) throw new RangeError(`not a colour: ${written}`)
  return { css: written.trim(), luminance: wcagLuminance(clampRgb(colour)) }
}
