import type { Translator } from '../braille/translator.js'
import type { Assumption, BrailleBlock, Unread } from '../sign/sign.js'
import { readBraille } from './braille.js'
import { brailleOfText } from './brailletext.js'
import { dotsOf, type Dot } from './dots.js'
import type { Labelled } from './labelling.js'
import type { LaidRun } from './layout.js'

/** All braille of a drawing: what was named so, what looks like it, and braille characters in live text. */
export interface FoundBraille {
  blocks: BrailleBlock[]
  unread: Unread[]
  assumptions: Assumption[]
  /** Dots that are in a block. */
  dots: Dot[]
  /** All round things that may have been dots. */
  candidates: Dot[]
}

/** Parts in whose shapes braille is looked for although they were named something else: a layer of all that is raised, say. */
const MAY_HOLD_BRAILLE: ReadonlySet<string | undefined> = new Set([undefined, 'raised', 'both', 'panel'])

/** @param expected what the lettering says, as far as it was read */
export function findBraille(
  labelled: Labelled,
  texts: readonly LaidRun[],
  expected: string[],
  translator: Translator,
): FoundBraille {
  const found: FoundBraille = { blocks: [], unread: [], assumptions: [], dots: [], candidates: [] }
  const named = labelled.shapes.filter((s) => s.named?.part === 'braille').map((s) => s.shape)
  const others = labelled.shapes.filter((s) => MAY_HOLD_BRAILLE.has(s.named?.part)).map((s) => s.shape)
  for (const [shapes, isNamed] of [
    [named, true],
    [others, false],
  ] as const) {
    const { dots } = dotsOf(shapes)
    if (dots.length === 0) continue
    const reading = readBraille(dots, { translator, expected, named: isNamed })
    const strays = new Set(reading.strays)
    found.candidates.push(...dots)
    found.dots.push(...dots.filter((dot) => !strays.has(dot)))
    found.blocks.push(...reading.blocks)
    found.assumptions.push(...reading.assumptions)
    found.unread.push(...reading.unread)
    if (!isNamed && reading.blocks.length > 0) found.assumptions.push({ about: 'part', text: BY_GEOMETRY })
  }
  if (texts.length > 0) found.blocks.push(brailleOfText(texts, translator, 'braille/0'))
  found.blocks = found.blocks.map(numbered)
  return found
}

const BY_GEOMETRY = 'Dots that stand in the pattern of braille are taken for braille, though nothing names them so.'

function numbered(block: BrailleBlock, i: number): BrailleBlock {
  const rename = (element: string) => element.replace(/^braille\/\d+/, `braille/${i}`)
  const lines = block.lines.map((line) => ({ ...line, place: { ...line.place, element: rename(line.place.element) } }))
  return { ...block, place: { ...block.place, element: rename(block.place.element) }, lines }
}
