/** Braille cells for those who hear the page: by the numbers of their dots (The Unicode Standard, Braille Patterns). */

const FIRST_CELL = 0x2800
const LAST_CELL = 0x28ff
const DOTS_IN_CELL = 8

/** "⠗⠂⠀" → "dots 1 2 3 5, dot 2, blank". Characters that are no cells are named as they are. */
export function spokenCells(cells: string): string {
  return [...cells].map(spokenCell).join(', ')
}

function spokenCell(cell: string): string {
  const bits = (cell.codePointAt(0) ?? 0) - FIRST_CELL
  if (bits < 0 || bits > LAST_CELL - FIRST_CELL) return cell
  if (bits === 0) return 'blank'
  const dots = Array.from({ length: DOTS_IN_CELL }, (_, i) => i + 1).filter((dot) => bits & (1 << (dot - 1)))
  return `${dots.length === 1 ? 'dot' : 'dots'} ${dots.join(' ')}`
}
