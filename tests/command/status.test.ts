import { describe, expect, it } from 'vitest'
import { statusOf } from '../../src/command/status.js'
import type { Report } from '../../src/report/schema.js'
import type { SetEvidence } from '../../src/report/set/evidence.js'
import { sampleSet, setSign, unchecked } from '../report/set/evidence-sample.js'

/** The statuses are ours, as docs/clients.md tells them; those from 64 on are of sysexits.h (4.3BSD). All sets are invented. */

type Verdicts = Partial<Report['stages']> & { verdict: Report['verdict'] }

function signOf({ verdict, ...stages }: Verdicts) {
  const sign = setSign(`${verdict}-${JSON.stringify(stages)}`)
  const { report } = sign
  if (!report) throw new Error('the sample has a report')
  return { ...sign, waivers: [], report: { ...report, verdict, stages: { ...report.stages, ...stages } } }
}

const setOf = (verdicts: Verdicts[], changes: Partial<SetEvidence> = {}): SetEvidence => ({
  ...sampleSet(),
  signs: verdicts.map(signOf),
  setFindings: [],
  intakeProblems: [],
  ...changes,
})

const [pass, fail, open, none] = (['pass', 'fail', 'undetermined', 'not-applicable'] as const).map((verdict) =>
  signOf({ verdict }),
)
const problem = { file: 'a.csv', row: 3, column: null, detail: 'Row 3 cannot be used.' }
const statuses = (evidence: SetEvidence) => [
  statusOf(evidence, { undetermined: 'fail' }),
  statusOf(evidence, { undetermined: 'pass' }),
]

describe('the exit status', () => {
  it.each<[string, SetEvidence['signs'], Partial<SetEvidence>, [number, number]]>([
    ['all pass', [pass, pass], {}, [0, 0]],
    ['some pass, to the others nothing applies', [pass, none], {}, [0, 0]],
    ['nothing applies at all', [none], {}, [2, 0]],
    ['one is not decided', [pass, open], {}, [2, 0]],
    [
      'something is found about the set',
      [pass],
      { setFindings: [{ kind: 'same-mark', marks: [], message: '' }] },
      [2, 0],
    ],
    ['one could not be checked', [pass, unchecked('L-19', null)], {}, [3, 3]],
    ['a row could not be used', [pass, open], { intakeProblems: [problem] }, [3, 3]],
    ['there is no sign', [], {}, [3, 3]],
    ['one fails', [pass, open, fail], {}, [1, 1]],
    [
      'one fails and another could not be checked',
      [fail, unchecked('L-19', null)],
      { intakeProblems: [problem] },
      [1, 1],
    ],
  ])('%s', (_, signs, changes, expected) => {
    expect(statuses({ ...setOf([]), signs, ...changes })).toEqual(expected)
  })

  it('is that of one stage where one is named', () => {
    const drawn = setOf([
      { verdict: 'undetermined', drawing: 'pass', product: 'undetermined' },
      { verdict: 'fail', drawing: 'pass', product: 'fail' },
    ])
    expect(statusOf(drawn, { undetermined: 'fail', stage: 'drawing' })).toBe(0)
    expect(statusOf(drawn, { undetermined: 'fail', stage: 'product' })).toBe(1)
    expect(statusOf(drawn, { undetermined: 'fail' })).toBe(1)
    const open = setOf([
      { verdict: 'undetermined', site: 'undetermined' },
      { verdict: 'pass', site: 'pass' },
    ])
    expect(statusOf(open, { undetermined: 'fail', stage: 'site' })).toBe(2)
    expect(statusOf({ ...drawn, intakeProblems: [problem] }, { undetermined: 'pass', stage: 'drawing' })).toBe(3)
  })
})
