import fc from 'fast-check'
import { parseStringSync } from 'gcode-parser'
import { describe, expect, it } from 'vitest'
import { planDots } from '../../../src/make/dot-plan/plan.js'
import type { DotPlan } from '../../../src/make/dot-plan/schema.js'
import { readProgram } from '../../../src/make/gcode/read.js'
import { programOf, type ProgramOptions } from '../../../src/make/gcode/write.js'
import { DOT, HEAD, MACHINE, picture, points } from '../dot-plan/pictures.js'

/** What is written is read back as the same dots, by our reader and by an independent one (npm gcode-parser). */

const plan = (dots: readonly [number, number][], head: object = HEAD, cartridge = 1000): DotPlan =>
  planDots(
    { dots: points(dots), of: 'points' },
    { head: { ...HEAD, ...head }, machine: MACHINE, dot: DOT, cartridge: { dots: cartridge } },
  )

const REAL: ProgramOptions = { variant: 'real', units: 'mm', moves: 'cycles' }
const bytes = (text: string) => new TextEncoder().encode(text)

/** Half of the last digit that is written: a tenth of a micrometre, a hundred-thousandth of an inch (25.4 mm by definition). */
const LAST_DIGIT = { mm: 0.00005, in: 0.000005 * 25.4 }

const FORMS: ProgramOptions[] = (['mm', 'in'] as const).flatMap((units) =>
  (['cycles', 'plain'] as const).flatMap((moves) =>
    (['real', 'dry-run'] as const).map((variant) => ({ units, moves, variant })),
  ),
)
const APPROACH = { approach: { angle: 30, length: 4, height: 1 } }

const expectSame = (read: readonly { x: number; y: number }[], written: DotPlan, units: 'mm' | 'in') => {
  expect(read.length).toBe(written.dots)
  read.forEach(({ x, y }, k) => {
    expect(Math.abs(x - written.sequence[k][0])).toBeLessThanOrEqual(LAST_DIGIT[units] + 1e-9)
    expect(Math.abs(y - written.sequence[k][1])).toBeLessThanOrEqual(LAST_DIGIT[units] + 1e-9)
  })
}

describe('a program', () => {
  it.each(FORMS)('in $units, $moves, $variant, is read back as the same dots', (form) => {
    for (const written of [plan(picture(80)), plan(picture(80), APPROACH), plan(picture(80), {}, 30)])
      expectSame(readProgram(bytes(programOf(written, form))).dots, written, form.units)
  })

  it('of any dots is read back as the same dots', () => {
    const place = fc.double({ min: -900, max: 900, noNaN: true })
    const dots = fc.uniqueArray(fc.tuple(place, place), { minLength: 1, maxLength: 20, selector: String })
    fc.assert(
      fc.property(dots, fc.constantFrom(...FORMS), (list, form) => {
        const written = plan(list)
        expectSame(readProgram(bytes(programOf(written, form))).dots, written, form.units)
      }),
      { numRuns: 40 },
    )
  })
})

/** Words of a program by the independent reader, in its order. */
const wordsOf = (program: string): [string, number][][] =>
  parseStringSync(program).map(({ words }) => words.filter(([letter]) => letter !== 'N'))

describe('an independent reader', () => {
  it.each([REAL, { ...REAL, units: 'in' as const }])('finds one place for each dot in the cycles ($units)', (form) => {
    const written = plan(picture(60), {}, 25)
    const scale = form.units === 'in' ? 25.4 : 1
    const places: { x: number; y: number }[] = []
    let isOn = false
    for (const words of wordsOf(programOf(written, form))) {
      const has = (letter: string, value: number) => words.some(([l, v]) => l === letter && v === value)
      if (has('G', 82)) isOn = true
      if (has('G', 80)) isOn = false
      const value = (letter: string) => words.find(([l]) => l === letter)?.[1] ?? NaN
      if (isOn) places.push({ x: value('X') * scale, y: -value('Y') * scale })
    }
    expectSame(places, written, form.units)
  })

  it('finds only words that ISO 6983-1 knows for drilling, and absolute places', () => {
    const known = new Set(['G', 'M', 'X', 'Y', 'Z', 'R', 'P', 'F'])
    for (const form of FORMS) {
      const all = wordsOf(programOf(plan(picture(30), APPROACH), form)).flat()
      expect([...new Set(all.map(([letter]) => letter))].filter((letter) => !known.has(letter))).toEqual([])
      expect(all.some(([letter, value]) => letter === 'G' && value === 90)).toBe(true)
      expect(all.some(([letter, value]) => letter === 'G' && value === 91)).toBe(false)
      expect(all.filter(([letter, value]) => letter === 'M' && [3, 4].includes(value))).toEqual([])
    }
  })

  it('finds no dry run below the lift, and the real one at the depth of the dots', () => {
    const heights = (form: ProgramOptions) =>
      wordsOf(programOf(plan(picture(30), APPROACH), form))
        .flat()
        .flatMap(([letter, value]) => (letter === 'Z' ? [value] : []))
    expect(Math.min(...heights({ ...REAL, variant: 'dry-run' }))).toBe(HEAD.lift)
    expect(Math.min(...heights(REAL))).toBe(HEAD.lift - HEAD.plunge)
    expect(Math.max(...heights(REAL))).toBe(HEAD.lift)
  })
})

describe('the head of a program', () => {
  it('says the cautions and the zero, in ASCII and in lines that controls take', () => {
    const text = programOf(plan(picture(30), {}, 10), REAL)
    const comments = text.split('\n').filter((line) => line.startsWith('('))
    const said = comments.map((line) => line.slice(1, -1)).join(' ')
    for (const word of [
      'guard',
      'spindle switched off and locked',
      'eye and skin',
      'Ventilate',
      'trial on scrap',
      'sheets of the makers',
      'top left|place from which',
    ])
      expect(said).toMatch(new RegExp(word))
    expect(text).toMatch(/^[\x20-\x7e\n]*$/)
    expect(Math.max(...comments.map((line) => line.length))).toBeLessThanOrEqual(80)
    expect(text.match(/^M0$/gm)).toHaveLength(2)
  })

  it('begins with the spindle off', () => {
    const lines = programOf(plan(picture(5)), REAL).split('\n')
    expect(lines.indexOf('M5')).toBeGreaterThan(0)
    expect(lines.indexOf('M5')).toBeLessThan(lines.findIndex((line) => /^G\d+ .*X/.test(line)))
  })
})
