import { isKnown, type Fact, type Known, type Sign, type Unknown } from '../sign/sign.js'
import { basisOf, PANEL_POINTER, type Ask } from './facts.js'
import { extentOfPanel, frameOf, isDrawn, isLevelWith } from './frame.js'

/** The edges of the panel as the reader has them, in the frame of the sign. */

export const HEIGHT_ASK: Ask = { pointer: `${PANEL_POINTER}/height`, ask: 'How high is the panel?', unit: 'mm' }

/** Beyond this turn from upright the drawing's height is not the panel's. */
const QUARTER_TURN = 90

const ANGLED: Unknown = { unknown: 'unreadable', why: 'the sign is drawn at an angle' }

const ACROSS: Unknown = {
  unknown: 'unreadable',
  why: 'the characters run neither along nor across the edges of the panel',
}

/**
 * A side of the panel as the reader has it: of a sign that is drawn lying on its side, the width is what is up and down on the drawing.
 * Lengths that were described or measured are the reader's already.
 */
export function panelSide(sign: Sign, of: 'width' | 'height'): Fact<number> {
  const { panel } = sign
  const side = panel[of]
  if (!isKnown(side) || side.basis !== 'drawn') return side
  const frame = frameOf(sign)
  const own = panel.turned?.rotation ?? 0
  if (!isLevelWith(frame.rotation, own)) return ACROSS
  if (Math.round((frame.rotation - own) / 90) % 2 === 0) return side
  const other = panel[of === 'width' ? 'height' : 'width']
  if (!isKnown(other) || other.basis === 'drawn') return other
  // What was described is the reader's other side, and has taken the place of what was drawn: the drawn edges tell this one.
  const extent = extentOfPanel(panel, frame)
  if (!extent) return ACROSS
  return { ...side, value: of === 'width' ? extent.right - extent.left : extent.bottom - extent.top }
}

/** The panel's lower edge. */
export function lowerEdge(sign: Sign): Known<number> | Unknown {
  const { panel } = sign
  const frame = frameOf(sign)
  if (!panel.place.box) return frame.rotation % QUARTER_TURN === 0 ? panel.height : ANGLED
  const extent = extentOfPanel(panel, frame)
  if (!extent) return ANGLED
  // A described height wins over the drawn one; the panel's top is where it is drawn.
  if (isKnown(panel.height) && panel.height.basis === 'declared')
    return { value: extent.top + panel.height.value, basis: basisOf(panel.height) }
  return { value: extent.bottom, basis: 'drawn' }
}

/** The panel's left edge: where it is drawn, else where described places are counted from. */
export function leftEdge(sign: Sign): Known<number> | Unknown {
  const { panel, lettering, braille } = sign
  const frame = frameOf(sign)
  const { place } = panel
  if (place.box) {
    const extent = extentOfPanel(panel, frame)
    return extent ? { value: extent.left, basis: place.source ? 'drawn' : 'declared' } : ANGLED
  }
  if (frame.rotation % QUARTER_TURN !== 0) return ANGLED
  if (isDrawn(lettering, braille)) return { unknown: 'missing-fact', why: 'no panel is drawn' }
  return { value: 0, basis: place.source ? 'drawn' : 'declared' }
}
