import { describe, expect, it } from 'vitest'
import { setJunit, type JunitOptions } from '../../../src/report/set/junit.js'
import type { SetEvidence } from '../../../src/report/set/evidence.js'
import { REQUIREMENTS, sampleSet, setSign, wordedSet } from './evidence-sample.js'
import { JUNIT_RULES } from './junit-rules.js'
import { naughty } from './naughty.js'
import { xmlFaults } from './xml-rules.js'
import { childrenOf, xmlTree, type Tree } from './xml-tree.js'

function suitesOf(set: SetEvidence, options?: JunitOptions): Tree[] {
  const root = xmlTree(setJunit(set, options))
  expect(xmlFaults(JUNIT_RULES, root)).toEqual([])
  return root.children
}

const caseOf = (suite: Tree | undefined, name: string): Tree | undefined =>
  childrenOf(suite, 'testcase').find(({ attributes }) => attributes.name === name)

/** What a case ends as; "passed" where it holds nothing. */
const endingOf = (one: Tree | undefined): string | undefined => one && (one.children[0]?.name ?? 'passed')

describe('a set as JUnit XML', () => {
  it('keeps the typed rules of the schema, which refuse what they should', () => {
    const text = setJunit(sampleSet())
    for (const [what, other] of [
      [/ tests="\d+" failures="\d+" errors="\d+" skipped/, ' skipped'],
      [/<testcase classname="[^"]*" name="[^"]*">/, '<testcase>'],
      [/<skipped/, '<ignored/><skipped'],
    ] as const) {
      expect(text).toMatch(what)
      expect(xmlFaults(JUNIT_RULES, xmlTree(text.replace(what, other))), String(what)).not.toEqual([])
    }
  })

  it('has a suite for each sign and one for the set, and a case for each requirement that applies', () => {
    const set = sampleSet()
    const suites = suitesOf(set)
    expect(suites.map(({ attributes }) => attributes.name)).toEqual([
      ...['L-17', 'L-18', 'L-19', 'L-20', 'The set as a whole: Mill Lofts'],
    ])
    const applying = set.signs[0]?.report?.findings.filter(({ verdict }) => verdict !== 'not-applicable') ?? []
    const cases = childrenOf(suites[0], 'testcase').map(({ attributes }) => attributes.name)
    expect(cases).toEqual(applying.map(({ requirement }) => requirement))
    expect(caseOf(suites[0], REQUIREMENTS.notApplicable)).toBeUndefined()
  })

  it('counts what it holds, in each suite and in all', () => {
    const root = xmlTree(setJunit(sampleSet()))
    const count = (tree: Tree, name: string): number =>
      (tree.name === name ? 1 : 0) + tree.children.reduce((sum, child) => sum + count(child, name), 0)
    for (const tree of [root, ...root.children])
      for (const [attribute, name] of [
        ['tests', 'testcase'],
        ['failures', 'failure'],
        ['errors', 'error'],
        ['skipped', 'skipped'],
      ] as const)
        if (tree.attributes[attribute] !== undefined) expect(Number(tree.attributes[attribute])).toBe(count(tree, name))
    expect(Number(root.attributes.failures)).toBe(5)
  })

  it('ends a case by what its finding comes to', () => {
    const [first] = suitesOf(sampleSet())
    const endings = Object.fromEntries(
      Object.entries(REQUIREMENTS).map(([name, requirement]) => [name, endingOf(caseOf(first, requirement))]),
    )
    expect(endings).toEqual({
      waived: 'skipped',
      lapsed: 'failure',
      failing: 'failure',
      advice: 'skipped',
      open: 'skipped',
      openWaived: 'skipped',
      passing: 'passed',
      notApplicable: undefined,
    })
    const message = caseOf(first, REQUIREMENTS.waived)?.children[0]?.attributes.message
    expect(message).toMatch(/^waived: The wall is listed; the old stroke may stay.*Letter 44/)
  })

  it('makes failures of what is undecided when asked to, and of nothing else', () => {
    const [first, ...others] = suitesOf(sampleSet(), { undetermined: 'failure' })
    expect(endingOf(caseOf(first, REQUIREMENTS.open))).toBe('failure')
    expect(endingOf(caseOf(first, REQUIREMENTS.openWaived))).toBe('skipped')
    expect(endingOf(caseOf(first, REQUIREMENTS.advice))).toBe('skipped')
    expect(endingOf(caseOf(others.at(-1), 'door-without-sign'))).toBe('failure')
  })

  it('makes errors of signs without a report and of files that could not be used', () => {
    const suites = suitesOf(sampleSet())
    const [refused, waiting, whole] = suites.slice(2)
    expect(endingOf(caseOf(refused, 'report'))).toBe('error')
    expect(caseOf(refused, 'report')?.children[0]?.attributes.message).toContain('a tag is not closed')
    expect(caseOf(waiting, 'report')?.children[0]?.attributes.message).toContain('not been checked')
    expect(endingOf(caseOf(whole, 'schedule.csv, row 6, column Height'))).toBe('error')
  })

  it('tells signs with one mark apart', () => {
    const twins = [setSign('L-17'), setSign('L-17', { id: 'sgn_other' }), setSign('')]
    const names = suitesOf({ ...sampleSet(), signs: twins }).map(({ attributes }) => attributes.name)
    expect(names.slice(0, 3)).toEqual(['L-17 (sgn_L-17)', 'L-17 (sgn_other)', '(sgn_)'])
  })

  it('holds naughty strings as text alone: no character that XML 1.0 forbids (2.2), no element of theirs', () => {
    const shape = (tree: Tree): string => `${tree.name}(${tree.children.map(shape).join()})`
    const harmless = shape(xmlTree(setJunit(wordedSet('L-17'))))
    for (const words of naughty()) {
      const text = setJunit(wordedSet(words))
      expect(text.replace(/[\t\n\r]/g, '')).not.toMatch(/\p{Cc}|\p{Cs}|\ufffe|\uffff/u)
      expect(shape(xmlTree(text)), JSON.stringify(words)).toBe(harmless)
    }
  })

  it('is the same for the same set', () => expect(setJunit(sampleSet())).toBe(setJunit(sampleSet())))
})
