import { reportHtml } from '../../report/html.js'
import { reportPdf } from '../../report/pdf.js'
import { evidenceArchive, type NamedFile } from '../../report/set/archive.js'
import { setBcf, signsWithTopics } from '../../report/set/bcf.js'
import { setCsv } from '../../report/set/csv.js'
import type { SetEvidence, SetSign } from '../../report/set/evidence.js'
import { setHtml } from '../../report/set/html.js'
import { inspectionHtml, inspectionPdf } from '../../report/set/inspection-sheet.js'
import { setJunit } from '../../report/set/junit.js'
import { setPdf } from '../../report/set/pdf.js'
import { setSarif } from '../../report/set/sarif.js'
import { scheduleCsv } from '../../report/set/schedule-csv.js'
import type { SetForm, SignForm } from './evidence-types.js'

/** What a form needs that is not in the evidence, asked for one at a time. */
export interface Supply {
  received: (sign: SetSign) => Promise<readonly NamedFile[]>
  /** @returns a PNG, or null when none can be made */
  picture: (drawing: string) => Promise<Uint8Array | null>
  /** The whole history as JSON. */
  history: () => Promise<Uint8Array>
  base: string
  /** Of JUnit XML: what an undecided finding counts as. */
  undetermined: 'skipped' | 'failure'
}

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text)

type Whole = Exclude<SetForm, 'report.bcf' | 'evidence.zip'>

const WHOLE: Record<Whole, (evidence: SetEvidence, supply: Supply) => Uint8Array> = {
  'report.html': (evidence) => utf8(setHtml(evidence)),
  'report.pdf': setPdf,
  'report.csv': (evidence) => utf8(setCsv(evidence)),
  'schedule.csv': (evidence) => utf8(scheduleCsv(evidence)),
  'report.sarif': (evidence, { base }) => utf8(setSarif(evidence, { base })),
  'report.xml': (evidence, { undetermined }) => utf8(setJunit(evidence, { undetermined })),
  'inspection.html': (evidence) => utf8(inspectionHtml(evidence)),
  'inspection.pdf': (evidence) => inspectionPdf(evidence),
}

/** The form in pieces, in their order. */
export async function* writeSet(form: SetForm, evidence: SetEvidence, supply: Supply): AsyncGenerator<Uint8Array> {
  if (form === 'evidence.zip') yield* archive(evidence, supply)
  else if (form === 'report.bcf')
    yield setBcf(evidence, { base: supply.base, pictures: await picturesOf(evidence, supply) })
  else yield WHOLE[form](evidence, supply)
}

async function* archive(evidence: SetEvidence, supply: Supply): AsyncGenerator<Uint8Array> {
  const documents = [
    { name: 'report.html', bytes: utf8(setHtml(evidence)) },
    { name: 'report.pdf', bytes: setPdf(evidence) },
    { name: 'inspection.html', bytes: utf8(inspectionHtml(evidence)) },
    { name: 'inspection.pdf', bytes: inspectionPdf(evidence) },
    { name: 'history.json', bytes: await supply.history() },
  ]
  const pictures = await picturesOf(evidence, supply)
  yield* evidenceArchive(evidence, { documents, received: supply.received, pictures, base: supply.base })
}

/** Signs that are painted for one form, since painting takes longer than all else: what comes after them has no picture. */
export const MOST_PAINTED = 200

async function picturesOf(evidence: SetEvidence, { picture }: Supply): Promise<Map<string, Uint8Array>> {
  const pictures = new Map<string, Uint8Array>()
  for (const { id, drawing } of signsWithTopics(evidence).slice(0, MOST_PAINTED)) {
    const made = drawing === null ? null : await picture(drawing)
    if (made) pictures.set(id, made)
  }
  return pictures
}

/** @returns undefined when the sign has no report and the form shows nothing else */
export function writeSign(form: SignForm, evidence: SetEvidence): Uint8Array | undefined {
  const [sign] = evidence.signs
  if (!sign) return undefined
  if (form === 'inspection.html') return utf8(inspectionHtml(evidence))
  if (form === 'inspection.pdf') return inspectionPdf(evidence)
  const { report, drawing } = sign
  if (!report || drawing === null) return undefined
  return form === 'report.html' ? utf8(reportHtml(report, drawing, sign)) : reportPdf(report, drawing, sign)
}
