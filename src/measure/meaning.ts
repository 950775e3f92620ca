import type { Pictogram, Sign } from '../sign/sign.js'

/**
 * What a pictogram is there for. One that informs (symbols of accessibility, no smoking) needs neither a field of a certain height nor a
 * descriptor (Access Board guide to chapter 7); one that names a room does. A pictogram of which nothing is said is taken
 * to name the room that the sign is for. One that is said to be a symbol and something more may be either.
 */
export type Purpose = 'room' | 'symbol' | 'informs' | 'unclear'

/** The symbols of 2010 ADA Standards 703.7.2, by the words that people name them with. */
const SYMBOLS =
  /\b(isa|accessib\w*|wheelchair|tty|text telephone|volume control\w*|hearing loss|assistive listening)\b/giu

/** Words that stand beside the name of a symbol and add nothing to it. */
const FILLING =
  /\b(a|an|the|of|for|in|with|and|international|symbol|sign|icon|pictogram|logo|access|telephones?|phones?|systems?|users?|available)\b/giu

const INFORMS = /\b(no smoking|smoking prohibited|no entry|warning|caution)\b/iu

const LETTERS = /\p{L}/u

export function purposeOf({ meaning }: Pictogram): Purpose {
  const said = (meaning ?? '').replace(/[-_]+/gu, ' ')
  const rest = said.replace(SYMBOLS, ' ')
  if (rest !== said) return LETTERS.test(rest.replace(FILLING, ' ')) ? 'unclear' : 'symbol'
  return INFORMS.test(said) ? 'informs' : 'room'
}

/** On a sign that is for a symbol, every pictogram is taken to be one. */
export const symbolOrNot = (pictogram: Pictogram, sign: Sign): 'symbol' | 'unclear' | 'none' => {
  const purpose = sign.use === 'symbol-of-accessibility' ? 'symbol' : purposeOf(pictogram)
  return purpose === 'symbol' || purpose === 'unclear' ? purpose : 'none'
}

/** Whether a pictogram names the room, or may. */
export const mayDesignateRoom = (pictogram: Pictogram): boolean => {
  const purpose = purposeOf(pictogram)
  return purpose === 'room' || purpose === 'unclear'
}

export const UNCLEAR =
  'whether the pictogram is a symbol of accessibility or names the room is not clear from its meaning'
