import { dotPositions } from '../braille/cells.js'
import { TranslationError, type Translator } from '../braille/translator.js'
import { boxOfPoints, unionOfBoxes, type Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import type { BrailleDescription } from './description.js'
import { needed, type Facts } from './facts.js'
import { declared, isKnown, missing, type BrailleBlock, type BrailleCode, type BrailleLine, type Fact } from './sign.js'

const DEFAULT_CODE: BrailleCode = 'ueb-contracted'
const BLANK = '\u2800'
const CELLS_ONLY = /^[\u2800-\u283f ]+$/u

/** Dots 3 and 6 lie two dot spacings below dot 1. */
const SPACINGS_TO_BASELINE = 2

/**
 * A block of braille from its description: the cells are the translation of its text in the declared code, or the text
 * itself where it is written in Unicode braille; the dots follow from the origin and the spacings when all are given.
 */
export function describeBraille(
  item: BrailleDescription,
  index: number,
  facts: Facts,
  translator: Translator,
): BrailleBlock {
  const element = `braille/${index}`
  const pointer = `/sign/braille/${index}`
  const code = item.code ?? DEFAULT_CODE
  const texts = item.lines ?? [item.text]
  const cells = translateLines(
    texts.filter((text) => text !== undefined),
    code,
    translator,
  )
  const grid = gridOf(item, facts)
  const radius = isKnown(grid.diameter) ? grid.diameter.value / 2 : 0
  const lines = texts.map((text, i): BrailleLine => {
    const dots = dotsOfLine(cells[i], i, grid)
    const box = grow(boxOfPoints(dots), radius)
    return {
      place: {
        element: `${element}/line/${i}`,
        pointer: item.lines ? `${pointer}/lines/${i}` : `${pointer}/text`,
        ...(box && { box }),
      },
      cells: cells[i] ?? missing(),
      ...(text !== undefined && !CELLS_ONLY.test(text) && isKnown(cells[i]) && { text }),
      dots,
      baseline: baselineOf(i, grid),
    }
  })
  const box = unionOfBoxes(lines.map((line) => line.place.box))
  return {
    place: { element, pointer, ...(box && { box }) },
    lines,
    code,
    ...(item.carrier !== undefined && { carrier: item.carrier }),
    dotBaseDiameter: grid.diameter,
    dotHeight: facts.length(item.dotHeight),
    dotShape: facts.kind(item.dotShape),
    dotSpacing: grid.dot,
    cellSpacing: grid.cell,
    ...(texts.length > 1 && { lineSpacing: grid.line }),
    alignment: facts.kind(item.alignment),
    rotation: 0,
    mirrored: false,
  }
}

/**
 * The cells of each line. Lines are translated as one text, so that a capitals passage may run over a line end, and parted
 * again at the blanks; line by line where the blanks do not answer the words.
 */
function translateLines(lines: string[], code: BrailleCode, translator: Translator): Fact<string>[] {
  const translate = (text: string): Fact<string> => {
    const trimmed = text.trim().replace(/\s+/gu, ' ')
    if (CELLS_ONLY.test(trimmed)) return declared(trimmed.replaceAll(' ', BLANK))
    try {
      return declared(translator.toCells(trimmed, code))
    } catch (error) {
      if (!(error instanceof TranslationError)) throw error
      return { unknown: 'unreadable', why: `the text cannot be translated into braille: ${error.message}` }
    }
  }
  const whole =
    lines.length > 1 && !lines.some((line) => CELLS_ONLY.test(line)) ? translate(lines.join(' ')) : undefined
  if (!isKnown(whole)) return lines.map(translate)
  const counts = lines.map((line) => line.trim().split(/\s+/u).length)
  const groups = whole.value.split(BLANK)
  if (groups.length !== counts.reduce((sum, count) => sum + count, 0)) return lines.map(translate)
  let taken = 0
  return counts.map((count) => declared(groups.slice(taken, (taken += count)).join(BLANK)))
}

interface Grid {
  origin: Fact<Point>
  diameter: Fact<number>
  dot: Fact<number>
  cell: Fact<number>
  line: Fact<number>
}

const gridOf = (item: BrailleDescription, facts: Facts): Grid => ({
  origin: facts.point(item.origin),
  diameter: facts.length(item.dotBaseDiameter),
  dot: needed(facts.length(item.dotSpacing), 'dotSpacing'),
  cell: facts.length(item.cellSpacing),
  line: needed(facts.length(item.lineSpacing), 'lineSpacing'),
})

/** Millimetres from the first line to this one; the unknown line spacing when it is needed and not given. */
const dropOf = (line: number, grid: Grid): Fact<number> =>
  line === 0 ? declared(0) : isKnown(grid.line) ? declared(line * grid.line.value) : grid.line

/** Millimetres from cell to cell; a line of one cell asks for none. */
const pitchOf = (cells: string, { cell }: Grid): Fact<number> => (cells.length < 2 ? declared(0) : cell)

function dotsOfLine(cells: Fact<string> | undefined, line: number, grid: Grid): Point[] {
  const { origin, dot } = grid
  const drop = dropOf(line, grid)
  if (!isKnown(cells) || !isKnown(origin) || !isKnown(dot) || !isKnown(drop)) return []
  const cell = pitchOf(cells.value, grid)
  if (!isKnown(cell)) return []
  return dotPositions([cells.value], {
    dotSpacing: dot.value,
    cellSpacing: cell.value,
    lineSpacing: drop.value,
    origin: { x: origin.value.x, y: origin.value.y + drop.value },
  })
}

function baselineOf(line: number, grid: Grid): Fact<Point> {
  const { origin, dot } = grid
  const drop = dropOf(line, grid)
  if (!isKnown(origin)) return origin
  if (!isKnown(dot)) return dot
  if (!isKnown(drop)) return drop
  const y = origin.value.y + drop.value + SPACINGS_TO_BASELINE * dot.value
  return declared({ x: origin.value.x, y })
}

const grow = (box: Box | undefined, by: number): Box | undefined =>
  box && { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by }
