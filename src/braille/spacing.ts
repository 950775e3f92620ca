import type { Requirement, Standard } from '../standards/standard.js'
import type { Spacing } from './cells.js'

/** The spacing of braille that fits a set of standards: for each length the middle of the window that all of them leave. */

const MILLIMETRES_PER_INCH = 25.4
/** Values are aimed at this grid where it does not leave the window, so that a drawing has round numbers. */
const GRID = 0.05
const DECIMALS = 1e6
const QUANTITIES = {
  dotSpacing: 'braille.dotSpacing',
  cellSpacing: 'braille.cellSpacing',
  lineSpacing: 'braille.lineSpacing',
} as const

interface Window {
  min: number
  max: number
}

/** The spacing that satisfies all standards; undefined when one of them has no such row or they exclude each other. */
export function spacingFor(standards: readonly Standard[]): Spacing | undefined {
  const [dotSpacing, cellSpacing, lineSpacing] = Object.values(QUANTITIES).map((quantity) =>
    aimFor(quantity, standards),
  )
  if (dotSpacing === undefined || cellSpacing === undefined || lineSpacing === undefined) return undefined
  return { dotSpacing, cellSpacing, lineSpacing }
}

function aimFor(quantity: string, standards: readonly Standard[]): number | undefined {
  const rows = standards.flatMap((standard) =>
    standard.requirements
      .filter((row) => row.quantity === quantity && row.force === 'shall')
      .map((row) => ({ row, firstUnit: standard.firstUnit })),
  )
  const both = intersect(rows.map(({ row }) => windowOf(row, 'both')))
  const printed = both ?? intersect(rows.map(({ row, firstUnit }) => windowOf(row, firstUnit)))
  return printed && middle(printed)
}

/** A row's window in millimetres: by one of its printed units, or inside both. */
function windowOf({ limit }: Requirement, unit: 'in' | 'mm' | 'both'): Window {
  const open: Window = { min: -Infinity, max: Infinity }
  if (limit.kind !== 'length') return open
  const inches = limit.in ?? {}
  const byInch: Window = {
    min: (inches.min ?? -Infinity) * MILLIMETRES_PER_INCH,
    max: (inches.max ?? Infinity) * MILLIMETRES_PER_INCH,
  }
  const byMillimetre: Window = { min: limit.mm.min ?? -Infinity, max: limit.mm.max ?? Infinity }
  if (unit === 'in' && limit.in) return byInch
  return unit === 'both' ? (intersect([byInch, byMillimetre]) ?? { min: Infinity, max: -Infinity }) : byMillimetre
}

function intersect(windows: Window[]): Window | undefined {
  const min = Math.max(-Infinity, ...windows.map((window) => window.min))
  const max = Math.min(Infinity, ...windows.map((window) => window.max))
  return windows.length > 0 && min <= max ? { min, max } : undefined
}

function middle({ min, max }: Window): number | undefined {
  if (!Number.isFinite(min) || !Number.isFinite(max)) return undefined
  const exact = (min + max) / 2
  const round = Math.round(exact / GRID) * GRID
  const aim = round >= min && round <= max ? round : exact
  return Math.round(aim * DECIMALS) / DECIMALS
}
