import { differencesOf, differenceWords, type CellDifference } from '../braille/differences.js'
import type { Box } from '../geometry/box.js'
import { isKnown, type BrailleBlock, type BrailleLine, type Place } from '../sign/sign.js'

/** Which cells are wrong and where they stand: the first few, told by their dots and shown at their places. */
export interface WrongCells {
  /** A sentence on the first of them. */
  text: string
  places: Place[]
}

/** Cells named; where more are wrong, the wording is another one rather than misspelt. */
const MOST_NAMED = 3
/** Rows of dots in a cell, less one: as many dot spacings lie between the first and the last. */
const SPACINGS_IN_CELL = 2

/** One cell of a run of blocks, with the line that it stands in; a blank between lines stands in none. */
interface Standing {
  block: BrailleBlock
  line: BrailleLine
  index: number
}

/**
 * @param blocks in the order of reading
 * @param cells the cells of all blocks, lines joined with a blank
 * @param expected the cells that they should be, in each grade that will do: they are held against that which they are nearest to
 */
export function wrongCells(blocks: BrailleBlock[], cells: string, expected: string[]): WrongCells | undefined {
  const [found = []] = expected.map((one) => differencesOf(cells, one)).sort((a, b) => a.length - b.length)
  if (found.length === 0) return undefined
  const standing = blocks.flatMap(standingIn).slice(0, -1)
  const isOneLine = blocks.length === 1 && blocks[0]?.lines.length === 1
  const named = found.slice(0, MOST_NAMED)
  const told = named.map((one) => differenceWords(one, wordsFor(one, standing, cells.length, isOneLine)))
  const more = found.length - named.length
  const text = `Compared cell by cell: ${told.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`
  return { text, places: named.flatMap((one) => placeOf(standing[one.at])) }
}

/** Every cell of a block, and the blank behind each line. */
function standingIn(block: BrailleBlock): (Standing | undefined)[] {
  return block.lines.flatMap((line) => {
    const cells = isKnown(line.cells) ? Array.from(line.cells.value) : []
    return [...cells.map((_, index) => ({ block, line, index })), undefined]
  })
}

function wordsFor({ at }: CellDifference, standing: (Standing | undefined)[], length: number, oneLine: boolean) {
  if (at >= length) return 'the end'
  const here = standing[at]
  if (!here) return 'the end of a line'
  if (oneLine) return `cell ${here.index + 1}`
  const line = here.block.lines.indexOf(here.line) + 1
  return here.block.lines.length > 1 ? `line ${line}, cell ${here.index + 1}` : `cell ${here.index + 1} of its block`
}

function placeOf(standing: Standing | undefined): Place[] {
  if (!standing) return []
  const { line, index } = standing
  const { pointer, source, element } = line.place
  const box = boxOf(standing)
  return [
    {
      element: `${element}/cell/${index}`,
      ...(box && { box }),
      ...(pointer && { pointer }),
      ...(source && { source }),
    },
  ]
}

/** The box round a cell, where the line lies as it is read: turned or mirrored lines are shown as a whole. */
function boxOf({ block, line, index }: Standing): Box | undefined {
  const { dotSpacing, cellSpacing, dotBaseDiameter, rotation, mirrored } = block
  if (rotation !== 0 || mirrored || !isKnown(line.baseline) || !isKnown(dotSpacing)) return undefined
  if (index > 0 && !isKnown(cellSpacing)) return undefined
  const radius = (isKnown(dotBaseDiameter) ? dotBaseDiameter.value : 0) / 2
  const across = isKnown(cellSpacing) ? index * cellSpacing.value : 0
  const { x, y } = line.baseline.value
  const height = SPACINGS_IN_CELL * dotSpacing.value
  return {
    x: x + across - radius,
    y: y - height - radius,
    width: dotSpacing.value + 2 * radius,
    height: height + 2 * radius,
  }
}

/** What cells read in print, where every line is known to read as something: " (“kealn room”)". */
export function readAs(blocks: BrailleBlock[]): string {
  const texts = blocks.flatMap(({ lines }) => lines.map(({ text }) => text))
  return texts.length === 0 || texts.includes(undefined) ? '' : ` and read “${texts.join(' ')}”`
}
