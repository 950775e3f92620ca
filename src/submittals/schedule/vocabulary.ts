import { BRAILLE_CODES, DOT_SHAPES, FINISHES, SIDES, APPROACHES, STYLES, USES } from '../../sign/vocabulary.js'
import { plain } from './length-cell.js'

/** What people write into a cell for the words of a description. Common practice, no source, where it is not the word itself. */

type Words = Readonly<Record<string, readonly string[]>>

const ALSO: Record<string, Words> = {
  use: {
    'permanent-room': [
      'room',
      'room id',
      'room identification',
      'room sign',
      'room number',
      'room name',
      'room label',
      'restroom',
      'toilet',
      'toilet room',
      'permanent space',
    ],
    'exit-door': ['exit', 'exit sign', 'tactile exit'],
    'elevator-landing': ['elevator jamb', 'hoistway', 'hoistway jamb', 'elevator hoistway', 'lift landing'],
    'elevator-car-control': ['elevator car', 'car control', 'elevator control', 'lift car control'],
    directional: ['direction', 'directions', 'wayfinding', 'directional sign'],
    informational: ['information', 'informational sign', 'info'],
    parking: ['parking sign', 'accessible parking'],
    'transit-station': ['station', 'transit'],
    'symbol-of-accessibility': ['isa', 'accessibility symbol', 'international symbol of accessibility'],
    temporary: ['temp'],
    'occupant-name': ['occupant', 'name plate', 'nameplate', 'name'],
    directory: ['building directory'],
  },
  style: { 'sans-serif': ['sans serif', 'sans', 'sanserif'] },
  code: {
    'ueb-contracted': [
      'contracted',
      'grade 2',
      '2',
      'ii',
      'grade ii',
      'g2',
      'ueb grade 2',
      'ueb 2',
      'ueb g2',
      'ueb',
      'contracted (grade 2)',
      'contracted ueb',
      'grade 2 ueb',
    ],
    'ueb-uncontracted': [
      'uncontracted',
      'grade 1',
      '1',
      'i',
      'grade i',
      'g1',
      'ueb grade 1',
      'ueb 1',
      'ueb g1',
      'uncontracted (grade 1)',
      'uncontracted ueb',
      'grade 1 ueb',
    ],
  },
  dotShape: { domed: ['dome'], rounded: ['round'] },
  finish: {
    'non-glare': ['nonglare', 'non-glare finish', 'anti-glare', 'antiglare'],
    matte: ['matt', 'matte finish'],
    glossy: ['gloss', 'high gloss', 'polished'],
  },
  side: {
    latch: ['latch side', 'strike', 'strike side', 'handle side'],
    hinge: ['hinge side'],
    'right-of-double-doors': ['right of doors', 'right of pair'],
    'nearest-adjacent-wall': ['adjacent wall', 'nearest wall'],
    'on-door-push-side': ['on door', 'push side', 'on door push side'],
  },
  approach: { interior: ['int', 'inside'], exterior: ['ext', 'outside'] },
}

const ITSELF: Record<string, readonly string[]> = {
  use: USES,
  style: STYLES,
  code: BRAILLE_CODES,
  dotShape: DOT_SHAPES,
  finish: FINISHES,
  side: SIDES,
  approach: APPROACHES,
}

const meanings = new Map<string, Map<string, string>>(
  Object.entries(ITSELF).map(([key, words]) => [
    key,
    new Map(words.flatMap((word) => [word, ...(ALSO[key]?.[word] ?? [])].map((written) => [asWritten(written), word]))),
  ]),
)

function asWritten(text: string): string {
  return plain(text).replace(/[-_/]/g, ' ').replace(/\s+/g, ' ')
}

/** The word of the description that a cell means, or null. `type` is read as a use. */
export const meaningOf = (key: string, text: string): string | null =>
  meanings.get(key === 'type' ? 'use' : key)?.get(asWritten(text)) ?? null

/** The words that a column may hold, as the description writes them. */
export const wordsOf = (key: string): readonly string[] => ITSELF[key] ?? []

/** For each word of a column, what else may be written for it. */
export const spellingsOf = (key: string): [string, readonly string[]][] =>
  wordsOf(key).map((word) => [word, ALSO[key]?.[word] ?? []])

/** Cells that say as much as an empty one. */
const NOTHING = new Set(['-', '--', 'n/a', 'n.a.', 'tbd', 'tbc', '?'])
export const saysNothing = (text: string): boolean => NOTHING.has(plain(text))

/** Cells that say that there is braille and not what it says. */
const NO_WORDS = new Set([
  'yes',
  'y',
  'no',
  'n',
  'x',
  '✓',
  '✔',
  'true',
  'false',
  'required',
  'req',
  "req'd",
  'incl',
  'included',
  'none',
  'same',
  'same as text',
  'as text',
  'per text',
  'see text',
  'match text',
  'grade 2',
  'grade 1',
  'grade ii',
  'grade i',
  'g2',
  'g1',
  'ueb',
  'contracted',
  'uncontracted',
])
export const isNoBraille = (text: string): boolean => NO_WORDS.has(plain(text))
