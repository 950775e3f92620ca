import type { Translator } from '../braille/translator.js'
import type { Shape } from '../drawing/drawing.js'
import { boxesOverlap, unionOfBoxes, type Box } from '../geometry/box.js'
import { isKnown, type Assumption, type BrailleBlock, type Ignored, type Lettering, type Unread } from '../sign/sign.js'
import { readBraille, type BrailleFound } from './braille.js'
import { brailleOfText } from './brailletext.js'
import { boxesOfContours } from './contour-boxes.js'
import { dotsOf, LARGEST, withoutDots, type Dot } from './dots.js'
import type { Labelled } from './labelling.js'
import type { LaidRun } from './layout.js'
import { LEFT_OPEN } from './passed-over.js'

/** All braille of a drawing: what was named so, what looks like it, and braille characters in live text. */
export interface FoundBraille {
  blocks: BrailleBlock[]
  unread: Unread[]
  ignored: Ignored[]
  assumptions: Assumption[]
  /** Dots that are in a block. */
  dots: Dot[]
  /** All round things that may have been dots. */
  candidates: Dot[]
  /** Round things in no block that are too small for a full stop of raised characters: not taken for characters either. */
  specks: Dot[]
}

/** Full stops, rivets and holes are larger than this, millimetres: a dot of braille never is. */
const LARGEST_SPECK = 2
/** Height of what may be characters of the sign, millimetres. */
const CHARACTER_HEIGHT = { min: 4, max: 120 }
/** More outlines as high as characters than this are a picture, which does not tell where braille stands. */
const MOST_CHARACTERS = 2000

/** Parts in whose shapes braille is looked for although they were named something else: a layer of all that is raised, say. */
const MAY_HOLD_BRAILLE: ReadonlySet<string | undefined> = new Set([undefined, 'raised', 'both', 'panel'])

/** @param live lettering from live text, which says what the braille may repeat */
export function findBraille(
  labelled: Labelled,
  texts: readonly LaidRun[],
  live: readonly Lettering[],
  translator: Translator,
): FoundBraille {
  const found: FoundBraille = {
    blocks: [],
    unread: [],
    ignored: [],
    assumptions: [],
    dots: [],
    candidates: [],
    specks: [],
  }
  const shapesOf = (wanted: (part: string | undefined) => boolean) =>
    labelled.shapes.filter((s) => wanted(s.named?.part)).map((s) => s.shape)
  const namedShapes = shapesOf((part) => part === 'braille')
  const named = dotsOf(namedShapes).dots
  const others = shapesOf((part) => MAY_HOLD_BRAILLE.has(part))
  const unnamed = dotsOf(others).dots
  const boxes = live.flatMap(({ place }) => place.box ?? [])
  const context = {
    translator,
    expected: live.flatMap(({ text }) => (isKnown(text) ? [text.value] : [])),
    lies: live.flatMap(({ lie }) => lie ?? []),
    lettering: [...boxes, ...boxesOfCharacters(others, [...named, ...unnamed])],
  }
  addReading(found, named, readBraille(named, { ...context, named: true }))
  addOtherForms(found, withoutDots(namedShapes, named))
  const byGeometry = readBraille(unnamed, { ...context, named: false })
  addReading(found, unnamed, byGeometry)
  if (byGeometry.blocks.length > 0) found.assumptions.push({ about: 'part', text: BY_GEOMETRY })
  if (texts.length > 0) found.blocks.push(brailleOfText(texts, translator, 'braille/0'))
  found.blocks = found.blocks.map(numbered)
  return found
}

function addReading(found: FoundBraille, dots: readonly Dot[], reading: BrailleFound): void {
  const strays = new Set(reading.strays)
  found.candidates.push(...dots)
  found.dots.push(...dots.filter((dot) => !strays.has(dot)))
  found.specks.push(...reading.strays.filter((dot) => dot.diameter <= LARGEST_SPECK))
  found.blocks.push(...reading.blocks)
  found.assumptions.push(...reading.assumptions)
  found.unread.push(...reading.unread)
}

/**
 * What was named braille and is no round dot. Where it is as small as a dot, or nothing else of the braille was read, it may be the
 * braille; a large shape beside braille that was read is a guide or a plate.
 */
function addOtherForms(found: FoundBraille, shapes: readonly Shape[]): void {
  if (shapes.length === 0) return
  const small = (shape: Shape) => boxesOfContours(shape).some((box) => Math.max(box.width, box.height) <= LARGEST)
  const open = new Set(found.blocks.length === 0 ? shapes : shapes.filter(small))
  for (const shape of shapes)
    found.ignored.push({ source: shape.source, why: open.has(shape) ? `${NO_DOT} ${LEFT_OPEN}` : NO_DOT })
  const [first] = open
  if (!first) return
  const why = open.size === 1 ? NO_DOT : `${open.size} shapes are named braille, but are no round dots.`
  const box = unionOfBoxes([...open].map((shape) => shape.box))
  found.unread.push({ place: { element: 'drawing', box, source: first.source }, why, couldBe: ['braille'] })
}

const NO_DOT = 'It is named braille, but its shape is no round dot.'

/** Boxes of contours that are as high as characters and hold no dots; braille usually stands below them. */
function boxesOfCharacters(shapes: readonly Shape[], dots: readonly Dot[]): Box[] {
  const all = unionOfBoxes(dots.map(({ x, y }) => ({ x, y, width: 0, height: 0 })))
  const high = shapes
    .flatMap(boxesOfContours)
    .filter(({ height }) => height >= CHARACTER_HEIGHT.min && height <= CHARACTER_HEIGHT.max)
  if (high.length > MOST_CHARACTERS) return []
  return high.filter((box) => !all || !boxesOverlap(box, all) || !dots.some((dot) => inBox(dot, box)))
}

const inBox = ({ x, y }: Dot, b: Box) => x >= b.x && y >= b.y && x <= b.x + b.width && y <= b.y + b.height

const BY_GEOMETRY = 'Dots that stand in the pattern of braille are taken for braille, though nothing names them so.'

function numbered(block: BrailleBlock, i: number): BrailleBlock {
  const rename = (element: string) => element.replace(/^braille\/\d+/, `braille/${i}`)
  const lines = block.lines.map((line) => ({ ...line, place: { ...line.place, element: rename(line.place.element) } }))
  return { ...block, place: { ...block.place, element: rename(block.place.element) }, lines }
}
