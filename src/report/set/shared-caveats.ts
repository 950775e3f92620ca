import { GENERAL_CAVEATS } from '../caveats.js'
import type { SetSign } from './evidence.js'

/** The caveats that hold for every sign of a set, so that they are said once; the general ones always are. */
export function sharedCaveats(signs: readonly SetSign[]): string[] {
  const [first, ...rest] = signs.flatMap(({ report }) => (report ? [new Set(report.caveats)] : []))
  const shared = [...(first ?? [])].filter((caveat) => rest.every((others) => others.has(caveat)))
  return [...new Set([...GENERAL_CAVEATS, ...shared])]
}

/** Those of one sign that do not hold for all. */
export function ownCaveats({ report }: SetSign, shared: readonly string[]): string[] {
  return (report?.caveats ?? []).filter((caveat) => !shared.includes(caveat))
}
