import { BLANK, dotsOfCell } from './cells.js'

/**
 * In which cells a run of braille differs from what it should be. Method: the shortest list of cells put in, left out or
 * changed (Levenshtein 1966, by the table of Wagner and Fischer 1974), read from the left.
 */
export interface CellDifference {
  /** Number of the cell from 0; where a cell is missing, of the cell before which it is missing. */
  at: number
  /** The cell that is there; undefined where one is missing. */
  is?: string
  /** The cell that should be there; undefined where one is too many. */
  should?: string
}

const CAPITAL_SIGN = '\u2820'
/** Longer runs are compared up to the first difference only: the table grows with the product of both lengths. */
const LONGEST_TABLE = 200

/**
 * @param is the cells that are there
 * @param should the cells that should be there
 * @returns the differences from the left, capital signs aside as far as anything else differs; none for equal runs
 */
export function differencesOf(is: string, should: string): CellDifference[] {
  const [there, wanted] = [numbered(is), numbered(should)]
  const aside = (cells: Numbered[]) => cells.filter(({ cell }) => cell !== CAPITAL_SIGN)
  const found = differing(aside(there), aside(wanted), is.length)
  return found.length > 0 ? found : differing(there, wanted, is.length)
}

interface Numbered {
  cell: string
  at: number
}

const numbered = (cells: string): Numbered[] => Array.from(cells, (cell, at) => ({ cell, at }))

function differing(is: Numbered[], should: Numbered[], end: number): CellDifference[] {
  let same = 0
  while (same < is.length && same < should.length && is[same]?.cell === should[same]?.cell) same++
  const [rest, wanted] = [is.slice(same), should.slice(same)]
  if (rest.length === 0 && wanted.length === 0) return []
  return Math.max(rest.length, wanted.length) > LONGEST_TABLE
    ? [difference(rest[0], wanted[0], end)]
    : shortest(rest, wanted, end)
}

const difference = (is: Numbered | undefined, should: Numbered | undefined, end: number): CellDifference => ({
  at: is?.at ?? end,
  ...(is && { is: is.cell }),
  ...(should && { should: should.cell }),
})

function shortest(is: Numbered[], should: Numbered[], end: number): CellDifference[] {
  const costs = costsOf(is, should)
  const cost = (i: number, j: number): number => costs[i]?.[j] ?? Infinity
  const found: CellDifference[] = []
  let [i, j] = [0, 0]
  while (i < is.length || j < should.length) {
    const [here, wanted] = [is[i], should[j]]
    if (here && wanted && here.cell === wanted.cell && cost(i, j) === cost(i + 1, j + 1)) {
      i++
      j++
    } else if (here && wanted && cost(i, j) === cost(i + 1, j + 1) + 1) {
      found.push(difference(here, wanted, end))
      i++
      j++
    } else if (here && cost(i, j) === cost(i + 1, j) + 1) {
      found.push(difference(here, undefined, end))
      i++
    } else {
      found.push({ at: here?.at ?? end, ...(wanted && { should: wanted.cell }) })
      j++
    }
  }
  return found
}

/** For each pair of places how many changes the rest takes. */
function costsOf(is: Numbered[], should: Numbered[]): number[][] {
  const costs = Array.from({ length: is.length + 1 }, () => new Array<number>(should.length + 1).fill(0))
  for (let i = is.length; i >= 0; i--)
    for (let j = should.length; j >= 0; j--) {
      const row = costs[i]
      if (!row) continue
      const [down, across, both] = [costs[i + 1]?.[j], row[j + 1], costs[i + 1]?.[j + 1]]
      if (down === undefined) row[j] = should.length - j
      else if (across === undefined || both === undefined) row[j] = is.length - i
      else row[j] = is[i]?.cell === should[j]?.cell ? both : 1 + Math.min(down, across, both)
    }
  return costs
}

/** "⠂ (dot 2)", "a blank". */
function written(cell: string): string {
  if (cell === BLANK) return 'a blank'
  const dots = dotsOfCell(cell)
  return `${cell} (${dots.length === 1 ? 'dot' : 'dots'} ${dots.join(' ')})`
}

/** "cell 2 is ⠂ (dot 2) and should be ⠊ (dots 2 4)": people count from one. */
export function differenceWords({ at, is, should }: CellDifference, where = `cell ${at + 1}`): string {
  if (is === undefined) return `before ${where} ${written(should ?? BLANK)} is missing`
  return should === undefined
    ? `${where} is ${written(is)} and should not be there`
    : `${where} is ${written(is)} and should be ${written(should)}`
}
