import culori from 'culori/require'
import { isKnown, type Colour, type Fact } from '../sign/sign.js'

const { clampRgb, formatHex, parse } = culori

/** Colours of the redrawn sign: its own where they are known, and inks that are seen on them. Nothing of a client's text is kept. */

export interface Paint {
  /** `#rrggbb`. */
  hex: string
  /** Relative luminance (WCAG 2.2). */
  luminance: number
}

/** Paper for a panel whose colour nobody told. */
export const PAPER: Paint = { hex: '#fbfaf6', luminance: 0.95 }

const DARK = { tactile: '#3a4552', visual: '#8a95a3', dot: '#1f2933', border: '#cfd4db', edge: '#5b6470' } as const
const LIGHT = { tactile: '#dfe4ea', visual: '#a7b0bc', dot: '#f4f6f8', border: '#7d8896', edge: '#c3cad3' } as const
export type Inks = Record<keyof typeof DARK, string>

/** Below this ratio of contrast a shape gets an outline: our choice, so that what is there is seen on the sheet. */
const BARELY_SEEN = 1.5
/** The luminance at which black and white contrast alike (WCAG 2.2, contrast ratio): above it dark inks are seen better. */
const MIDDLE = 0.18
const FLARE = 0.05

/** The colour of the sign as it is painted, a reflectance as a grey of the same luminance; undefined where it is not known. */
export function paintOf(fact: Fact<Colour>): Paint | undefined {
  if (!isKnown(fact)) return undefined
  const { css, luminance } = fact.value
  const colour = css === undefined ? undefined : parse(css)
  const [r, g, b] = [luminance, luminance, luminance]
  const hex = formatHex(clampRgb(colour ?? { mode: 'lrgb', r, g, b }))
  return { hex, luminance }
}

/** Inks for what has no colour of its own, on such a ground. */
export const inksOn = ({ luminance }: Paint): Inks => (luminance > MIDDLE ? DARK : LIGHT)

/** Whether a shape in this colour would hardly be seen on that ground (WCAG 2.2, contrast ratio). */
export function isBarelySeen(paint: Paint, ground: Paint): boolean {
  const [light, dark] = [Math.max(paint.luminance, ground.luminance), Math.min(paint.luminance, ground.luminance)]
  return (light + FLARE) / (dark + FLARE) < BARELY_SEEN
}
