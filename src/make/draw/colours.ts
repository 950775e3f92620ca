import culori from 'culori/require'
import { toColour, type ColourDescription } from '../../sign/colour.js'
import { contrastRatio } from '../../measure/contrast/ratio.js'
import type { SignOrder } from './order.js'

const { formatHex } = culori

/** Colours of the drawing: those that were ordered, else dark on light or light on dark. */

export interface Colours {
  panel: string
  ink: string
}

const LIGHT = '#f4f1e6'
const DARK = '#16324f'

export function coloursOf({ panel, lettering }: SignOrder): Colours {
  const under = cssOf(panel?.colour)
  const ink = cssOf(lettering[0].colour)
  if (under !== undefined) return { panel: under, ink: ink ?? clearer(under) }
  return ink === undefined ? { panel: LIGHT, ink: DARK } : { panel: clearer(ink), ink }
}

/** The one of both that stands out more. */
function clearer(from: string): string {
  const against = toColour(from).luminance
  const ratio = (css: string): number => contrastRatio(toColour(css).luminance, against)
  return ratio(LIGHT) >= ratio(DARK) ? LIGHT : DARK
}

/** As a screen colour; the grey of that reflectance for what is given as a reflectance only. */
export function cssOf(written: ColourDescription | undefined): string | undefined {
  if (written === undefined) return undefined
  if (typeof written === 'string') return formatHex(written)
  const share = written.lrv / LRV_OF_WHITE
  return formatHex({ mode: 'lrgb', r: share, g: share, b: share })
}

const LRV_OF_WHITE = 100
