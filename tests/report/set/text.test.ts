import { describe, expect, it } from 'vitest'
import { setJson } from '../../../src/report/set/json.js'
import { setText } from '../../../src/report/set/text.js'
import { sampleSet, setSign, wordedSet } from './evidence-sample.js'
import { naughty } from './naughty.js'

/** All values of the set are invented. */

describe('a set for a terminal', () => {
  it('keeps to eighty columns', () => {
    const set = sampleSet()
    const long = { ...set, signs: [...set.signs, setSign('A mark that goes on and on '.repeat(8))] }
    for (const line of setText(long).split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80)
  })

  it('tells of every sign, of what fails with its remedy, of what is wrong with the set, and the verdict last', () => {
    const set = sampleSet()
    const text = setText(set)
    for (const { mark } of set.signs) expect(text).toContain(`${mark} (`)
    expect(text).toContain('change    Set the cell spacing to 6.9 mm')
    expect(text).toMatch(/L-19 .*NOT CHECKED\nThe drawing cannot be read\. Line 3, column 7/s)
    for (const { detail } of set.intakeProblems) expect(text).toContain(detail.slice(0, 20))
    expect(text.trimEnd().split('\n').at(-1)).toMatch(/^FAILS\. /)
  })

  it('lets no control character of a client through to the terminal', () => {
    for (const words of naughty()) expect(setText(wordedSet(words))).not.toMatch(/\p{Cc}(?<!\n)/u)
  })
})

describe('a set as JSON', () => {
  it('has the verdict of all and the whole report of each sign, and no drawing', () => {
    const set = sampleSet()
    const read = JSON.parse(setJson(set)) as { verdict: string; signs: Record<string, unknown>[]; problems: unknown }
    expect(read.verdict).toBe('fail')
    expect(read.signs.map(({ report }) => report)).toEqual(
      set.signs.map(({ report }) => JSON.parse(JSON.stringify(report)) as unknown),
    )
    expect(read.signs.map(({ problem }) => problem)).toEqual(set.signs.map(({ problem }) => problem))
    for (const sign of read.signs) expect(sign).not.toHaveProperty('drawing')
    expect(read.problems).toEqual(set.intakeProblems)
  })
})
