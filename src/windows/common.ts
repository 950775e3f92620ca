import type { LoadedStandard } from '../standards/catalogue.js'
import { smallestExcluding } from './excluding.js'
import { rowsOf, type ConditionalRow, type RowInForce } from './in-force.js'
import { DIAMETER, domesOf, HEIGHT, type JointRegion } from './domes.js'
import { bySameCharacters } from './lettering.js'
import { OPPOSITES } from './opposites.js'
import { regionOf } from './region.js'
import type { Setting } from './setting.js'
import type { Conflict, Window } from './window.js'

/** What satisfies several standards at once, before there is a sign. */

export interface Common {
  /** The standards that ask something of a sign, each with its rows in force. */
  asked: { standard: LoadedStandard; inForce: number }[]
  windows: Window[]
  /** Undefined too where no height or no diameter satisfies all: what the radius alone would leave satisfies nobody. */
  domes: JointRegion | undefined
  conflicts: Conflict[]
  conditional: ConditionalRow[]
}

/**
 * @param standards reference geometries among them are passed over: no code asks them of a sign
 */
export function commonWindows(standards: readonly LoadedStandard[], setting: Setting): Common {
  const rules = standards.filter(({ kind }) => kind !== 'reference-geometry')
  const found = rules.map((standard) => ({ standard, ...rowsOf(standard, setting) }))
  const rows = found.flatMap(({ inForce }) => inForce)
  const windows: Window[] = []
  const conflicts: Conflict[] = opposites(rows)
  const opposed = new Set(conflicts.flatMap(({ quantities }) => quantities))
  for (const [quantity, own] of byQuantity(rows.filter(({ row }) => !opposed.has(row.quantity))))
    for (const { rows: same, ...characters } of bySameCharacters(own)) {
      const region = regionOf(same)
      if (region) windows.push({ quantity, ...characters, region, rows: same })
      else conflicts.push(...excludingOn(quantity, same))
    }
  const torn = new Set(conflicts.flatMap(({ quantities }) => quantities))
  const domes = torn.has(DIAMETER) || torn.has(HEIGHT) ? undefined : domesOf(windows)
  if (domes?.isEmpty) conflicts.push(domes.conflict)
  return {
    asked: found.map(({ standard, inForce }) => ({ standard, inForce: inForce.length })),
    windows,
    domes: domes?.isEmpty ? undefined : domes,
    conflicts: distinct(conflicts),
    conditional: found.flatMap(({ conditional }) => conditional),
  }
}

function byQuantity(rows: readonly RowInForce[]): Map<string, RowInForce[]> {
  const found = new Map<string, RowInForce[]>()
  for (const row of rows) found.set(row.row.quantity, [...(found.get(row.row.quantity) ?? []), row])
  return found
}

const excludingOn = (quantity: string, rows: readonly RowInForce[]): Conflict[] =>
  smallestExcluding(rows, (some) => regionOf(some) !== undefined).map((some) => ({
    quantities: [quantity],
    rows: some,
    why: 'no-value',
  }))

const opposites = (rows: readonly RowInForce[]): Conflict[] =>
  OPPOSITES.flatMap((pair) => {
    const [some, others] = pair.map((quantity) => rows.filter(({ row }) => row.quantity === quantity))
    return (some ?? []).flatMap((one) =>
      (others ?? []).map((other): Conflict => ({ quantities: [...pair], rows: [one, other], why: 'opposite' })),
    )
  })

/** Rows that exclude each other for characters of several kinds are told of once. */
function distinct(conflicts: readonly Conflict[]): Conflict[] {
  const byRows = new Map(conflicts.map((conflict) => [conflict.rows.map((r) => r.row.requirement).join(' '), conflict]))
  return [...byRows.values()]
}
