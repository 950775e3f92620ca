import type { Sign } from '../../src/sign/sign.js'
import { PUMP_ROOM, signOf } from './signs.js'

/** Signs with several texts and several blocks of braille. Words, places and sizes are invented. */

type Json = Record<string, unknown>

const one = (from: string): Json => {
  const [{ ...first }] = PUMP_ROOM[from] as Json[]
  for (const key of ['lines', 'baselineSpacing', 'lineSpacing']) delete first[key]
  return first
}

/** A line of lettering with its baseline at a place. */
export const text = (words: string, x: number, y: number, more: Json = {}): Json => ({
  ...one('lettering'),
  text: words,
  baseline: { x, y },
  ...more,
})

/** A block of braille with its first dot at a place. @param words as print, or as cells */
export const dots = (words: string, x: number, y: number, more: Json = {}): Json => ({
  ...one('braille'),
  text: words,
  origin: { x, y },
  ...more,
})

export const sign = (lettering: Json[], braille: Json[], more: Json = {}): Sign =>
  signOf(PUMP_ROOM, { 'panel.width': 400, 'panel.height': 220, lettering, braille, ...more })
