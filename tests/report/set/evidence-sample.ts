import { reportSvg } from '../../../src/report/svg.js'
import type { SetEvidence, SetSign, SetWaiver } from '../../../src/report/set/evidence.js'
import type { Report } from '../../../src/report/schema.js'
import { sampleReport, sampleSign } from '../sample.js'

/** An invented submittal: two signs with reports, of which the first has waivers, one that was refused, one not checked yet. */

export const REQUIREMENTS = {
  waived: 'us-ada-2010/703.2.6/stroke-thickness',
  lapsed: 'us-ada-2010/703.3.1/cell-spacing',
  failing: 'us-ada-2010/703.5.1/finish',
  advice: 'us-ada-2010/A4.30.5/contrast-advice',
  open: 'us-ada-2010/703.2.1/relief',
  openWaived: 'us-ada-2010/703.3.1/dot-height',
  passing: 'us-ada-2010/703.3.1/dot-spacing',
  notApplicable: 'us-ada-2010/703.2.7/border-clearance',
}

export const fingerprintOf = (report: Report, requirement: string): string =>
  report.findings.find((finding) => finding.requirement === requirement)?.fingerprint ?? ''

export const waiver = (changes: Partial<SetWaiver>): SetWaiver => ({
  fingerprint: '',
  reason: 'The wall is listed; the old stroke may stay',
  author: 'R. Ortega',
  at: '2026-03-02T09:30:00.000Z',
  authority: 'Letter 44',
  expires: null,
  standing: 'in-force',
  ...changes,
})

export function setSign(mark: string, changes: Partial<SetSign> = {}): SetSign {
  const sign = sampleSign({ mark })
  const report = sampleReport(sign)
  return {
    id: `sgn_${mark}`,
    mark,
    location: 'Loft 17',
    door: 'D-17',
    files: ['schedule.csv', `set.zip/${mark}.svg`],
    report,
    drawing: reportSvg(report, sign),
    problem: null,
    waivers: [],
    notes: [],
    measurements: [],
    ...changes,
  }
}

export const unchecked = (mark: string, problem: SetSign['problem']): SetSign => ({
  ...setSign(mark),
  report: null,
  drawing: null,
  problem,
})

export function sampleSet(): SetEvidence {
  const first = setSign('L-17')
  const of = (requirement: string) => (first.report ? fingerprintOf(first.report, requirement) : '')
  return {
    id: 'sub_1',
    name: 'Mill Lofts',
    standards: ['us-ada-2010'],
    state: 'done',
    createdAt: '2026-03-01T08:00:00.000Z',
    asOf: '2026-03-03T16:45:10.250Z',
    signs: [
      {
        ...first,
        waivers: [
          waiver({ fingerprint: of(REQUIREMENTS.waived) }),
          waiver({ fingerprint: of(REQUIREMENTS.lapsed), standing: 'expired', expires: '2026-03-02' }),
          waiver({ fingerprint: of(REQUIREMENTS.openWaived), reason: 'Measured by the inspector' }),
          waiver({ fingerprint: 'nobody', standing: 'unused' }),
        ],
      },
      setSign('L-18'),
      unchecked('L-19', { title: 'The drawing cannot be read', detail: 'Line 3, column 7: a tag is not closed.' }),
      unchecked('L-20', null),
    ],
    setFindings: [{ kind: 'door-without-sign', marks: [], message: 'Door D-21 is listed and has no sign.' }],
    intakeProblems: [{ file: 'schedule.csv', row: 6, column: 'Height', detail: '“two” is not a number.' }],
    history: { events: 9, head: 'sha256-44' },
  }
}

const PLAIN = sampleSet()

/** The set with a client's words in every place that takes some. */
export function wordedSet(words: string): SetEvidence {
  const mine = { mark: words, location: words, door: words, files: [words, `${words}.svg`] }
  const signs = PLAIN.signs.map((sign) => ({
    ...sign,
    ...(sign.id === 'sgn_L-17' && { ...mine, report: sign.report && { ...sign.report, mark: words } }),
    waivers: sign.waivers.map((one) => ({ ...one, reason: words, author: words, authority: words })),
    notes: [{ text: words, author: words, at: PLAIN.asOf }],
    problem: sign.problem && { title: words, detail: words },
  }))
  return {
    ...PLAIN,
    name: words,
    signs,
    setFindings: [{ kind: 'same-mark', marks: [words], message: words }],
    intakeProblems: [{ file: words, row: 2, column: words, detail: words }],
  }
}
