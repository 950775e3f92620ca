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

const OPEN: Window = { min: -Infinity, max: Infinity }

/**
 * The spacing that satisfies all standards; undefined when they exclude each other, or when they leave a length open that nothing else
 * settles.
 * @param usual settles what the standards leave open, as far as they allow
 */
export function spacingFor(standards: readonly Standard[], usual?: Standard): Spacing | undefined {
  const [dotSpacing, cellSpacing, lineSpacing] = Object.values(QUANTITIES).map((quantity) =>
    aimFor(quantity, standards, usual),
  )
  if (dotSpacing === undefined || cellSpacing === undefined || lineSpacing === undefined) return undefined
  return { dotSpacing, cellSpacing, lineSpacing }
}

function aimFor(quantity: string, standards: readonly Standard[], usual: Standard | undefined): number | undefined {
  const window = windowFor(quantity, standards)
  if (!window || isClosed(window)) return window && middle(window)
  const settled = intersect([window, (usual && windowFor(quantity, [usual])) ?? OPEN])
  if (settled) return isClosed(settled) ? middle(settled) : undefined
  return [window.min, window.max].find(Number.isFinite)
}

/** The window that all standards leave, inside both printed units where there is room; undefined when they exclude each other. */
function windowFor(quantity: string, standards: readonly Standard[]): Window | undefined {
  const rows = standards.flatMap((standard) =>
    standard.requirements
      .filter((row) => row.quantity === quantity && row.force === 'shall')
      .map((row) => ({ row, firstUnit: standard.firstUnit })),
  )
  return (
    intersect(rows.map(({ row }) => windowOf(row, 'both'))) ??
    intersect(rows.map(({ row, firstUnit }) => windowOf(row, firstUnit)))
  )
}

/** A row's window in millimetres: by one of its printed units, or inside both. */
function windowOf({ limit }: Requirement, unit: 'in' | 'mm' | 'both'): Window {
  const [inches, millimetres] = endsOf(limit)
  if (unit === 'both') return intersect([inches ?? OPEN, millimetres ?? OPEN]) ?? { min: Infinity, max: -Infinity }
  return (unit === 'in' ? (inches ?? millimetres) : (millimetres ?? inches)) ?? OPEN
}

/** In millimetres, from the printed inches and from the printed millimetres; a figure without a tolerance is both ends. */
function endsOf(limit: Requirement['limit']): [Window | undefined, Window | undefined] {
  const window = (ends: { min?: number; max?: number } | undefined, factor: number): Window | undefined =>
    ends && { min: (ends.min ?? -Infinity) * factor, max: (ends.max ?? Infinity) * factor }
  const exactly = (figure: number | undefined) => (figure === undefined ? undefined : { min: figure, max: figure })
  if (limit.kind === 'length') return [window(limit.in, MILLIMETRES_PER_INCH), window(limit.mm, 1)]
  if (limit.kind === 'nominal') return [window(exactly(limit.in), MILLIMETRES_PER_INCH), window(exactly(limit.mm), 1)]
  return [undefined, undefined]
}

const isClosed = ({ min, max }: Window): boolean => Number.isFinite(min) && Number.isFinite(max)

function intersect(windows: Window[]): Window | undefined {
  const min = Math.max(-Infinity, ...windows.map((window) => window.min))
  const max = Math.min(Infinity, ...windows.map((window) => window.max))
  return min <= max ? { min, max } : undefined
}

function middle({ min, max }: Window): number {
  const exact = (min + max) / 2
  const round = Math.round(exact / GRID) * GRID
  const aim = round >= min && round <= max ? round : exact
  return Math.round(aim * DECIMALS) / DECIMALS
}
