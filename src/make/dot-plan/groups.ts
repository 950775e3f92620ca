import { isKnown, type BrailleBlock, type BrailleLine, type Sign } from '../../sign/sign.js'
import type { Point } from '../../geometry/point.js'

/** What of the braille each dot belongs to, so that a cartridge is not changed in the middle of a word. */

export const LEVELS = ['block', 'line', 'word', 'cell'] as const
export type Level = (typeof LEVELS)[number]

/** For each dot the number of its block, line, word and cell; -1 where that is not known. */
export type Groups = Record<Level, Int32Array>

/** All dots of the braille whose places are known, and what they belong to. */
export function dotsOfSign(sign: Sign): { dots: Point[]; groups: Groups } {
  const dots: Point[] = []
  const numbers: Record<Level, number[]> = { block: [], line: [], word: [], cell: [] }
  const last: Record<Level, number> = { block: -1, line: -1, word: -1, cell: -1 }
  for (const block of sign.braille) {
    last.block++
    for (const line of block.lines) {
      last.line++
      const parts = partsOf(block, line)
      line.dots.forEach((dot, i) => {
        dots.push(dot)
        numbers.block.push(last.block)
        numbers.line.push(last.line)
        numbers.word.push(parts ? last.word + 1 + parts.words[i] : -1)
        numbers.cell.push(parts ? last.cell + 1 + parts.cells[i] : -1)
      })
      if (!parts) continue
      last.word += 1 + Math.max(-1, ...parts.words)
      last.cell += 1 + Math.max(-1, ...parts.cells)
    }
  }
  const listed = (level: Level) => Int32Array.from(numbers[level])
  return {
    dots,
    groups: { block: listed('block'), line: listed('line'), word: listed('word'), cell: listed('cell') },
  }
}

/**
 * Words and cells of one line, told by the gaps between its columns of dots. Inside a cell a gap is at most the dot spacing d; between
 * cells at least the cell spacing c less d; inside a word at most c and d; across a blank cell at least twice c less d. The gaps are
 * parted in the middle between those.
 */
function partsOf(block: BrailleBlock, line: BrailleLine): { words: number[]; cells: number[] } | undefined {
  if (!isKnown(block.cellSpacing) || line.dots.length === 0) return undefined
  const radians = (block.rotation * Math.PI) / 180
  const along = { x: (block.mirrored ? -1 : 1) * Math.cos(radians), y: Math.sin(radians) }
  const at = line.dots.map(({ x, y }) => x * along.x + y * along.y)
  const sorted = [...at.keys()].sort((a, b) => at[a] - at[b])
  const words = at.map(() => 0)
  const cells = at.map(() => 0)
  for (let k = 1; k < sorted.length; k++) {
    const [before, here] = [sorted[k - 1], sorted[k]]
    const gap = at[here] - at[before]
    words[here] = words[before] + (gap > 1.5 * block.cellSpacing.value ? 1 : 0)
    cells[here] = cells[before] + (gap > 0.5 * block.cellSpacing.value ? 1 : 0)
  }
  return { words, cells }
}
