import type { DrawnText } from '../drawing/drawing.js'
import { apply, type Matrix } from '../geometry/matrix.js'
import { flatten } from '../geometry/curve.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Unknown } from '../sign/sign.js'
import type { ResolvedFace } from './faces.js'
import { resolveFace } from './fonts.js'
import { frameOf, type Frame } from './frame.js'
import { shape } from './shaping.js'
import { contoursOfGlyph } from './typeface.js'

/**
 * Live text set in lines as SVG 2, chapter 11 says: a pen moves by the advance of each glyph, by kerning, letter-spacing and
 * word-spacing, is put where the file fixes a character; a text is fitted into its `textLength`, and each chunk is moved as
 * `text-anchor` asks.
 */

export interface LaidCharacter {
  /** More than one character for a ligature. */
  character: string
  /** Its place on the baseline, in millimetres. */
  origin: Point
  /** How far the pen moves along the baseline for the glyph alone, in millimetres. */
  advance: number
  /** Contours in millimetres; none for a blank. Those of another face when the face is a substitute. */
  outlines: Polyline[]
}

export interface LaidRun {
  drawn: DrawnText
  face: ResolvedFace
  frame?: Frame
  /** The point that the file gives for the run, in millimetres; its start unless the text is anchored elsewhere. */
  place?: Point
  /** Empty when the outlines are not known. */
  characters: LaidCharacter[]
  /** Why the outlines are not known. */
  trouble?: Unknown
  /** Whether the file puts characters other than the first in place one by one. */
  scattered: boolean
  /** Whether characters are turned one by one. */
  turned: boolean
}

/** Characters of a drawing that are set; a sign has some dozens. */
const MOST_CHARACTERS = 5000
/** Millimetres. */
const TOLERANCE = 0.0005
/** Blanks that `word-spacing` widens: CSS Text 3, 8.1. */
const WORD_SEPARATOR = /^[ \u00a0]$/

/** A character on its way: the pen's place in the run's own coordinates. */
interface Slot {
  character: string
  glyph: number
  pen: Point
  advance: number
  /** Degrees clockwise about the pen. */
  turn: number
  /** Factor along the baseline. */
  stretch: number
  chunk: Chunk
}

/** What `text-anchor` moves as one. */
interface Chunk {
  from: number
  to: number
  anchor: DrawnText['textAnchor']
  known: boolean
}

interface Setting {
  run: LaidRun
  slots: Slot[]
  chunk: Chunk
}

/** All runs of live text, with outlines where the face is known. Never throws for what a drawing holds. */
export function layOut(texts: readonly DrawnText[]): LaidRun[] {
  const settings: Setting[] = []
  let pen: Point = { x: 0, y: 0 }
  let chunk: Chunk | undefined
  let before: DrawnText | undefined
  let left = MOST_CHARACTERS
  for (const drawn of texts) {
    left -= drawn.text.length
    const sameText = before !== undefined && sameMatrix(before.matrix, drawn.matrix)
    if (!sameText) pen = { x: 0, y: 0 }
    if (!sameText || isFixed(drawn, 0)) chunk = sameText && drawn.positions[0]?.x === undefined ? chunk : undefined
    const setting = setRun(drawn, pen, chunk, left < 0)
    settings.push(setting)
    chunk = setting.chunk
    pen = setting.slots.length > 0 ? { x: chunk.to, y: setting.slots[setting.slots.length - 1].pen.y } : pen
    before = drawn
  }
  return settings.map(finish)
}

const isFixed = ({ positions }: DrawnText, i: number): boolean =>
  positions[i]?.x !== undefined || positions[i]?.y !== undefined

/** A run that goes on has its height given all the same: it starts a chunk only where its `x` is fixed. */
const startsChunk = (drawn: DrawnText, i: number): boolean =>
  i === 0 && drawn.continues ? drawn.positions[i]?.x !== undefined : isFixed(drawn, i)

const sameMatrix = (m: Matrix, n: Matrix) =>
  m.a === n.a && m.b === n.b && m.c === n.c && m.d === n.d && m.e === n.e && m.f === n.f

function setRun(drawn: DrawnText, start: Point, running: Chunk | undefined, spent: boolean): Setting {
  const face = resolveFace(drawn.fontFamilies, drawn.fontWeight, drawn.fontStyle)
  const frame = frameOf(drawn.matrix, drawn.fontSize)
  const trouble = troubleOf(drawn, face, frame, spent)
  const place = placeOf(drawn, start, running)
  const scattered = drawn.positions.some((_, i) => i > 0 && isFixed(drawn, i))
  const turned = drawn.positions.some((p) => p?.rotate)
  const run: LaidRun = { drawn, face, frame, place, characters: [], trouble, scattered, turned }
  const chunk = running ?? { from: start.x, to: start.x, anchor: drawn.textAnchor, known: true }
  if (trouble || !('font' in face)) return { run, slots: [], chunk: { ...chunk, known: false } }
  const slots = fitted(drawn, setCharacters(drawn, face, start, chunk))
  return { run, slots, chunk: slots.at(-1)?.chunk ?? chunk }
}

/** Where the file puts a run; undefined after a run of unknown width. */
function placeOf(drawn: DrawnText, start: Point, running: Chunk | undefined): Point | undefined {
  const first = drawn.positions[0]
  if (running && !running.known && first?.x === undefined) return undefined
  const x = (first?.x ?? start.x) + (first?.dx ?? 0)
  const y = (first?.y ?? start.y) + (first?.dy ?? 0)
  return apply(drawn.matrix, { x, y })
}

function troubleOf(
  drawn: DrawnText,
  face: ResolvedFace,
  frame: Frame | undefined,
  spent: boolean,
): Unknown | undefined {
  const unreadable = (why: string): Unknown => ({ unknown: 'unreadable', why })
  if (spent)
    return { unknown: 'limit-reached', why: `only the first ${MOST_CHARACTERS} characters of live text are set` }
  if (!frame) return unreadable('the text has no size')
  if (drawn.unsupported.length > 0)
    return unreadable(`the text is set with ${drawn.unsupported.join(', ')}, which is not carried out here`)
  if (drawn.fitted && drawn.positions.some((_, i) => i > 0 && isFixed(drawn, i)))
    return unreadable('the text is fitted into a length while its characters are put in place')
  if (face.kind === 'unknown') return unreadable(face.why)
  if (face.kind === 'metrics')
    return unreadable(`of the typeface “${face.name}” only the height of its capitals is known here`)
  const absent = Array.from(drawn.text).find((c) => c.trim() && !face.font.hasGlyphForCodePoint(c.codePointAt(0) ?? 0))
  return absent === undefined ? undefined : unreadable(`the typeface “${face.name}” has no “${absent}”`)
}

function setCharacters(drawn: DrawnText, { font }: FaceWithFont, start: Point, running: Chunk): Slot[] {
  let pen = start
  let chunk = running
  return shape(drawn, font).map(({ characters, at, glyph, advance, move }): Slot => {
    const own = drawn.positions[at]
    if (isFixed(drawn, at)) pen = { x: own?.x ?? pen.x, y: own?.y ?? pen.y }
    if (startsChunk(drawn, at)) {
      chunk = { from: pen.x, to: pen.x, anchor: drawn.textAnchor, known: chunk.known || own?.x !== undefined }
    }
    pen = { x: pen.x + (own?.dx ?? 0), y: pen.y + (own?.dy ?? 0) }
    const slot = { character: characters, glyph, pen, advance, turn: own?.rotate ?? 0, stretch: 1, chunk }
    const more = drawn.letterSpacing + (WORD_SEPARATOR.test(characters) ? (drawn.wordSpacing ?? 0) : 0)
    pen = { x: pen.x + move + more, y: pen.y }
    chunk.to = pen.x
    return slot
  })
}

type FaceWithFont = Extract<ResolvedFace, { font: unknown }>

/**
 * A run fitted into the length that the file gives: the rest goes between the characters, or all is stretched (SVG 2, 11.5,
 * `textLength` and `lengthAdjust`).
 */
function fitted({ fitted: fit }: DrawnText, slots: Slot[]): Slot[] {
  const [first] = slots
  if (!fit || !first) return slots
  const { chunk, pen: start } = first
  const natural = chunk.to - start.x
  chunk.to = start.x + fit.length
  if (fit.adjust === 'spacing') {
    const more = slots.length > 1 ? (fit.length - natural) / (slots.length - 1) : 0
    return slots.map((slot, i) => ({ ...slot, pen: { x: slot.pen.x + i * more, y: slot.pen.y } }))
  }
  const stretch = natural > 0 ? fit.length / natural : 1
  return slots.map((slot) => ({
    ...slot,
    pen: { x: start.x + (slot.pen.x - start.x) * stretch, y: slot.pen.y },
    advance: slot.advance * stretch,
    stretch,
  }))
}

/** What part of a chunk lies before the point that the file gives. */
export const SHARE_BEFORE_ANCHOR = { start: 0, middle: 0.5, end: 1 }

function finish({ run, slots, chunk }: Setting): LaidRun {
  if (!slots.every((slot) => slot.chunk.known) || (slots.length > 0 && !chunk.known)) {
    const why = 'the text goes on after characters of unknown width'
    return { ...run, trouble: { unknown: 'unreadable', why }, characters: [] }
  }
  const { matrix, fontSize } = run.drawn
  const { face, frame } = run
  if (!('font' in face) || !frame) return run
  const unit = fontSize / face.font.unitsPerEm
  const characters = slots.map((slot): LaidCharacter => {
    const back = SHARE_BEFORE_ANCHOR[slot.chunk.anchor] * (slot.chunk.to - slot.chunk.from)
    const pen = { x: slot.pen.x - back, y: slot.pen.y }
    const [cos, sin] = [Math.cos(radians(slot.turn)), Math.sin(radians(slot.turn))]
    const onSheet = (p: Point): Point => {
      const [x, y] = [p.x * unit * slot.stretch, p.y * unit]
      return apply(matrix, { x: pen.x + x * cos - y * sin, y: pen.y + x * sin + y * cos })
    }
    const outlines = contoursOfGlyph(face.font, slot.glyph).map((c) => flatten(mapContour(c, onSheet), TOLERANCE))
    const advance = (slot.advance / fontSize) * frame.emAlong
    return { character: slot.character, origin: apply(matrix, pen), advance, outlines }
  })
  const stretch = slots.at(0)?.stretch ?? 1
  return { ...run, characters, frame: { ...frame, emAlong: frame.emAlong * stretch } }
}

const radians = (degrees: number) => (degrees * Math.PI) / 180

const mapContour = (contour: Contour, map: (p: Point) => Point): Contour => ({
  start: map(contour.start),
  closed: contour.closed,
  segments: contour.segments.map((s) =>
    s.kind === 'line'
      ? { kind: 'line', to: map(s.to) }
      : { kind: 'cubic', c1: map(s.c1), c2: map(s.c2), to: map(s.to) },
  ),
})
