import { ByteWriter } from './bytes.js'
import type { Finding, Measured } from './finding-schema.js'
import type { Report } from './schema.js'

const writer = new ByteWriter()

/**
 * The report as JSON, in UTF-8: byte for byte what `JSON.stringify` gives of a report with its keys in the order of the schema.
 * Most of a report is what the standard asks, the same in every report; its bytes are kept from one report to the next.
 */
export function reportJson(report: Report): Buffer {
  const { id, mark, use, verdict, stages, summary, standards, decisionRule, unitSystem, findings } = report
  const { reading, assumptions, ignored, unread, questions, toMeasure, caveats, engine } = report
  const before = { id, mark, use, verdict, stages, summary, standards, decisionRule, unitSystem }
  const after = { reading, assumptions, ignored, unread, questions, toMeasure, caveats, engine }
  writer.text(`${opened(before)},"findings":[`)
  findings.forEach((finding, i) => writeFinding(finding, i === findings.length - 1 ? '' : ','))
  writer.text(`],${JSON.stringify(after).slice(1)}`)
  return writer.take()
}

/** The JSON of an object without its closing brace. */
const opened = (value: object): string => JSON.stringify(value).slice(0, -1)

/** The part of a finding that says what is asked. */
function askedOf(finding: Finding) {
  const { requirement, clause, title, asks, force, stage, quantity, limit, citation } = finding
  return { requirement, clause, title, asks, force, stage, quantity, limit, citation }
}
type Asked = ReturnType<typeof askedOf>

const isSame = (a: Asked, b: Asked): boolean =>
  a.requirement === b.requirement &&
  a.clause === b.clause &&
  a.title === b.title &&
  a.asks === b.asks &&
  a.force === b.force &&
  a.stage === b.stage &&
  a.quantity === b.quantity &&
  a.limit === b.limit &&
  a.citation === b.citation

/** Bytes of one row: what it asks and, behind that, how it does not apply for the reason last given. */
interface KeptBytes {
  asked: Asked
  bytes: Buffer
  because?: string
  notApplicable?: Buffer
}

const kept = new WeakMap<Finding['citation'], KeptBytes>()

/** Only what is frozen is kept: nothing else stays as it is for certain. */
function bytesOf(finding: Finding): KeptBytes {
  const before = kept.get(finding.citation)
  if (before && isSame(before.asked, finding)) return before
  const asked = askedOf(finding)
  const made: KeptBytes = { asked, bytes: Buffer.from(opened(asked)) }
  if (Object.isFrozen(finding.limit) && Object.isFrozen(finding.citation)) kept.set(finding.citation, made)
  return made
}

/** @param parting what parts the finding from the next */
function writeFinding(finding: Finding, parting: string): void {
  const row = bytesOf(finding)
  const last = `,"fingerprint":"${finding.fingerprint}"}${parting}`
  if (isPlainlyNotApplicable(finding)) {
    writer.copy(notApplicableBytes(row, finding))
    writer.text(last)
  } else {
    writer.copy(row.bytes)
    const before = foundBytes(finding)
    if (before) writer.copy(before)
    writer.text(before ? last : foundText(finding) + last)
  }
}

interface FoundBytes {
  message: string
  margin: number | null
  bytes: Buffer
}

const found = new WeakMap<Measured, FoundBytes>()

/** Bytes of what was found of a row that passes, where its measured values are shared with other reports. */
function foundBytes(finding: Finding): Buffer | undefined {
  const { measured, message, margin } = finding
  if (measured === null || !isPlainlyPassed(finding) || !Object.isFrozen(measured)) return undefined
  const before = found.get(measured)
  if (before?.message === message && before.margin === margin) return before.bytes
  const bytes = Buffer.from(foundText(finding))
  found.set(measured, { message, margin, bytes })
  return bytes
}

/** Nothing of the sign is in it but what was measured and what is said of that. */
const isPlainlyPassed = ({ verdict, reason, unitSplit, where, whereTotal, remedy }: Finding) =>
  verdict === 'pass' &&
  reason === null &&
  unitSplit === null &&
  where.length === 0 &&
  whereTotal === 0 &&
  remedy === null

/** Nothing of the sign is in it but the reason. */
const isPlainlyNotApplicable = ({ verdict, reason, measured, margin, unitSplit, where, whereTotal, remedy }: Finding) =>
  verdict === 'not-applicable' &&
  reason === null &&
  measured === null &&
  margin === null &&
  unitSplit === null &&
  where.length === 0 &&
  whereTotal === 0 &&
  remedy === null

function notApplicableBytes(row: KeptBytes, finding: Finding): Buffer {
  if (row.notApplicable && row.because === finding.message) return row.notApplicable
  row.because = finding.message
  return (row.notApplicable = Buffer.concat([row.bytes, Buffer.from(foundText(finding))]))
}

/** What was found, up to the fingerprint, as members of an object. */
function foundText(finding: Finding): string {
  const { verdict, reason, measured, margin, unitSplit, where, whereTotal, message, remedy } = finding
  return (
    `,"verdict":"${verdict}","reason":${reason === null ? 'null' : `"${reason}"`},` +
    `"measured":${measured === null ? 'null' : measuredText(measured)},"margin":${margin},` +
    `"unitSplit":${unitSplit === null ? 'null' : JSON.stringify(unitSplit)},` +
    `"where":${where.length === 0 ? '[]' : JSON.stringify(where)},"whereTotal":${whereTotal},` +
    `"message":${quoted(message)},"remedy":${remedy === null ? 'null' : JSON.stringify(remedy)}`
  )
}

/** Numbers of a report are finite, so that they are written as JavaScript writes them. */
function measuredText(measured: Measured): string {
  const { value, unit, inches, min, max, count, uncertainty, basis, instrument, method, conformity, sample } = measured
  const valueText = typeof value === 'string' ? quoted(value) : `${value}`
  const same = (other: number | null) => (other === value ? valueText : `${other}`)
  return (
    `{"value":${valueText},"unit":"${unit}","inches":${inches},` +
    `"min":${same(min)},"max":${same(max)},"count":${count},"uncertainty":${uncertainty},"basis":"${basis}",` +
    `"instrument":${instrument === null ? 'null' : quoted(instrument)},"method":${quoted(method)}` +
    `${conformity ? `,"conformity":${JSON.stringify(conformity)}` : ''}${sample ? `,"sample":${JSON.stringify(sample)}` : ''}}`
  )
}

/** What JSON writes with a backslash (RFC 8259, 7; halves of surrogate pairs too), and a few control characters more. */
const ESCAPED = /["\\\p{Cc}\p{Cs}]/u

const quoted = (text: string): string => (ESCAPED.test(text) ? JSON.stringify(text) : `"${text}"`)
