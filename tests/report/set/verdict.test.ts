import { describe, expect, it } from 'vitest'
import type { ReportVerdict } from '../../../src/report/finding-schema.js'
import type { SetEvidence, SetSign } from '../../../src/report/set/evidence.js'
import { ownCaveats, sharedCaveats } from '../../../src/report/set/shared-caveats.js'
import { countWords, setCounts, setVerdict, standardsHeld, tally } from '../../../src/report/set/verdict.js'
import { sampleSet, setSign, unchecked } from './evidence-sample.js'

/** All values are invented. */

function sign(verdict: ReportVerdict): SetSign {
  const made = setSign('A')
  return { ...made, report: made.report && { ...made.report, verdict } }
}
const set = (signs: SetSign[], changes: Partial<SetEvidence> = {}): SetEvidence => ({
  ...sampleSet(),
  setFindings: [],
  intakeProblems: [],
  signs,
  ...changes,
})

describe('the verdict of a set', () => {
  it('is the heaviest of its signs', () => {
    expect(setVerdict(set([sign('pass'), sign('not-applicable')]))).toBe('pass')
    expect(setVerdict(set([sign('pass'), sign('undetermined')]))).toBe('undetermined')
    expect(setVerdict(set([sign('undetermined'), sign('fail'), sign('pass')]))).toBe('fail')
    expect(setVerdict(set([sign('not-applicable')]))).toBe('not-applicable')
  })

  it('is never a pass while something is open about the set itself', () => {
    const open: SetEvidence[] = [
      set([sign('pass'), unchecked('B', null)]),
      set([sign('pass')], { state: 'running' }),
      set([sign('pass')], { state: 'cancelled' }),
      set([sign('pass')], { setFindings: sampleSet().setFindings }),
      set([sign('pass')], { intakeProblems: sampleSet().intakeProblems }),
      set([]),
    ]
    for (const one of open) expect(setVerdict(one)).toBe('undetermined')
  })

  it('takes no notice of waivers', () => {
    const [waived] = sampleSet().signs
    expect(waived && setVerdict(set([waived]))).toBe('fail')
    expect(waived && tally(waived)).toEqual({ fails: 3, open: 4, waived: 2 })
  })

  it('is told with every sign counted', () => {
    const { signs } = sampleSet()
    const counts = setCounts([...signs, sign('pass')])
    expect(Object.values<number>({ ...counts }).reduce((sum, one) => sum + one, 0)).toBe(5)
    expect(countWords(counts)).toBe('2 signs fail, 1 sign passes, 2 signs have no report.')
    expect(countWords(setCounts([]))).toBe('There is no sign in it.')
  })
})

describe('what the reports of a set share', () => {
  it('names each revision of a standard once', () => {
    const older = setSign('B')
    const revised = older.report && {
      ...older.report,
      standards: older.report.standards.map((one) => ({ ...one, revision: 7, digest: 'sha256-77' })),
    }
    const held = standardsHeld([setSign('A'), setSign('A'), { ...older, report: revised }])
    expect(held.map(({ standard, counts }) => [standard.revision, counts.fail])).toEqual([
      [1, 2],
      [7, 1],
    ])
  })

  it('says each caveat once for all or with its sign, and loses none', () => {
    const exit = setSign('B')
    const special = { ...exit, report: exit.report && { ...exit.report, caveats: [...exit.report.caveats, 'Exit.'] } }
    const signs = [setSign('A'), special]
    const shared = sharedCaveats(signs)
    for (const one of signs)
      for (const caveat of one.report?.caveats ?? []) expect([...shared, ...ownCaveats(one, shared)]).toContain(caveat)
    expect(ownCaveats(special, shared)).toEqual(['Exit.'])
    expect(sharedCaveats([])).toContain('This report is not a certification and not legal advice.')
  })
})
