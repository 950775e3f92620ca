import type { Finding, ReportStage } from '../finding-schema.js'
import { waiversFor, waiverWords } from '../overlay.js'
import { clauseOf } from '../numbering.js'
import type { Report } from '../schema.js'
import { sentence } from '../sentences.js'
import type { SetSign } from './evidence.js'
import { markOf } from './words.js'

/** What a person with gauge and tape must decide of a set, in the order of one walk through the building. */

export interface InspectionPlace {
  /** The place or, without one, the door; null where neither is known. */
  name: string | null
  signs: InspectionSign[]
}

export interface InspectionSign {
  sign: SetSign
  items: InspectionItem[]
}

/** One thing to look at: what several clauses ask of one quantity is read once. */
export interface InspectionItem {
  stage: ReportStage
  quantity: string
  title: string
  how: string
  limits: { clause: string; printed: string; waived: string | null }[]
  /** Null where there is nothing to read off, only to judge. */
  reading: { unit: string; count: number } | null
}

export interface Inspection {
  places: InspectionPlace[]
  /** Marks of signs of which nothing is left for gauge and tape. */
  nothingLeft: string[]
  /** Marks of signs that have no report, so that nobody knows yet. */
  unknown: string[]
}

/** A person stands before the sign first at the site, then bends over the product. Lengths of the drawing come last. */
const STAGES: ReportStage[] = ['site', 'product', 'drawing']

/** How many readings have room: common practice, no source. One place is read once, what varies over a sign more often. */
const READINGS: Partial<Record<string, number>> = { 'braille.dotHeight': 5, 'raised.relief': 3 }
const USUAL_READINGS = 1

const natural = new Intl.Collator('en', { numeric: true })
const byText = (a: string | null, b: string | null): number =>
  a === null || b === null
    ? Number(a === null) - Number(b === null)
    : natural.compare(a, b) || (a < b ? -1 : Number(a > b))

/** Places in natural order (2 before 10), then doors, then marks; what has no place comes last. */
export function inspectionOf(signs: readonly SetSign[]): Inspection {
  const all = signs.map((sign) => ({ sign, items: itemsOf(sign) }))
  const open = all.filter(({ items }) => items.length > 0)
  const placed = open.map((one) => ({ ...one, name: one.sign.location ?? doorName(one.sign) }))
  placed.sort((a, b) => byText(a.name, b.name) || byText(a.sign.door, b.sign.door) || byText(a.sign.mark, b.sign.mark))
  const places: InspectionPlace[] = []
  for (const { name, sign, items } of placed) {
    const last = places.at(-1)
    if (last && last.name === name) last.signs.push({ sign, items })
    else places.push({ name, signs: [{ sign, items }] })
  }
  const marks = (list: { sign: SetSign }[]) => list.map(({ sign }) => markOf(sign)).sort(byText)
  return {
    places,
    nothingLeft: marks(all.filter(({ sign, items }) => sign.report !== null && items.length === 0)),
    unknown: marks(all.filter(({ sign }) => sign.report === null)),
  }
}

const doorName = ({ door }: SetSign): string | null => (door === null ? null : `Door ${door}`)

/**
 * Undecided rows of force `shall` or `should` that the report lists to be measured, and whatever else is undecided about the product or
 * the site. Advice is left to the report.
 */
export function itemsOf(sign: SetSign): InspectionItem[] {
  const { report } = sign
  if (!report) return []
  const how = new Map(report.toMeasure.map((item) => [item.requirement, item.how]))
  const items = new Map<string, InspectionItem>()
  for (const finding of report.findings) {
    if (!isForAPerson(finding, how)) continue
    const key = `${finding.stage} ${finding.quantity}`
    const item = items.get(key) ?? newItem(finding, how.get(finding.requirement))
    item.limits.push(limitOf(report, sign, finding))
    items.set(key, item)
  }
  return STAGES.flatMap((stage) => [...items.values()].filter((item) => item.stage === stage))
}

const isForAPerson = ({ verdict, force, stage, requirement }: Finding, how: Map<string, string>): boolean =>
  verdict === 'undetermined' && force !== 'advice' && (stage !== 'drawing' || how.has(requirement))

function newItem(finding: Finding, how: string | undefined): InspectionItem {
  const { stage, quantity, title, asks, limit } = finding
  const unit = unitPrinted(limit)
  const count = READINGS[quantity] ?? USUAL_READINGS
  return {
    stage,
    quantity,
    title,
    how: how ?? `Judge whether this holds: ${sentence(asks)}`,
    limits: [],
    reading: unit === null ? null : { unit, count },
  }
}

function limitOf(report: Report, sign: SetSign, finding: Finding): InspectionItem['limits'][number] {
  const waiver = waiversFor(sign, finding).find(({ standing }) => standing === 'in-force')
  return {
    clause: clauseOf(report, finding),
    printed: finding.limit.printed,
    waived: waiver ? waiverWords(waiver) : null,
  }
}

const UNITS: [RegExp, string][] = [
  [/\d ?(?:(?:in|inch|inches)\b|["″])/, 'in'],
  [/\d ?(?:ft|foot|feet)\b/, 'ft'],
  [/\d ?mm\b/, 'mm'],
  [/\d ?cm\b/, 'cm'],
  [/\d ?m\b/, 'm'],
]

const NUMBERS: Partial<Record<string, string>> = { ratio: 'ratio', count: '', lx: 'lx', 'gloss-units': 'gloss units' }

/** The unit that the code prints first, so that nobody converts on a ladder; null where nothing is read off. */
export function unitPrinted({ unit, printed }: Finding['limit']): string | null {
  if (unit !== 'mm') return unit === 'ratio' && /percent|%/.test(printed) ? '%' : (NUMBERS[unit] ?? null)
  const found = UNITS.map(([pattern, name]) => ({ name, at: printed.search(pattern) })).filter(({ at }) => at >= 0)
  return found.sort((a, b) => a.at - b.at)[0]?.name ?? 'mm'
}
