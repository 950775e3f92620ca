import type { Font } from 'fontkit'
import type { Translator } from '../../../src/braille/translator.js'
import type { Point } from '../../../src/geometry/point.js'
import { dotPlaces } from '../../recognise/dotted.js'
import type { Construction } from './dots.js'
import { capital, capitalI, pathData, type Capital } from './glyphs.js'
import { PAGE, type Sheet } from './sheets.js'

/**
 * A sign made from numbers: two lines of capitals in the outlines of an open typeface, and what they say in two lines
 * of braille below. Its sizes are known because it was made with them, or are exact numbers of the font file.
 */

/** Millimetres. */
export interface Sizes {
  dotBaseDiameter: number
  dotSpacing: number
  cellSpacing: number
  lineSpacing: number
  characterHeight: number
  /** Added to the advance of each character. */
  tracking: number
  baselineSpacing: number
  clearance: number
}

export interface Make {
  font: Font
  /**
   * In every pair of neighbours one has its whole side straight and upright, so that their gap is that of their boxes;
   * the second line begins with a straight side and nothing of it reaches below the baseline.
   */
  lines: readonly [string, string]
  sizes: Sizes
  construction: Construction
  sheet: Sheet
  turn: number
  /** Digits behind the point, in the drawing's units; undefined: all. */
  decimals?: number
}

export interface MadeSign {
  svg: string
  cells: string[]
  truth: Record<Measured, number>
}

export const MEASURED = [
  'dotBaseDiameter',
  'dotSpacing',
  'cellSpacing',
  'lineSpacing',
  'characterHeight',
  'strokeThickness',
  'leastCharacterSpacing',
  'greatestCharacterSpacing',
  'baselineSpacing',
  'characterClearance',
] as const
export type Measured = (typeof MEASURED)[number]

const LEFT = 80
const FIRST_BASELINE = 150
const PANEL = { x: 50, y: 90, width: 320, height: 220 }

export function makeSign(make: Make, translator: Translator): MadeSign {
  const { font, lines, sizes, construction, sheet, turn, decimals } = make
  const units = (mm: number) => mm * sheet.perMillimetre
  const n = (mm: number) => (decimals === undefined ? String(units(mm)) : String(Number(units(mm).toFixed(decimals))))

  const i = capitalI(font)
  const scale = sizes.characterHeight / i.height
  const stroke = i.stroke * scale
  const set = lines.map((line) => setLine(font, line, scale, sizes.tracking))
  const baselines = lines.map((_, l) => FIRST_BASELINE + l * sizes.baselineSpacing)
  const letters = set.flatMap(({ placed }, l) =>
    placed.map(({ x, letter }) => {
      const place = { x: LEFT + x, y: baselines[l], scale }
      return `<path d="${pathData(letter.commands, place, n)}"/>`
    }),
  )

  const first = set[1].placed[0].letter
  const deepest = Math.min(...set[1].placed.map(({ letter }) => letter.box.bottom))
  if (!first.straightLeft || deepest < 0) throw new Error(`${lines[1]} does not stand flat on its baseline`)
  const cells = lines.map((line) => translator.toCells(line.toLowerCase(), 'ueb-contracted'))
  if (!hasDotOne(cells[0])) throw new Error(`the braille of ${lines[0]} does not begin with dot 1`)
  // Dot 1 of the first cell stands under the foot of a stem: the way between them is straight down.
  const origin: Point = {
    x: LEFT + first.box.left * scale + stroke / 2,
    y: baselines[1] + sizes.clearance + sizes.dotBaseDiameter / 2,
  }
  const layout = { dot: sizes.dotSpacing, cell: sizes.cellSpacing, line: sizes.lineSpacing }
  const centres = dotPlaces(cells, { ...origin, ...layout, diameter: sizes.dotBaseDiameter })

  const gaps = set.flatMap((line) => line.gaps)
  const panel = `<rect x="${n(PANEL.x)}" y="${n(PANEL.y)}" width="${n(PANEL.width)}" height="${n(PANEL.height)}" fill="#f3efe2"/>`
  const whole = turn === 0 ? '' : ` transform="rotate(${turn} ${n(PAGE / 2)} ${n(PAGE / 2)})"`
  return {
    svg:
      `<svg xmlns="http://www.w3.org/2000/svg" ${sheet.attributes}><g fill="#1d2b3a"${whole}>${panel}` +
      `${letters.join('')}${construction.write(centres, sizes.dotBaseDiameter, n)}</g></svg>`,
    cells,
    truth: {
      dotBaseDiameter: sizes.dotBaseDiameter * construction.widest,
      dotSpacing: sizes.dotSpacing,
      cellSpacing: sizes.cellSpacing,
      lineSpacing: sizes.lineSpacing,
      characterHeight: sizes.characterHeight,
      strokeThickness: stroke,
      leastCharacterSpacing: Math.min(...gaps),
      greatestCharacterSpacing: Math.max(...gaps),
      baselineSpacing: sizes.baselineSpacing,
      characterClearance: sizes.clearance - (sizes.dotBaseDiameter / 2) * (construction.widest - 1),
    },
  }
}

const hasDotOne = (cells: string): boolean => ((cells.codePointAt(0) ?? 0) & 1) === 1

interface SetLine {
  placed: { x: number; letter: Capital }[]
  /** Between neighbours of one word. */
  gaps: number[]
}

function setLine(font: Font, line: string, scale: number, tracking: number): SetLine {
  const set: SetLine = { placed: [], gaps: [] }
  let x = 0
  let before: { right: number; letter: Capital } | undefined
  for (const character of line) {
    const letter = capital(font, character)
    if (letter.commands.length === 0) before = undefined
    else {
      if (before) {
        if (!before.letter.straightRight && !letter.straightLeft)
          throw new Error(`the gap before the ${character} of ${line} is not between straight sides`)
        set.gaps.push(x + letter.box.left * scale - before.right)
      }
      set.placed.push({ x, letter })
      before = { right: x + letter.box.right * scale, letter }
    }
    x += letter.advance * scale + tracking
  }
  return set
}
