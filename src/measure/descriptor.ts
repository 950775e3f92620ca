import { isKnown, type Lettering, type LetteringLine, type Pictogram, type Place, type Sign } from '../sign/sign.js'
import { leastWidth } from './clearance.js'
import { gapOf, pointerOf } from './facts.js'
import { basisOfField, withField } from './field.js'
import { frameOf, linesOf, type Extent } from './frame.js'
import { raisedLettering } from './lettering.js'
import type { Gap } from './measurement.js'
import { placeAsk } from './placing.js'
import type { Found } from './quantity.js'

/**
 * Whether raised characters stand directly below the field of a pictogram (2010 ADA Standards 703.6.3): below its lower edge and under some
 * part of it. The code does not say how near is directly; farther below than the field is high is left to a person (our reading).
 */

interface Line {
  lettering: Lettering
  line: LetteringLine
  n: number
  extent: Extent | undefined
}

type Standing = 'under' | 'far-below' | 'perhaps-under' | 'elsewhere' | 'unread' | 'unplaced'

function standingOf({ lettering, line, extent }: Line, field: Extent): Standing {
  if (!extent) return 'unplaced'
  const below = extent.top >= field.bottom && extent.left < field.right && extent.right > field.left
  if (!isKnown(lettering.text)) return 'unread'
  if (!below) return 'elsewhere'
  const reaches = Number.isFinite(extent.right) || extent.left + leastWidth(lettering, line) > field.left
  if (!reaches) return 'perhaps-under'
  return extent.top - field.bottom > field.bottom - field.top ? 'far-below' : 'under'
}

/** What leaves it open, the first that holds for some line. */
const OPEN: { standing: Standing; gap: (line: Line, places: Place[]) => Gap }[] = [
  {
    standing: 'unread',
    gap: ({ lettering: { place, text }, n }, places) => ({
      reason: isKnown(text) ? 'unreadable' : text.unknown,
      why: 'what the characters say is not known',
      places,
      ...(!isKnown(text) &&
        text.unknown === 'missing-fact' && {
          ask: { pointer: pointerOf(place, 'lettering', n, 'text'), ask: 'What do the raised characters say?' },
        }),
    }),
  },
  {
    standing: 'unplaced',
    gap: ({ lettering, n }, places) => ({
      reason: 'missing-fact',
      why: 'the place of the characters is not known',
      places,
      ask: placeAsk(lettering, n),
    }),
  },
  {
    standing: 'perhaps-under',
    gap: ({ lettering: { place } }) =>
      gapOf({ unknown: 'missing-fact', why: 'how far the characters reach to the right is not known' }, place, {
        pointer: '/drawing',
        ask: 'What does the sign look like, at true scale?',
      }),
  },
  {
    standing: 'far-below',
    gap: (_line, places) => ({
      reason: 'needs-judgement',
      why: 'the characters stand below the field, but farther from it than it is high',
      places,
    }),
  },
]

export function descriptor(pictogram: Pictogram, n: number, sign: Sign): Found {
  const raised = raisedLettering(sign)
  const places = [pictogram.place, ...raised.map(({ lettering }) => lettering.place)]
  if (raised.length === 0) {
    const remark = 'The sign has no raised characters.'
    return { observations: [{ value: false, basis: 'declared', places, remark }], gaps: [] }
  }
  return withField(pictogram, n, sign, (field) => {
    const lines = raised.flatMap(({ lettering, n: m }): Line[] => {
      const extents = linesOf(lettering, frameOf(sign))
      return lettering.lines.map((line, i) => ({ lettering, line, n: m, extent: extents[i] }))
    })
    const standing = lines.map((line) => ({ line, is: standingOf(line, field) }))
    const basis = basisOfField(pictogram)
    if (standing.some(({ is }) => is === 'under')) return { observations: [{ value: true, basis, places }], gaps: [] }
    for (const { standing: wanted, gap } of OPEN) {
      const found = standing.find(({ is }) => is === wanted)
      if (found) return { observations: [], gaps: [gap(found.line, places)] }
    }
    return { observations: [{ value: false, basis, places }], gaps: [] }
  })
}
