import { PARTS, SECTIONS, type LetteringPart, type Section } from '../sign/sign.js'
import type { RowInForce } from './in-force.js'

/** Rows that are about the same characters: a row may look at raised characters only, or at bevelled ones. */

export interface Characters {
  /** Absent: whatever the characters are for. */
  parts?: LetteringPart[]
  sections?: Section[]
}

export interface SameCharacters extends Characters {
  rows: RowInForce[]
}

/** Rows of one quantity, together for each kind of character that has rows of its own. */
export function bySameCharacters(rows: readonly RowInForce[]): SameCharacters[] {
  const groups = new Map<string, { rows: RowInForce[]; parts: Set<LetteringPart>; sections: Set<Section> }>()
  for (const part of PARTS)
    for (const section of SECTIONS) {
      const own = rows.filter(({ row: { scope } }) => looksAt(scope.parts, part) && looksAt(scope.sections, section))
      if (own.length === 0) continue
      const key = own.map(({ row }) => row.requirement).join(' ')
      const group = groups.get(key) ?? { rows: own, parts: new Set(), sections: new Set() }
      group.parts.add(part)
      group.sections.add(section)
      groups.set(key, group)
    }
  return [...groups.values()].map(({ rows: own, parts, sections }) => ({
    rows: own,
    ...(parts.size < PARTS.length && { parts: [...parts] }),
    ...(sections.size < SECTIONS.length && { sections: [...sections] }),
  }))
}

const looksAt = <T>(wanted: readonly T[] | undefined, one: T): boolean => wanted === undefined || wanted.includes(one)
