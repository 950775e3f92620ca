import type { Finding } from './finding-schema.js'
import type { Numbered } from './numbering.js'
import type { Report } from './schema.js'
import { sentence } from './sentences.js'
import type { SetSign, SetWaiver } from './set/evidence.js'

/**
 * What people lay over a report: waivers, notes, readings that were added. It stands beside the findings and changes none of them:
 * a finding that was waived still fails.
 */
export type Overlay = Pick<SetSign, 'waivers' | 'notes' | 'measurements' | 'outdated'>

export const NO_OVERLAY: Overlay = { waivers: [], notes: [], measurements: [] }

export const isBare = ({ waivers, notes, measurements }: Overlay): boolean =>
  waivers.length + notes.length + measurements.length === 0

const OUTDATED =
  'This report was made before the last readings or facts of the place were added, and knows nothing of them.'

const WHY_OUTDATED: Record<NonNullable<SetSign['outdated']>, string> = {
  queued: 'The sign waits to be checked again.',
  cancelled: 'The submittal was cancelled before the sign was checked again.',
}

/** What must be said beside the verdict of a report that is not the last word; undefined where it is. */
export const outdatedWords = ({ outdated }: Pick<Overlay, 'outdated'>): string | undefined =>
  outdated && `${OUTDATED} ${WHY_OUTDATED[outdated]}`

/** The waivers that were given for this finding and hold or held; those that it does not need any more are not shown at it. */
export const waiversFor = ({ waivers }: Overlay, { fingerprint }: Pick<Finding, 'fingerprint'>): SetWaiver[] =>
  waivers.filter((waiver) => waiver.fingerprint === fingerprint && waiver.standing !== 'unused')

export const isWaived = (overlay: Overlay, finding: Pick<Finding, 'fingerprint'>): boolean =>
  waiversFor(overlay, finding).some(({ standing }) => standing === 'in-force')

/** Undecided findings of which the message says no more than that a fact is missing, and those with more to tell. */
export function byWeight(undecided: readonly Numbered[], overlay: Overlay): { plain: Numbered[]; rest: Numbered[] } {
  const isPlain = ({ finding }: Numbered) =>
    finding.reason === 'missing-fact' && waiversFor(overlay, finding).length === 0
  return { plain: undecided.filter(isPlain), rest: undecided.filter((item) => !isPlain(item)) }
}

/** Waivers that hold nothing: their day is over, or nothing fails or is undecided under them. */
export const idleWaivers = ({ waivers }: Overlay): SetWaiver[] =>
  waivers.filter(({ standing }) => standing !== 'in-force')

export const STANDING_WORDS: Record<SetWaiver['standing'], string> = {
  'in-force': 'Waived',
  expired: 'Waiver expired',
  unused: 'Waiver not used',
}

/** Who lets it stand, why and until when. */
export function waiverWords({ reason, author, authority, expires, standing, at }: SetWaiver): string {
  const day = standing === 'expired' ? 'Held through' : 'Holds through'
  const until = expires === null ? 'Holds until withdrawn.' : `${day} ${timeWords(expires)}.`
  return `${sentence(reason)} Authority reference: ${authority}. Entered by ${author}, ${timeWords(at)}. ${until}`
}

/** The finding that a waiver is for, by name where the report has it. */
export function waiverTarget({ findings }: Pick<Report, 'findings'>, { fingerprint }: SetWaiver): string {
  const finding = findings.find((one) => one.fingerprint === fingerprint)
  if (!finding) return `A finding that the latest report does not have (${fingerprint})`
  const now = {
    pass: 'now passes',
    fail: 'fails',
    undetermined: 'is undecided',
    'not-applicable': 'does not apply now',
  }
  return `${finding.clause} ${finding.title}, which ${now[finding.verdict]}`
}

/** "0.71, 0.74, 0.69 mm, ± 0.02 mm (k = 2), dial gauge; entered by A. Mason, 2026-11-25, 19:09 UTC". */
export function readingsWords(readings: Overlay['measurements'][number]): string {
  const { values, unit, expandedUncertainty, instrument, author, at } = readings
  const named = unit === 'ratio' ? 'as ratios' : unit
  const spread =
    expandedUncertainty === null ? '' : `, ± ${expandedUncertainty}${unit === 'ratio' ? '' : ` ${unit}`} (k = 2)`
  return `${values.join(', ')} ${named}${spread}, ${instrument ?? 'instrument not named'}; entered by ${author}, ${timeWords(at)}`
}

const TIME = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?Z$/

/** A time of the evidence for people; a day, and what is no time of ours, as it is. */
export const timeWords = (time: string): string => time.replace(TIME, '$1, $2 UTC')

export const WAIVERS_CHANGE_NOTHING = 'A waiver changes no finding: what was waived still counts as it was found.'
