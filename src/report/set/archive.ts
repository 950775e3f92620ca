import { VERSION } from '../../version.js'
import { reportHtml } from '../html.js'
import { reportJson } from '../json.js'
import { setBcf, type BcfOptions } from './bcf.js'
import { setCsv } from './csv.js'
import type { SetEvidence, SetSign } from './evidence.js'
import { cleanFileName, cleanName, Names } from './file-names.js'
import { setJunit } from './junit.js'
import { setSarif } from './sarif.js'
import { scheduleCsv } from './schedule-csv.js'
import { partWords } from './words.js'
import { zipDate } from './zip-date.js'
import { ZipWriter } from './zip-writer.js'

/** Everything about a submittal in one zip, with a digest of each file. */

export interface NamedFile {
  name: string
  bytes: Uint8Array
}

export interface ArchiveParts extends BcfOptions {
  /** Forms that are written elsewhere (pages, the inspection sheet, the history), by their names. */
  documents: readonly NamedFile[]
  /** The files that a sign was received as, asked for one sign at a time. */
  received: (sign: SetSign) => Promise<readonly NamedFile[]>
}

const MANIFEST = 'manifest.json'
const SUMS = 'SHA256SUMS'
const README = 'README.txt'
/** Raise it when files are called otherwise or the manifest is made otherwise. */
const FORMAT = 'fingertrue-evidence/1'

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`

/** The forms of the whole set, by the names of their files. */
const FORMS: Record<string, (evidence: SetEvidence, parts: ArchiveParts) => string | Uint8Array> = {
  [README]: readme,
  'submittal.json': (evidence) => json(withoutReports(evidence)),
  'schedule.csv': scheduleCsv,
  'findings.csv': setCsv,
  'findings.sarif': (evidence, { base }) => setSarif(evidence, base === undefined ? {} : { base }),
  'findings.bcf': setBcf,
  'findings.junit.xml': (evidence) => setJunit(evidence),
}

/**
 * The zip in pieces, in their order; the same evidence and parts give the same bytes. `SHA256SUMS` is as `sha256sum -c` reads it.
 * @throws {RangeError} when there is more than a zip can hold
 */
export async function* evidenceArchive(evidence: SetEvidence, parts: ArchiveParts): AsyncGenerator<Uint8Array> {
  const zip = new ZipWriter(zipDate(evidence.asOf))
  const names = new Names()
  for (const name of [MANIFEST, SUMS, 'signs', ...Object.keys(FORMS)]) names.unique(name)
  for (const [name, form] of Object.entries(FORMS)) {
    zip.add(name, form(evidence, parts))
    yield* zip.take()
  }
  for (const { name, bytes } of parts.documents) {
    zip.add(names.unique(cleanFileName(name, 'document')), bytes)
    yield* zip.take()
  }
  const folders = new Names()
  const signs: ReturnType<typeof listed>[] = []
  for (const sign of evidence.signs) {
    const folder = `signs/${folders.unique(cleanName(sign.mark, 'sign'))}`
    addSign(zip, folder, sign, parts)
    addReceived(zip, folder, await parts.received(sign))
    signs.push(listed(sign, folder))
    yield* zip.take()
  }
  zip.add(MANIFEST, json({ format: FORMAT, version: VERSION, ...about(evidence), signs, files: zip.files }))
  zip.add(SUMS, zip.files.map(({ sha256, name }) => `${sha256}  ${name}\n`).join(''))
  zip.end()
  yield* zip.take()
}

function addSign(zip: ZipWriter, folder: string, sign: SetSign, { pictures }: ArchiveParts): void {
  const { id, report, drawing, problem } = sign
  if (report) zip.add(`${folder}/report.json`, reportJson(report))
  if (report && drawing !== null) zip.add(`${folder}/report.html`, reportHtml(report, drawing, sign))
  if (drawing !== null) zip.add(`${folder}/drawing.svg`, drawing)
  const picture = pictures?.get(id)
  if (picture) zip.add(`${folder}/drawing.png`, picture)
  if (problem) zip.add(`${folder}/problem.json`, json(problem))
}

function addReceived(zip: ZipWriter, folder: string, files: readonly NamedFile[]): void {
  const names = new Names()
  for (const { name, bytes } of files) zip.add(`${folder}/received/${names.unique(cleanFileName(name, 'file'))}`, bytes)
}

const listed = ({ id, mark, report }: SetSign, folder: string) => ({
  id,
  mark,
  folder,
  report: report?.id ?? null,
  verdict: report?.verdict ?? null,
})

const about = ({ id, name, standards, state, createdAt, asOf, history, part }: SetEvidence) => ({
  submittal: { id, name, standards, state, createdAt, asOf, ...(part && { part }) },
  history,
})

/** The evidence as data; reports and drawings are files of their own. */
const withoutReports = ({ signs, setFindings, intakeProblems, ...evidence }: SetEvidence) => ({
  ...evidence,
  setFindings,
  intakeProblems,
  signs: signs.map(({ report, drawing: _, ...sign }) => ({
    ...sign,
    report: report?.id ?? null,
    verdict: report?.verdict ?? null,
  })),
})

/** What the documents are that a service adds; one of another name is listed without words. */
const DOCUMENTS: Record<string, string> = {
  'report.pdf': 'the whole set for paper',
  'report.html': 'the same as one page',
  'inspection.pdf': 'what is left for gauge, tape and eye, for paper',
  'inspection.html': 'the same as one page',
  'history.json': 'every change, with the hashes that prove it',
}

const NAME_WIDTH = 20

function readme({ asOf, signs, part }: SetEvidence, { documents }: ArchiveParts): string {
  const added = documents.map(({ name }) => `${name.padEnd(NAME_WIDTH)}${DOCUMENTS[name] ?? ''}`.trimEnd())
  return `Evidence on a set of ${signs.length} tactile signs, as of ${asOf}.
${part ? `${partWords(part, signs)}\n` : ''}
${added.map((line) => `${line}\n`).join('')}schedule.csv        one row a sign, with its verdicts
findings.csv        one row a finding of each sign
findings.sarif      the same for tools that read analysis results (SARIF 2.1.0)
findings.bcf        a topic for each required row that a sign fails (BCF-XML 3.0)
findings.junit.xml  the same for pipelines (JUnit XML)
submittal.json      the set as data: signs, waivers, notes, readings, what is wrong with the set
manifest.json       what is here, with sizes and digests
SHA256SUMS          the digests alone; check them with: sha256sum -c SHA256SUMS
signs/              a folder for each sign: report, redrawn drawing, and under received/ the files as they came

Files under received/ are as somebody sent them. Open them in a drawing program, not in a browser.
This evidence is not a certification and not legal advice.
`
}
