import { readFileSync } from 'node:fs'
import type { Log } from 'sarif'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../src/report/finding-schema.js'
import { setBcf } from '../../../src/report/set/bcf.js'
import type { SetEvidence } from '../../../src/report/set/evidence.js'
import { setJunit } from '../../../src/report/set/junit.js'
import { OUTCOMES, outcomeOf, type Outcome } from '../../../src/report/set/outcome.js'
import { setSarif } from '../../../src/report/set/sarif.js'
import { REQUIREMENTS, sampleSet, setSign, waiver } from './evidence-sample.js'
import { unzipped } from './unzipped.js'
import { childOf, childrenOf, xmlTree } from './xml-tree.js'

/** The table of docs/evidence.md says of every outcome what the writers make of it. */

const page = readFileSync(new URL('../../../docs/evidence.md', import.meta.url), 'utf8')
const rows = new Map(
  [...page.matchAll(/^\| `([a-z-]+)` \|(.*)\|$/gm)].map(([, outcome = '', cells = '']) => [
    outcome,
    cells.split('|').map((cell) => cell.trim()),
  ]),
)

/** A set of one sign with one finding. */
function setOf(outcome: Outcome, force: Finding['force'], reason: Finding['reason']): SetEvidence {
  const sign = setSign('L-17')
  const [verdict] = outcome === 'not-applicable' ? [outcome] : (outcome.split('-') as [Finding['verdict']])
  const findings = (sign.report?.findings ?? [])
    .filter(({ requirement }) => requirement === REQUIREMENTS.lapsed)
    .map((finding): Finding => ({ ...finding, verdict, force, reason: verdict === 'undetermined' ? reason : null }))
  const waivers = outcome.endsWith('-waived') ? findings.map(({ fingerprint }) => waiver({ fingerprint })) : []
  const signs = [{ ...sign, waivers, report: sign.report && { ...sign.report, findings } }]
  for (const finding of findings) expect(outcomeOf({ ...sign, waivers }, finding)).toBe(outcome)
  return { ...sampleSet(), signs, setFindings: [], intakeProblems: [] }
}

const VARIANTS: Partial<Record<Outcome, Finding['force'][]>> = {
  'fail-advised': ['should', 'advice'],
  'undetermined-advised': ['should', 'advice'],
}

async function bcf(set: SetEvidence): Promise<string> {
  const markup = [...(await unzipped(setBcf(set)))].find(([name]) => name.endsWith('markup.bcf'))?.[1]
  return childOf(xmlTree(markup?.toString() ?? '<none/>'), 'Topic')?.attributes.TopicStatus ?? 'none'
}

function junit(set: SetEvidence, undetermined: 'skipped' | 'failure'): string {
  const [one] = childrenOf(childOf(xmlTree(setJunit(set, { undetermined })), 'testsuite'), 'testcase')
  return one ? (one.children[0]?.name ?? 'passed') : 'none'
}

const either = (found: Iterable<string>): string => [...new Set(found)].sort().join(' or ')

describe('the page on evidence', () => {
  it('has each outcome once', () => expect([...rows.keys()]).toEqual([...OUTCOMES]))

  it.each(OUTCOMES)('says what the writers make of %s', async (outcome) => {
    const forces = VARIANTS[outcome] ?? ['shall']
    const sets = forces.flatMap((force) =>
      (['missing-fact', 'needs-judgement'] as const).map((reason) => setOf(outcome, force, reason)),
    )
    const results = sets.map((set) => (JSON.parse(setSarif(set)) as Log).runs[0]?.results?.[0])
    const usual = either(sets.map((set) => junit(set, 'skipped')))
    const asked = either(sets.map((set) => junit(set, 'failure')))
    expect(rows.get(outcome)).toEqual([
      either(await Promise.all(sets.map(bcf))),
      usual === asked ? usual : `${usual}, or ${asked} when asked`,
      either(results.map((result) => result?.kind ?? '')),
      either(results.map((result) => result?.level ?? '')),
      either(results.map((result) => (result?.suppressions?.length ? 'yes' : 'no'))),
    ])
  })
})
