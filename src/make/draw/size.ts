import { toMillimetres } from '../../sign/length.js'
import { isEmpty, isWithin, meet, type Ends } from '../../windows/ends.js'
import { clamped, nearestTo } from './aim.js'
import { cannotSatisfy, exclusionOf } from './cannot.js'
import type { SignOrder } from './order.js'
import { setWord, type SetWord } from './setting.js'
import { chooseFace, DEFAULT_FAMILY, glyphsOf, type Face } from './typeface.js'
import type { Wanted } from './wanted.js'
import type { Wording } from './wording.js'

/** The characters at one height: the face, the gaps between them and between words. Millimetres. */

export interface Setting {
  face: Face
  characterHeight: number
  /** The words of each settled line, or all words in one. */
  words: SetWord[][]
  /** Between words. */
  space: number
}

/** Capitals of room signs are usually about so high (common practice, no source). */
const USUAL_HEIGHT = 20
/** Where nothing is asked, no smaller characters are made to be felt (common practice, no source). */
const LEAST_HEIGHT = 12
/** One inch of height for 25 feet of distance (common practice, no source); for standards that give no table of distances. */
const HEIGHT_FOR_DISTANCE = 1 / 300
const HEIGHT_INSIDE = 0.1

const heightQuantity = ({ part }: Wanted) => (part === 'visual' ? 'visual.characterHeight' : 'raised.characterHeight')

/**
 * The height to begin with and the least that will do.
 * @throws {Refusal} `cannot-satisfy` when the client settled a height that the standards do not allow
 */
export function heightsOf(order: SignOrder, wanted: Wanted): { wish: number; least: number } {
  const window = wanted.ends(heightQuantity(wanted))
  const { units = 'mm' } = order
  const said = order.lettering[0].characterHeight
  if (said !== undefined) {
    const height = toMillimetres(said, units)
    if (isWithin(height, window)) return { wish: height, least: height }
    const text = `A character height of ${height} mm is not what the standards allow together.`
    throw cannotSatisfy(text, [exclusionOf(heightQuantity(wanted), text, wanted)])
  }
  const distance = order.installation?.viewingDistance
  const far = distance === undefined ? 0 : toMillimetres(distance, units) * HEIGHT_FOR_DISTANCE
  const wish = nearestTo(Math.max(USUAL_HEIGHT, far), window, HEIGHT_INSIDE)
  return { wish, least: Math.min(wish, nearestTo(LEAST_HEIGHT, window, HEIGHT_INSIDE)) }
}

/** The least gap of neighbouring characters, as a share of their height, where the standards leave the choice (common practice, no source). */
const USUAL_GAP = 0.18
/** Gaps may differ by so much of the height before they are evened out. */
const GAP_PLAY = 0.12
const GAP_INSIDE = 0.3
/** Between words beyond the usual gap, as a share of the height: clearly a space to the eye, the finger and a reader of outlines. */
const WORD_SPACE = 0.42
const WORD_SPACE_INSIDE = 1

export function setAt(characterHeight: number, order: SignOrder, wanted: Wanted, wording: Wording): Setting {
  const family = order.lettering[0].typeface?.family ?? DEFAULT_FAMILY
  const face = chooseFace(family, characterHeight, wanted)
  if (!face) throw noFace(family, characterHeight, wanted)
  const gaps = gapsOf(characterHeight, face, wanted)
  const glyphOf = glyphsOf(face, characterHeight)
  const words = (wording.settled ?? [wording.text]).map((line) =>
    line.split(' ').map((word) => setWord(word, glyphOf, gaps)),
  )
  const space = nearestTo(gaps.max + WORD_SPACE * characterHeight, wanted.ends('raised.wordSpacing'), WORD_SPACE_INSIDE)
  return { face, characterHeight, words, space }
}

const FACE_QUANTITIES = ['style', 'strokeThickness', 'proportion'].flatMap((name) => [
  `raised.${name}`,
  `visual.${name}`,
])

function noFace(family: string, height: number, wanted: Wanted) {
  const text = `No weight of ${family} has the style, strokes and proportions that the standards ask for at ${height.toFixed(1)} mm.`
  return cannotSatisfy(text, [
    exclusionOf('raised.strokeThickness', text, wanted, [...FACE_QUANTITIES, 'raised.strokeWidth']),
  ])
}

const GAP_QUANTITIES = ['raised.characterSpacing', 'raised.characterSpacingInStrokes', 'visual.characterSpacing']

/** The window of the least distance between neighbouring outlines. */
function gapsOf(height: number, { capitals }: Face, wanted: Wanted): Required<Ends> {
  const stem = (capitals.stem / capitals.height) * height
  const inStrokes = times(wanted.ends('raised.characterSpacingInStrokes'), stem)
  const byHeight = wanted.part === 'visual' ? times(wanted.ends('visual.characterSpacing'), height) : {}
  const window = [wanted.ends('raised.characterSpacing'), inStrokes, byHeight].reduce(meet, {})
  if (isEmpty(window)) {
    const text = `At ${height.toFixed(1)} mm no gap between characters is wide enough and not too wide for their strokes.`
    throw cannotSatisfy(text, [exclusionOf('raised.characterSpacing', text, wanted, GAP_QUANTITIES)])
  }
  const min = nearestTo(USUAL_GAP * height, window, GAP_INSIDE)
  return { min, max: Math.max(min, clamped(min + GAP_PLAY * height, { max: (window.max ?? Infinity) - GAP_INSIDE })) }
}

const times = ({ min, max }: Ends, factor: number): Ends => ({
  ...(min !== undefined && { min: min * factor }),
  ...(max !== undefined && { max: max * factor }),
})
