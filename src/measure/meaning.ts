import type { Pictogram, Sign } from '../sign/sign.js'

/**
 * What a pictogram is there for. One that informs (symbols of accessibility, no smoking) needs neither a field of a certain height nor a
 * descriptor (Access Board guide to chapter 7); one that names a room does. A pictogram of which nothing is said is taken
 * to name the room that the sign is for.
 */

/** The symbols of 2010 ADA Standards 703.7.2, by the words that people name them with. */
const SYMBOLS =
  /\b(isa|accessib\w*|wheelchair|tty|text telephone|volume control\w*|hearing loss|assistive listening)\b/iu

const INFORMS = /\b(no smoking|smoking prohibited|no entry|warning|caution)\b/iu

const meaningOf = ({ meaning }: Pictogram): string => (meaning ?? '').replace(/[-_]+/gu, ' ')

/** On a sign that is for a symbol, every pictogram is taken to be one. */
export const isSymbol = (pictogram: Pictogram, sign: Sign): boolean =>
  sign.use === 'symbol-of-accessibility' || SYMBOLS.test(meaningOf(pictogram))

export const designatesRoom = (pictogram: Pictogram): boolean =>
  !SYMBOLS.test(meaningOf(pictogram)) && !INFORMS.test(meaningOf(pictogram))
