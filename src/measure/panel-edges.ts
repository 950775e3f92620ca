import { isKnown, type Basis, type Known, type Sign, type Unknown } from '../sign/sign.js'
import { basisOf, PANEL_POINTER, type Ask } from './facts.js'
import { extentOfBox, frameOf, isDrawn } from './frame.js'

/** The edges of the panel as the reader has them, in the frame of the sign. */

/** Beyond this turn from upright the drawing's height is not the panel's. */
const QUARTER_TURN = 90

export const HEIGHT_ASK: Ask = { pointer: `${PANEL_POINTER}/height`, ask: 'How high is the panel?', unit: 'mm' }

const ANGLED: Unknown = { unknown: 'unreadable', why: 'the sign is drawn at an angle' }

/** The panel's lower edge. */
export function lowerEdge(sign: Sign): Known<number> | Unknown {
  const { panel } = sign
  const frame = frameOf(sign)
  if (frame.rotation % QUARTER_TURN !== 0) return ANGLED
  if (!panel.place.box) return panel.height
  const { top, bottom } = extentOfBox(panel.place.box, frame)
  // A described height wins over the drawn one; the panel's top is where it is drawn.
  if (isKnown(panel.height) && panel.height.basis === 'declared')
    return { value: top + panel.height.value, basis: basisOf(panel.height) }
  return { value: bottom, basis: 'drawn' }
}

/** The panel's left edge: where it is drawn, else where described places are counted from. */
export function leftEdge(sign: Sign): Known<number> | Unknown {
  const { place } = sign.panel
  const frame = frameOf(sign)
  if (frame.rotation % QUARTER_TURN !== 0) return ANGLED
  const basis: Basis = place.source ? 'drawn' : 'declared'
  if (place.box) return { value: extentOfBox(place.box, frame).left, basis }
  if (isDrawn(sign.lettering, sign.braille)) return { unknown: 'missing-fact', why: 'no panel is drawn' }
  return { value: 0, basis }
}
