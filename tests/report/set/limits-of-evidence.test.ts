import { strFromU8, unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { reportHtml } from '../../../src/report/html.js'
import { evidenceArchive } from '../../../src/report/set/archive.js'
import { setBcf } from '../../../src/report/set/bcf.js'
import { setCsv } from '../../../src/report/set/csv.js'
import type { SetEvidence, SetSign } from '../../../src/report/set/evidence.js'
import { setHtml } from '../../../src/report/set/html.js'
import { setJunit } from '../../../src/report/set/junit.js'
import { setSarif } from '../../../src/report/set/sarif.js'
import { scheduleCsv } from '../../../src/report/set/schedule-csv.js'
import { setVerdict } from '../../../src/report/set/verdict.js'
import { comparedWords, partWords } from '../../../src/report/set/words.js'
import { sampleSet, setSign } from './evidence-sample.js'

/** What evidence must say of itself, so that nobody takes it for more than it is. All values are invented. */

function passing(changes: Partial<SetSign> = {}): SetSign {
  const made = setSign('A', changes)
  return { ...made, report: made.report && { ...made.report, verdict: 'pass' } }
}

const set = (changes: Partial<SetEvidence>): SetEvidence => ({
  ...sampleSet(),
  signs: [passing()],
  setFindings: [],
  intakeProblems: [],
  ...changes,
})

describe('evidence of some signs of a set', () => {
  const part = { from: 3, total: 40 }

  it('is no pass of the set, whatever these signs come to', () => {
    expect(setVerdict(set({}))).toBe('pass')
    expect(setVerdict(set({ part }))).toBe('undetermined')
  })

  it('says which signs it is of', async () => {
    const words = 'This is evidence of signs 4 to 4 of 40, in the order of the upload.'
    expect(partWords(part, [passing()])).toContain(words)
    expect(partWords(part, [])).toBe('This is evidence of none of the 40 signs of the submittal.')
    expect(setHtml(set({ part }))).toContain(words)
    expect(setJunit(set({ part }))).toContain(words)
    expect(JSON.parse(setSarif(set({ part })))).toMatchObject({ runs: [{ properties: { part } }] })
    const pieces: Uint8Array[] = []
    const parts = { documents: [], received: () => Promise.resolve([]) }
    for await (const piece of evidenceArchive(set({ part }), parts)) pieces.push(piece)
    const files = unzipSync(Buffer.concat(pieces))
    expect(strFromU8(files['README.txt'] ?? new Uint8Array())).toContain(words)
    expect(strFromU8(files['manifest.json'] ?? new Uint8Array())).toContain('"total": 40')
    expect(setHtml(set({}))).not.toContain('This is evidence of signs')
  })
})

describe('a report that was made before the last readings were added', () => {
  const WORDS = 'This report was made before the last readings or facts of the place were added'

  it.each(['queued', 'cancelled'] as const)('is told to be that in every form (%s)', (outdated) => {
    const sign = passing({ outdated })
    const evidence = set({ signs: [sign], state: outdated === 'queued' ? 'running' : 'cancelled' })
    const topics = setBcf({ ...evidence, signs: [setSign('A', { outdated })] })
    const texts = Object.values(unzipSync(topics)).map((bytes) => strFromU8(bytes))
    const { report, drawing } = sign
    const forms = {
      html: setHtml(evidence),
      junit: setJunit(evidence),
      sarif: setSarif(evidence),
      csv: setCsv(evidence),
      schedule: scheduleCsv(evidence),
      bcf: texts.join(),
      alone: report && drawing !== null ? reportHtml(report, drawing, sign) : '',
    }
    for (const [name, text] of Object.entries(forms)) expect(text, name).toContain(WORDS)
  })

  it('breaks a pipeline and an analysis', () => {
    const evidence = set({ signs: [passing({ outdated: 'cancelled' })], state: 'cancelled' })
    expect(setJunit(evidence)).toContain('<error type="outdated-report"')
    const { runs } = JSON.parse(setSarif(evidence)) as { runs: unknown[] }
    expect(runs[0]).toMatchObject({ invocations: [{ executionSuccessful: false }] })
  })

  it('is not told of one that is the last word', () => {
    const evidence = set({})
    for (const text of [setHtml(evidence), setJunit(evidence), setSarif(evidence), setCsv(evidence)])
      expect(text).not.toContain(WORDS)
  })
})

describe('what comparing the signs has shown', () => {
  it('is nothing only once they were compared', () => {
    expect(comparedWords(set({}))).toBe('Nothing was found by comparing the signs with each other.')
    for (const state of ['queued', 'running', 'cancelled'] as const)
      expect(comparedWords(set({ state }))).toBe(
        'The signs have not been compared with each other since the last change.',
      )
  })
})
