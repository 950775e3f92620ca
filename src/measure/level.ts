import { isKnown, type BrailleBlock, type Lettering, type Place, type Sign } from '../sign/sign.js'
import { gapOf, join, nothing } from './facts.js'
import { isLevelWith, LEVEL_WITHIN } from './frame.js'
import { raisedLettering } from './lettering.js'
import type { Found, Quantities } from './quantity.js'

/**
 * Whether raised characters and braille lie level with the panel (California Building Code 2010, 1117B.5.5: horizontal). On a drawing
 * their directions are compared with each other and with the edges of the panel; the lines of a description run level, as its places are
 * counted from the panel's corner along its edges.
 */

const NO_TACTILE = 'The sign has nothing to read by touch.'

interface Lying {
  place: Place
  /** Degrees from the drawing's x axis; undefined when it is not drawn. */
  rotation: number | undefined
  unread?: boolean
}

const ofLettering = ({ lie, place, lines }: Lettering): Lying => ({
  place,
  rotation: lie?.rotation,
  ...(!lie && lines.some(({ outlines }) => outlines.length > 0) && { unread: true }),
})

const ofBraille = ({ rotation, place, lines }: BrailleBlock): Lying => ({
  place,
  rotation: place.source ? rotation : undefined,
  ...(lines.some(({ cells }) => !isKnown(cells) && cells.unknown === 'unreadable') && { unread: true }),
})

const apart = (a: number, b: number): number => Math.abs(((a - b + 540) % 360) - 180)

const ANGLED = 'all of it is drawn at an angle, and no panel is known whose edges run along it'
const UNREAD = 'which way the characters or the braille run was not read'

function horizontal(sign: Sign): Found {
  const all = [...raisedLettering(sign).map(({ lettering }) => ofLettering(lettering)), ...sign.braille.map(ofBraille)]
  if (all.length === 0) return nothing(NO_TACTILE)
  const first = all.find(({ rotation }) => rotation !== undefined)?.rotation ?? 0
  return join(
    all.map(({ place, rotation, unread }): Found => {
      if (unread) return { observations: [], gaps: [gapOf({ unknown: 'unreadable', why: UNREAD }, place)] }
      if (rotation === undefined)
        return { observations: [{ value: true, basis: 'declared', places: [place], remark: AS_DESCRIBED }], gaps: [] }
      const value = apart(rotation, first) <= LEVEL_WITHIN
      if (value && !isLevelWith(first, sign.panel.turned?.rotation ?? 0))
        return { observations: [], gaps: [gapOf({ unknown: 'unreadable', why: ANGLED }, place)] }
      return { observations: [{ value, basis: 'drawn', places: [place] }], gaps: [] }
    }),
    NO_TACTILE,
  )
}

const AS_DESCRIBED = 'The lines of a description run level with the panel.'

export const LEVEL: Quantities = {
  'raised.horizontal': {
    unit: 'truth',
    method: 'The directions of raised characters and braille against each other and against the edges of the panel.',
    couldBe: ['lettering', 'braille'],
    doubt: 'more',
    take: ({ sign }) => horizontal(sign),
  },
}
