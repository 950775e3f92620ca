import { createRequire } from 'node:module'
import Ajv from 'ajv-draft-04'
import addFormats from 'ajv-formats'
import type { Log, Result, Run } from 'sarif'
import { describe, expect, it } from 'vitest'
import type { SetEvidence } from '../../../src/report/set/evidence.js'
import { setSarif } from '../../../src/report/set/sarif.js'
import { REQUIREMENTS, sampleSet, setSign, wordedSet } from './evidence-sample.js'
import { naughty } from './naughty.js'

/** The published schema of SARIF 2.1.0 (rtm.5), as in tests/report/sarif.test.ts. Sections are those of the OASIS Standard. */
const schema = createRequire(import.meta.url)('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json') as object
const validate = addFormats
  .default(new Ajv.default({ strict: false, allErrors: true, unicodeRegExp: false }))
  .compile(schema)

function runOf(set: SetEvidence, base?: string): Run {
  const log = JSON.parse(setSarif(set, base === undefined ? {} : { base })) as Log
  expect(validate(log), JSON.stringify(validate.errors)).toBe(true)
  expect(log.runs).toHaveLength(1)
  return log.runs[0]
}

const resultOf = (run: Run, sign: string, requirement: string): Result | undefined =>
  run.results?.find((result) => result.ruleId === requirement && result.properties?.sign === sign)

describe('a set as SARIF 2.1.0', () => {
  it('has each row as a rule once, and a result for each finding of each sign', () => {
    const set = sampleSet()
    const run = runOf(set)
    const rules = run.tool.driver.rules ?? []
    const findings = set.signs.flatMap(({ report }) => report?.findings ?? [])
    expect(rules.map(({ id }) => id)).toEqual([...new Set(findings.map(({ requirement }) => requirement))])
    expect(run.results?.map(({ ruleId }) => ruleId)).toEqual(findings.map(({ requirement }) => requirement))
    for (const result of run.results ?? []) expect(rules[result.ruleIndex ?? -1]?.id).toBe(result.ruleId)
  })

  it('suppresses what was waived, and says of every other result that it is not (3.27.23: all or none)', () => {
    const run = runOf(sampleSet())
    for (const { suppressions } of run.results ?? []) expect(suppressions).toBeInstanceOf(Array)
    const waived = resultOf(run, 'sgn_L-17', REQUIREMENTS.waived)
    expect(waived).toMatchObject({
      kind: 'fail',
      level: 'error',
      suppressions: [{ kind: 'external', status: 'accepted' }],
    })
    expect(waived?.suppressions?.[0]?.justification).toContain('Letter 44')
    expect(resultOf(run, 'sgn_L-17', REQUIREMENTS.openWaived)?.suppressions).toHaveLength(1)
    expect(resultOf(run, 'sgn_L-17', REQUIREMENTS.lapsed)?.suppressions).toEqual([])
    expect(run.results?.filter(({ suppressions }) => suppressions?.length)).toHaveLength(2)
  })

  it('gives each drawing an artifact, to which the results of its sign point', () => {
    const run = runOf(sampleSet())
    expect(run.artifacts?.map(({ location }) => location?.uri)).toEqual(['set.zip/L-17.svg', 'set.zip/L-18.svg'])
    for (const sign of ['L-17', 'L-18']) {
      const place = resultOf(run, `sgn_${sign}`, REQUIREMENTS.lapsed)?.locations?.[0]?.physicalLocation
        ?.artifactLocation
      expect(place?.uri).toBe(`set.zip/${sign}.svg`)
      expect(run.artifacts?.[place?.index ?? -1]?.location?.uri).toBe(place?.uri)
    }
  })

  /** Code scanning of GitHub refuses a whole log for one result without a file: github/codeql-action, issues 1738 and 2459. */
  it('gives every place of every result a file, the drawing or what else the sign came from', () => {
    const described = setSign('L-21', { files: ['schedule.csv'] })
    const run = runOf({ ...sampleSet(), signs: [setSign('L-17'), described] })
    expect(run.artifacts?.map(({ location }) => location?.uri)).toEqual(['set.zip/L-17.svg', 'schedule.csv'])
    for (const { locations, properties } of run.results ?? []) {
      expect(locations?.length).toBeGreaterThan(0)
      for (const { physicalLocation } of locations ?? [])
        expect(physicalLocation?.artifactLocation?.uri).toBe(
          properties?.sign === 'sgn_L-21' ? 'schedule.csv' : 'set.zip/L-17.svg',
        )
    }
  })

  it('has only what fails as results where that is asked for, and still says what every sign comes to', () => {
    const all = runOf(sampleSet())
    const log = JSON.parse(setSarif(sampleSet(), { results: 'failing' })) as Log
    expect(validate(log), JSON.stringify(validate.errors)).toBe(true)
    const [run] = log.runs
    expect(run?.results).toEqual(all.results?.filter(({ kind }) => kind === 'fail'))
    expect(run?.results?.length).toBeGreaterThan(0)
    expect(run?.properties).toEqual(all.properties)
    expect(run?.invocations).toEqual(all.invocations)
  })

  it('names the sign in each message and tells signs with one mark apart', () => {
    const run = runOf({ ...sampleSet(), signs: [setSign('L-17'), setSign('L-17', { id: 'sgn_other' })] })
    for (const { message } of run.results ?? []) expect(message.text).toMatch(/^L-17: /)
    const fingerprints = run.results?.map(({ partialFingerprints }) => JSON.stringify(partialFingerprints)) ?? []
    expect(new Set(fingerprints).size).toBe(fingerprints.length)
  })

  it('says that the run was not successful where a sign has no report, and names it and what could not be used', () => {
    const [invocation] = runOf(sampleSet()).invocations ?? []
    expect(invocation?.executionSuccessful).toBe(false)
    const errors = invocation?.toolExecutionNotifications?.filter(({ level }) => level === 'error') ?? []
    expect(errors.map(({ message }) => message.text)).toEqual([
      'L-19: The drawing cannot be read. Line 3, column 7: a tag is not closed.',
      'L-20: This sign has not been checked yet.',
      'schedule.csv, row 6, column Height: “two” is not a number.',
    ])
    const whole = { ...sampleSet(), signs: [setSign('L-17')], intakeProblems: [] }
    expect(runOf(whole).invocations?.[0]?.executionSuccessful).toBe(true)
  })

  it('has addresses of rules only where it is told its own (3.49.12: absolute)', () => {
    for (const rule of runOf(sampleSet()).tool.driver.rules ?? []) expect(rule.helpUri).toBeUndefined()
    for (const rule of runOf(sampleSet(), 'https://signs.example').tool.driver.rules ?? [])
      expect(rule.helpUri).toBe('https://signs.example/v1/standards/us-ada-2010')
  })

  it('says in no rule what may differ from sign to sign', () => {
    for (const rule of runOf(sampleSet()).tool.driver.rules ?? [])
      expect(Object.keys(rule.properties ?? {})).toEqual(['clause', 'force', 'stage', 'quantity'])
  })

  it('holds naughty strings as text: relative addresses that lead nowhere else, no placeholder, no link', () => {
    for (const words of naughty()) {
      const run = runOf(wordedSet(words))
      for (const { location } of run.artifacts ?? []) {
        const uri = location?.uri ?? ''
        expect(new URL(uri, 'https://signs.example/a/').href, JSON.stringify(words)).toMatch(
          /^https:\/\/signs\.example\/a\//,
        )
      }
    }
  })
})
