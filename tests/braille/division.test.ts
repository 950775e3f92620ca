import { describe, expect, it } from 'vitest'
import { breakLines, joinDivided } from '../../src/braille/layout.js'
import { check } from '../../src/check.js'
import { translator } from './translator.js'

/**
 * Outside source: Rules of Unified English Braille 2013, section 10.13: a hyphenated word that is divided at its hyphen keeps its form, but
 * for a sequence of lower signs only. The words are ours.
 */

const SPACING = { dotSpacing: 2.4, cellSpacing: 6.9, lineSpacing: 10.1 }
/** Width of so many cells. */
const room = (cells: number) => (cells - 1) * SPACING.cellSpacing + SPACING.dotSpacing
const cellsOf = (text: string) => translator().toCells(text, 'ueb-contracted')
const broken = (text: string, cells: number) => breakLines(cellsOf(text), room(cells), SPACING)

describe('a word that is wider than a line', () => {
  it('is divided at its hyphen and keeps its form', () => {
    expect(cellsOf('self-service')).toBe('⠎⠑⠇⠋⠤⠎⠻⠧⠊⠉⠑')
    expect(broken('self-service', 8)).toEqual({ lines: ['⠎⠑⠇⠋⠤', '⠎⠻⠧⠊⠉⠑'], tooWide: [] })
  })

  it('stays whole where it fits, on a line of its own', () => {
    expect(broken('a self-service', 11)).toEqual({ lines: ['⠁', '⠎⠑⠇⠋⠤⠎⠻⠧⠊⠉⠑'], tooWide: [] })
  })

  it('is not divided where nothing but lower signs would stand alone', () => {
    // in is ⠔, which has lower dots only.
    expect(cellsOf('sit-in')).toBe('⠎⠊⠞⠤⠔')
    expect(broken('sit-in', 4)).toEqual({ lines: ['⠎⠊⠞⠤⠔'], tooWide: ['⠎⠊⠞⠤⠔'] })
  })

  it('is not divided between syllables', () => {
    expect(broken('laboratory', 5).tooWide).toHaveLength(1)
  })

  it('is not divided at a dash or a minus sign, which have the same last cell', () => {
    for (const text of ['kiln\u2013room', 'kiln\u2014room']) expect(broken(text, 5).lines).toHaveLength(1)
    expect(breakLines('⠁⠐⠤⠃⠃⠃⠃', room(3), SPACING).lines).toHaveLength(1)
  })

  it('has each further piece beside the one before as long as there is room', () => {
    const cells = cellsOf('walk-in-and-out-room')
    const { lines, tooWide } = breakLines(cells, room(9), SPACING)
    expect(tooWide).toEqual([])
    expect(joinDivided(lines)).toBe(cells)
    for (const line of lines) expect(Array.from(line).length).toBeLessThanOrEqual(9)
  })
})

describe('a check', () => {
  const wording = (lines: string[], text = 'SELF-SERVICE') =>
    check(
      {
        sign: { use: 'permanent-room', lettering: [{ text }], braille: [{ lines }] },
        standards: ['us-ada-2010'],
        options: { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
      },
      translator(),
    ).findings.find(({ requirement }) => requirement === 'us-ada-2010/703.2/wording')?.verdict

  it('takes a word that is divided at its hyphen for the word', () => {
    expect(wording(['self-', 'service'])).toBe('pass')
    expect(wording(['self-service'])).toBe('pass')
  })

  it('takes a blank in the middle of a line for a blank, and any other division for what it is', () => {
    expect(wording(['self- service'])).toBe('fail')
    expect(wording(['self', 'service'])).toBe('fail')
    expect(wording(['self', '-service'])).toBe('fail')
    expect(wording(['self-', 'portrait'])).toBe('fail')
  })

  it('still reads a text whose words do end in a hyphen', () => {
    expect(wording(['mid-', 'and late years'], 'MID- AND LATE YEARS')).toBe('pass')
  })
})
