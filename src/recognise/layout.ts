import type { Font } from 'fontkit'
import type { DrawnText } from '../drawing/drawing.js'
import { apply, type Matrix } from '../geometry/matrix.js'
import { flatten } from '../geometry/curve.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Unknown } from '../sign/sign.js'
import { resolveFace, type ResolvedFace } from './fonts.js'
import { frameOf, type Frame } from './frame.js'
import { contoursOfGlyph } from './typeface.js'

/**
 * Live text set in lines as SVG 1.1, chapter 10 says: a pen moves by the advance of each glyph, by kerning and
 * letter-spacing, is put where the file fixes a character, and each chunk is moved as `text-anchor` asks. No ligatures.
 */

export interface LaidCharacter {
  character: string
  /** Its place on the baseline, in millimetres. */
  origin: Point
  /** How far the pen moves along the baseline for the glyph alone, in millimetres. */
  advance: number
  /** Contours in millimetres; none for a blank. */
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
}

/** Characters of a drawing that are set; a sign has some dozens. */
const MOST_CHARACTERS = 5000
/** Millimetres. */
const TOLERANCE = 0.0005
const FEATURES = { liga: false, clig: false, dlig: false }

/** A character on its way: the pen's place in the run's own coordinates. */
interface Slot {
  character: string
  glyph: number
  pen: Point
  advance: number
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

const sameMatrix = (m: Matrix, n: Matrix) =>
  m.a === n.a && m.b === n.b && m.c === n.c && m.d === n.d && m.e === n.e && m.f === n.f

function setRun(drawn: DrawnText, start: Point, running: Chunk | undefined, spent: boolean): Setting {
  const face = resolveFace(drawn.fontFamilies, drawn.fontWeight, drawn.fontStyle)
  const letters = Array.from(drawn.text)
  const frame = frameOf(drawn.matrix, drawn.fontSize)
  const trouble = troubleOf(drawn, face, frame, letters, spent)
  const place = placeOf(drawn, start, running)
  const scattered = letters.some((_, i) => i > 0 && isFixed(drawn, i))
  const run: LaidRun = { drawn, face, frame, place, characters: [], trouble, scattered }
  const chunk = running ?? { from: start.x, to: start.x, anchor: drawn.textAnchor, known: true }
  if (trouble || face.kind !== 'outlines') return { run, slots: [], chunk: { ...chunk, known: false } }
  const slots = setCharacters(drawn, face.font, letters, start, chunk)
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
  letters: string[],
  spent: boolean,
): Unknown | undefined {
  const unreadable = (why: string): Unknown => ({ unknown: 'unreadable', why })
  if (spent)
    return { unknown: 'limit-reached', why: `only the first ${MOST_CHARACTERS} characters of live text are set` }
  if (!frame) return unreadable('the text has no size')
  if (drawn.unsupported.length > 0)
    return unreadable(`the text is set with ${drawn.unsupported.join(', ')}, which is not carried out here`)
  if (drawn.positions.some((p) => p?.rotate)) return unreadable('characters of the text are turned one by one')
  if (face.kind === 'unknown') return unreadable(face.why)
  if (face.kind === 'metrics')
    return unreadable(`of the typeface “${face.name}” only the height of its capitals is known here`)
  const absent = letters.find((c) => c.trim() && !face.font.hasGlyphForCodePoint(c.codePointAt(0) ?? 0))
  return absent === undefined ? undefined : unreadable(`the typeface “${face.name}” has no “${absent}”`)
}

function setCharacters(drawn: DrawnText, font: Font, letters: string[], start: Point, running: Chunk): Slot[] {
  const unit = drawn.fontSize / font.unitsPerEm
  const slots: Slot[] = []
  let pen = start
  let chunk = running
  for (const span of spansOf(drawn, letters)) {
    const { glyphs, positions } = font.layout(span.text, FEATURES)
    const one = glyphs.length === span.count
    for (let n = 0; n < span.count; n++) {
      const i = span.from + n
      const fixed = drawn.positions[i]
      if (isFixed(drawn, i)) {
        pen = { x: fixed?.x ?? pen.x, y: fixed?.y ?? pen.y }
        chunk = { from: pen.x, to: pen.x, anchor: drawn.textAnchor, known: chunk.known || fixed?.x !== undefined }
      }
      pen = { x: pen.x + (fixed?.dx ?? 0), y: pen.y + (fixed?.dy ?? 0) }
      const glyph = one ? glyphs[n] : font.glyphForCodePoint(letters[i].codePointAt(0) ?? 0)
      slots.push({ character: letters[i], glyph: glyph.id, pen, advance: glyph.advanceWidth * unit, chunk })
      const move = (one ? positions[n].xAdvance : glyph.advanceWidth) * unit + drawn.letterSpacing
      pen = { x: pen.x + move, y: pen.y }
      chunk.to = pen.x
    }
  }
  return slots
}

/** Stretches of characters that are shaped together: up to the next one that the file puts in place. */
function spansOf(drawn: DrawnText, letters: string[]): { text: string; from: number; count: number }[] {
  const spans: { text: string; from: number; count: number }[] = []
  letters.forEach((letter, i) => {
    const span = spans.at(-1)
    if (!span || isFixed(drawn, i)) spans.push({ text: letter, from: i, count: 1 })
    else {
      span.text += letter
      span.count++
    }
  })
  return spans
}

const SHARE_BEFORE_ANCHOR = { start: 0, middle: 0.5, end: 1 }

function finish({ run, slots, chunk }: Setting): LaidRun {
  if (!slots.every((slot) => slot.chunk.known) || (slots.length > 0 && !chunk.known)) {
    const why = 'the text goes on after characters of unknown width'
    return { ...run, trouble: { unknown: 'unreadable', why }, characters: [] }
  }
  const { matrix, fontSize } = run.drawn
  const { face, frame } = run
  if (face.kind !== 'outlines' || !frame) return run
  const unit = fontSize / face.font.unitsPerEm
  const characters = slots.map((slot): LaidCharacter => {
    const back = SHARE_BEFORE_ANCHOR[slot.chunk.anchor] * (slot.chunk.to - slot.chunk.from)
    const pen = { x: slot.pen.x - back, y: slot.pen.y }
    const onSheet = (p: Point): Point => apply(matrix, { x: pen.x + p.x * unit, y: pen.y + p.y * unit })
    const outlines = contoursOfGlyph(face.font, slot.glyph).map((c) => flatten(mapContour(c, onSheet), TOLERANCE))
    const advance = (slot.advance / fontSize) * frame.emAlong
    return { character: slot.character, origin: apply(matrix, pen), advance, outlines }
  })
  return { ...run, characters }
}

const mapContour = (contour: Contour, map: (p: Point) => Point): Contour => ({
  start: map(contour.start),
  closed: contour.closed,
  segments: contour.segments.map((s) =>
    s.kind === 'line'
      ? { kind: 'line', to: map(s.to) }
      : { kind: 'cubic', c1: map(s.c1), c2: map(s.c2), to: map(s.to) },
  ),
})
