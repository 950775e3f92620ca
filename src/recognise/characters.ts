import { unionOfBoxes } from '../geometry/box.js'
import type { Contour } from '../geometry/outline.js'
import {
  isKnown,
  type Assumption,
  type BrailleBlock,
  type Lettering,
  type LetteringPart,
  type Unread,
} from '../sign/sign.js'
import { paintedPieces, withColours, withDoubtfulColours } from './colouring.js'
import type { Cloud, Surface } from './colours.js'
import { couldBeCharacters, letteringOfOutlines, withoutPaintedCounters } from './lettering.js'
import { letteringOfSet, readOutlines, type OutlinedSet } from './outlined.js'
import { isRecognised, type Expectation, type OutlinedLine } from './outlinelines.js'
import type { Piece } from './pieces.js'
import { distanceOf } from './regions.js'

/**
 * The sets of characters that outlines make up. What was named lettering is lettering, read or not; what nobody named is
 * lettering only where characters are recognised in it, and unread art elsewhere.
 */
export interface DrawnSets {
  lettering: Lettering[]
  unread: Unread[]
  assumptions: Assumption[]
  /** The outlines of all characters. */
  pieces: Piece[]
}

export interface Surrounding {
  grounds: readonly Piece[]
  surfaces: readonly Surface[]
  clouds: readonly Cloud[]
  braille: readonly BrailleBlock[]
  /** There are dots that may be braille, though they could not be read. */
  mayHoldBraille: boolean
  /** Round contours that may be the points of characters, or something else that is told elsewhere. */
  specks: ReadonlySet<Contour>
}

const ORDER: (LetteringPart | undefined)[] = ['raised', 'both', undefined, 'visual']

/** Outlines of one part that are looked at; a sign has some hundreds. */
const MOST_OUTLINES = 4000
/** Outlines that nobody named are lettering when so many of a line are recognised. */
const MOSTLY = 0.5
/** Shapes that are as often plain rings, bars and points, alone or beside each other, as a character. */
const PLAIN = `Oo0°Il1|-–—.·'i:!/`
/**
 * On a drawing without braille and without names, readable outlines lower than this are no characters of a sign that can be told
 * from a mark or an icon. Millimetres; half of the least height of raised characters, our choice.
 */
const LEAST_HEIGHT = 8

/** @param first number of the first set, after those of live text */
export function setsOfPieces(pieces: readonly Piece[], first: number, around: Surrounding): DrawnSets {
  const sets: DrawnSets = { lettering: [], unread: [], assumptions: [], pieces: [] }
  const expected = { ...expectedFrom(around.braille), upright: first > 0 }
  for (const part of ORDER) {
    const all = pieces.filter((p) => letteringPart(p) === part)
    if (all.length === 0) continue
    const own = withoutFarPoints(all.slice(0, MOST_OUTLINES), around.specks)
    if (own.length === 0) continue
    if (all.length > MOST_OUTLINES) sets.unread.push(passedOver(all))
    const found = readOutlines(own, expected, (line) => part !== undefined || isMostlyRecognised(line))
    const isLettering = (set: OutlinedSet) =>
      part !== undefined || couldOnlyBeLettering(set, around.braille.length > 0 || around.mayHoldBraille)
    const read = found.sets.filter(isLettering)
    const refused = found.sets.filter((s) => !read.includes(s)).flatMap((s) => s.pieces)
    const others = [...found.others, ...refused].filter((p) => !around.specks.has(p.contour))
    const element = () => `lettering/${first + sets.lettering.length}`
    const paint = part === undefined ? withDoubtfulColours : withColours
    const add = (lettering: Lettering, of: readonly Piece[]) => {
      const painted = paintedPieces(withoutPaintedCounters(of), around.grounds)
      sets.lettering.push(paint(lettering, painted, around.surfaces, around.clouds))
      sets.pieces.push(...of)
    }
    for (const set of read) add(letteringOfSet(set, part ?? 'both', element()), set.pieces)
    if (read.length === 0 && part !== undefined) {
      const shown = withoutPaintedCounters(own)
      const why = found.limitReached ? TOO_MANY : NONE_RECOGNISED
      add(letteringOfOutlines(shown, part, expected.rotation ?? 0, element(), why), shown)
    } else sets.unread.push(...unreadAmong(others, found.limitReached))
    if (read.length > 0) sets.assumptions.push(...assumptionsOf(part, found))
  }
  return sets
}

const TOO_MANY = 'there are more outlines than are read (limit-reached)'
const NONE_RECOGNISED = 'the characters are outlines, and none of them was recognised'

/** What the braille tells of the lettering: which way it runs, and words that settle letters of one shape. */
function expectedFrom(blocks: readonly BrailleBlock[]): Expectation {
  const dotsOfBlock = (b: BrailleBlock) => b.lines.reduce((n, line) => n + line.dots.length, 0)
  const largest = blocks.reduce<BrailleBlock | undefined>(
    (a, b) => (a && dotsOfBlock(a) >= dotsOfBlock(b) ? a : b),
    undefined,
  )
  const words = blocks.flatMap((b) => b.lines.flatMap((line) => line.text?.split(/\s+/u) ?? []))
  const direction = largest?.mirrored ? 180 - largest.rotation : largest?.rotation
  return { rotation: direction, mirrored: largest?.mirrored ?? false, words }
}

/** A point is no farther from its letter than this share of the letter’s larger side: common practice of typefaces, no source. */
const POINT_REACH = 0.35

/** Without small round things that are the points of no character, for they would only blur which way the lines run. */
function withoutFarPoints(pieces: readonly Piece[], specks: ReadonlySet<Contour>): Piece[] {
  const letters = pieces.filter((p) => !specks.has(p.contour))
  if (letters.length === pieces.length || letters.length > MOST_BESIDE_POINTS) return letters
  const near = ({ box }: Piece) =>
    letters.some((l) => distanceOf(l.box, box) <= POINT_REACH * Math.max(l.box.width, l.box.height))
  return pieces.filter((p) => !specks.has(p.contour) || near(p))
}

/** Points are looked for beside so many outlines. */
const MOST_BESIDE_POINTS = 1000

const isMostlyRecognised = ({ read: { characters } }: OutlinedLine): boolean =>
  characters.filter(isRecognised).length >= MOSTLY * characters.length

/** Whether outlines that nobody named are characters beyond doubt: some could be nothing else. */
function couldOnlyBeLettering({ lines }: OutlinedSet, withBraille: boolean): boolean {
  const characters = lines.flatMap(({ read }) => read.characters)
  if (!withBraille && !lines.every(({ read, eitherWay }) => eitherWay || isKnown(read.text))) return false
  const telling = characters.some(({ readings }) => readings.length === 1 && !PLAIN.includes(readings[0]))
  if (!telling) return false
  return withBraille || (characters.length > 1 && lines.some(({ read }) => read.capital >= LEAST_HEIGHT))
}

/** Outlines that are no characters, once for those of few corners and once for all else. */
function unreadAmong(others: readonly Piece[], limitReached: boolean): Unread[] {
  const straight = others.filter((p) => !couldBeCharacters([p]))
  const art = others.filter((p) => couldBeCharacters([p]))
  const unread: Unread[] = []
  const place = (these: readonly Piece[]) => ({
    element: 'drawing',
    box: unionOfBoxes(these.map((p) => p.box)),
    source: these[0].shape.source,
  })
  if (straight.length > 0) {
    const why =
      straight.length === 1
        ? 'A shape with straight sides and few corners is no character; what it is was not told.'
        : `${straight.length} shapes with straight sides and few corners are no characters; what they are was not told.`
    unread.push({ place: place(straight), why, couldBe: ['border'] })
  }
  if (art.length > 0) {
    const why = limitReached
      ? `${art.length} outlines are more than are read (limit-reached).`
      : art.length === 1
        ? 'An outline was not recognised as a character.'
        : `${art.length} outlines were not recognised as characters.`
    unread.push({ place: place(art), why, couldBe: ['lettering', 'pictogram'] })
  }
  return unread
}

function assumptionsOf(
  part: LetteringPart | undefined,
  { mirrored, settledByBraille }: { mirrored: boolean; settledByBraille: boolean },
): Assumption[] {
  const said: Assumption[] = []
  if (part === undefined) said.push({ about: 'part', text: UNNAMED })
  if (mirrored) said.push({ about: 'lettering-orientation', text: MIRRORED })
  if (settledByBraille) said.push({ about: 'lettering', text: SETTLED })
  return said
}

const UNNAMED =
  'Outlines that nobody named are taken for characters where they read as such, and for one set that serves touch and sight.'
const MIRRORED = 'The outlined characters are read as drawn from the back (mirrored): only that way they give letters.'
const SETTLED = 'Where the shape of an outlined character leaves it open (O or 0, I or l), the braille decided.'

function passedOver(pieces: readonly Piece[]): Unread {
  const why = `Of ${pieces.length} outlines only the first ${MOST_OUTLINES} are looked at (limit-reached).`
  return { place: { element: 'drawing', source: pieces[MOST_OUTLINES].shape.source }, why, couldBe: ['lettering'] }
}

function letteringPart({ named }: Piece): LetteringPart | undefined {
  const part = named?.part
  return part === 'raised' || part === 'visual' || part === 'both' ? part : undefined
}
