import { isDeepStrictEqual } from 'node:util'
import type { SignDescription } from '../../sign/description.js'
import type { Claim } from './claim.js'

/** A row of a schedule and an entry of JSON that speak of the same sign, as one. */

export interface Merged {
  claim: Claim
  /** What both say, differently; the entry's word was taken. */
  disagreements: string[]
}

/** The entry says more than a row can, so that its word counts; the row adds what it leaves open. */
export function merge(row: Claim, entry: Claim): Merged {
  // A use that the row's reader assumed is no word of the row.
  const use = entry.sign?.use ?? entry.options?.use
  const assumed = row.options?.useAssumed === true
  const rowSign = row.sign && assumed && use ? { ...row.sign, use } : row.sign
  const { sign, disagreements } = mergeDescriptions(rowSign, entry.sign)
  const hasDrawing = entry.drawing !== undefined || entry.wants !== null
  const wants = hasDrawing ? entry.wants : row.wants
  if (row.wants !== null && hasDrawing && row.wants !== entry.wants) disagreements.push('drawing')
  for (const key of ['location', 'door'] as const)
    if (row[key] !== null && entry[key] !== null && row[key] !== entry[key]) disagreements.push(key)
  return {
    claim: {
      ...row,
      location: entry.location ?? row.location,
      door: entry.door ?? row.door,
      wants,
      ...(entry.drawing && { drawing: entry.drawing }),
      ...(sign && { sign }),
      options: { ...entry.options, ...(assumed && !use && { useAssumed: true }) },
      also: [entry.file],
    },
    disagreements,
  }
}

/** Bare lengths mean what `units` says, so that descriptions in different units are not mixed: then only the entry's counts. */
function mergeDescriptions(row: SignDescription | undefined, entry: SignDescription | undefined) {
  if (!row || !entry) return { sign: entry ?? row, disagreements: [] as string[] }
  if ((row.units ?? 'mm') !== (entry.units ?? 'mm')) return { sign: entry, disagreements: ['units'] }
  const sign: SignDescription = {
    ...row,
    ...entry,
    ...(row.panel && { panel: { ...row.panel, ...entry.panel } }),
    ...(row.installation && { installation: { ...row.installation, ...entry.installation } }),
  }
  const keys = (Object.keys(row) as (keyof SignDescription)[]).filter((key) => key !== 'mark' && key !== 'units')
  return {
    sign,
    disagreements: keys.filter((key) => !isDeepStrictEqual(sign[key], withRow(row, sign, key))) as string[],
  }
}

/** What the key would be if the row's word counted. */
function withRow(row: SignDescription, sign: SignDescription, key: keyof SignDescription): unknown {
  if (key === 'panel') return { ...sign.panel, ...row.panel }
  if (key === 'installation') return { ...sign.installation, ...row.installation }
  return row[key]
}
