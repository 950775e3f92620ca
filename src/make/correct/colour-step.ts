import culori from 'culori/require'
import { FORMULAS, type Formula } from '../../measure/contrast/formulas.js'
import { reflectanceContrast } from '../../measure/contrast/lighter.js'
import { contrastRatio } from '../../measure/contrast/ratio.js'
import type { Finding } from '../../report/finding-schema.js'
import { parseColour } from '../../drawing/colour.js'
import { isKnown } from '../../sign/sign.js'
import { breaking, ELSEWHERE } from './attempt.js'
import type { Bench } from './bench.js'
import { NotCorrectable, type Rgb } from './outcome.js'
import { recoloured } from './recolour.js'
import { failing, offenders, rowsInForce, type Sheet } from './sheet.js'
import { tried } from './trial.js'

const { wcagLuminance } = culori

/**
 * The step that darkens or lightens characters to the nearest colour that passes: on the straight line in sRGB from the colour that they
 * have to black or to white, in steps of eight bits, the first one at which every row in force on their contrast is met.
 */

const BY_FORMULA: Record<string, Formula> = {
  'contrast.characters': contrastRatio,
  'contrast.reflectance': reflectanceContrast,
  'contrast.lighterReflectance': Math.max,
  ...Object.fromEntries(
    Object.entries(FORMULAS).map(([name, { formula }]) => [`contrast.charactersBy${name}`, formula]),
  ),
}
const QUANTITIES = Object.keys(BY_FORMULA)
const STEPS = 255

const UNKNOWN = 'The colours of the characters and of what is behind them were not read as plain colours.'
const NONE = 'No darker or lighter colour of the characters reaches the contrast on this background: it has to change.'
const STILL = 'It was tried, and the drawing failed in the same way.'

export function colourStep(sheet: Sheet, bench: Bench): Sheet {
  const failed = failing(sheet.report, QUANTITIES)
  if (failed.length === 0) return sheet
  const outcome = better(sheet, failed, bench)
  if (typeof outcome !== 'string') return outcome
  for (const { requirement } of failed) bench.reasons.set(requirement, outcome)
  return sheet
}

function better(sheet: Sheet, failed: readonly Finding[], bench: Bench): Sheet | string {
  const { sign, report } = sheet
  const rows = rowsInForce(report, QUANTITIES)
  const numbers = new Set(failed.flatMap((row) => offenders(row, 'lettering', sign.lettering.length)))
  const colours = new Map<number, Rgb>()
  for (const n of numbers) {
    const { colour, background } = sign.lettering[n]
    const now = isKnown(colour) ? parseColour(colour.value.css ?? '')?.rgb : undefined
    if (!now || !isKnown(background)) return UNKNOWN
    const nearest = nearestPassing(now, background.value.luminance, rows)
    if (!nearest) return NONE
    colours.set(n, nearest)
  }
  const rewrite = recoloured(sheet, colours)
  if (rewrite instanceof NotCorrectable) return rewrite.why
  const trial = tried(sheet, rewrite, bench)
  if (!trial) return ELSEWHERE
  if (trial.broken.length > 0) return breaking(trial.broken)
  return failed.some(({ requirement }) => trial.mended.includes(requirement)) ? trial.sheet : STILL
}

function nearestPassing(now: Rgb, behind: number, rows: readonly Finding[]): Rgb | undefined {
  const darkFirst = luminanceOf(now) <= behind
  const ends = darkFirst ? [0, 1] : [1, 0]
  for (const end of ends)
    for (let step = 1; step <= STEPS; step++) {
      const mixed = now.map((value) => eightBit(value + ((end - value) * step) / STEPS))
      const colour: Rgb = [mixed[0], mixed[1], mixed[2]]
      if (rows.every((row) => meets(row, luminanceOf(colour), behind))) return colour
    }
  return undefined
}

const eightBit = (value: number): number => Math.round(value * STEPS) / STEPS

const luminanceOf = ([r, g, b]: Rgb): number => wcagLuminance({ mode: 'rgb', r, g, b })

function meets({ quantity, limit }: Finding, thing: number, behind: number): boolean {
  const value = BY_FORMULA[quantity](thing, behind)
  return value !== undefined && value >= (limit.min ?? -Infinity) && value <= (limit.max ?? Infinity)
}
