import { Matrix, inverse } from 'ml-matrix'
import type { Translator } from '../../src/braille/translator.js'
import { readSign, type CheckOptions } from '../../src/check.js'
import { isKnown } from '../../src/sign/sign.js'
import { dotPlaces } from '../recognise/dotted.js'
import { rootMeanSquare } from './markdown.js'
import { seeded } from './random.js'

/**
 * Dots whose centres are off their places by Gaussian noise, against the Cramér–Rao bound: no unbiased estimate of a
 * parameter has a smaller variance than that diagonal element of sigma² (JᵀJ)⁻¹, where J are the derivatives of all
 * coordinates by all parameters (H. Cramér, Mathematical Methods of Statistics, 1946, 32.3; C. R. Rao, Bull. Calcutta
 * Math. Soc. 37, 1945). The model is the strictest there is: one stiff lattice with a place, a rotation and three
 * spacings.
 */

export const QUANTITIES = ['dotSpacing', 'cellSpacing', 'lineSpacing', 'rotation'] as const
type Quantity = (typeof QUANTITIES)[number]

export interface NoiseRow {
  sigma: number
  signs: number
  /** Signs of which all spacings were told. */
  measured: number
  /** Cells were said that are not those of the sign. */
  wrong: number
  /** Root mean square error over the bound. */
  ratio: Record<Quantity, number>
  /** The bound: millimetres, degrees. */
  bound: Record<Quantity, number>
}

const WORDING = ['reading room', 'level 2 north']
const SIZES = { dot: 2.4, cell: 6.9, line: 10.1, diameter: 1.55 }
const PLACE = { x: 30, y: 30 }
const TURN = 1.5
const PAGE = 200
/** Each level of noise has noise of its own. */
const seedOf = (sigma: number) => 703 + Math.round(sigma * 1000)

const OPTIONS: CheckOptions = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }

/** @param sigma standard deviation of each coordinate of a dot, millimetres */
export function underNoise(sigma: number, signs: number, translator: Translator): NoiseRow {
  const random = seeded(seedOf(sigma))
  const cells = WORDING.map((line) => translator.toCells(line, 'ueb-contracted'))
  const angle = (TURN * Math.PI) / 180
  const places = dotPlaces(cells, { ...SIZES, x: 0, y: 0 }).map(({ x, y }) => ({
    x: PLACE.x + x * Math.cos(angle) - y * Math.sin(angle),
    y: PLACE.y + x * Math.sin(angle) + y * Math.cos(angle),
  }))
  const errors: Record<Quantity, number[]> = { dotSpacing: [], cellSpacing: [], lineSpacing: [], rotation: [] }
  let wrong = 0
  for (let i = 0; i < signs; i++) {
    const dots = places.map(({ x, y }) => {
      const [cx, cy] = [x + sigma * random.normal(), y + sigma * random.normal()]
      return `<circle cx="${cx}" cy="${cy}" r="${SIZES.diameter / 2}"/>`
    })
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${PAGE}mm" height="${PAGE}mm" viewBox="0 0 ${PAGE} ${PAGE}">${dots.join('')}</svg>`
    const { braille } = readSign({ drawing: Buffer.from(svg), standards: [], options: OPTIONS }, translator)
    const said = braille.flatMap((b) => b.lines.map((line) => (isKnown(line.cells) ? line.cells.value : undefined)))
    if (said.some((line, l) => line !== undefined && line !== cells[l])) wrong++
    const [block] = braille
    if (braille.length !== 1 || said.includes(undefined)) continue
    const { dotSpacing, cellSpacing, lineSpacing, rotation } = block
    if (!isKnown(dotSpacing) || !isKnown(cellSpacing) || !isKnown(lineSpacing)) continue
    errors.dotSpacing.push(dotSpacing.value - SIZES.dot)
    errors.cellSpacing.push(cellSpacing.value - SIZES.cell)
    errors.lineSpacing.push(lineSpacing.value - SIZES.line)
    errors.rotation.push(rotation - TURN)
  }
  const bound = boundOf(cells, sigma)
  const ratio = Object.fromEntries(
    QUANTITIES.map((name) => [name, rootMeanSquare(errors[name]) / bound[name]]),
  ) as NoiseRow['ratio']
  return { sigma, signs, measured: errors.dotSpacing.length, wrong, ratio, bound }
}

/**
 * Along the lines x depends on place, dot and cell spacing; across them y on place, dot and line spacing; a turn moves
 * both.
 */
function boundOf(cells: readonly string[], sigma: number): Record<Quantity, number> {
  const unit = (of: Partial<typeof SIZES>) =>
    dotPlaces([...cells], { x: 0, y: 0, dot: 0, cell: 0, line: 0, diameter: 0, ...of })
  const [byDot, byCell, byLine] = [unit({ dot: 1 }), unit({ cell: 1 }), unit({ line: 1 })]
  const at = unit(SIZES)
  const rows = at.flatMap(({ x, y }, i) => [
    [1, 0, -y, byDot[i].x, byCell[i].x, byLine[i].x],
    [0, 1, x, byDot[i].y, byCell[i].y, byLine[i].y],
  ])
  const J = new Matrix(rows)
  const least = inverse(J.transpose().mmul(J))
  const deviation = (parameter: number) => sigma * Math.sqrt(least.get(parameter, parameter))
  return {
    dotSpacing: deviation(3),
    cellSpacing: deviation(4),
    lineSpacing: deviation(5),
    rotation: (deviation(2) * 180) / Math.PI,
  }
}
