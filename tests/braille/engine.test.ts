import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { MAX_TEXT_CHARACTERS } from '../../src/braille/print.js'
import { TranslationError } from '../../src/braille/translator.js'
import { translator } from './translator.js'

const g1 = (text: string): string => translator().toCells(text, 'ueb-uncontracted')
const g2 = (text: string): string => translator().toCells(text, 'ueb-contracted')

describe('loading the engine', () => {
  const log = vi.spyOn(console, 'log')
  const warn = vi.spyOn(console, 'warn')
  let before: number
  beforeAll(() => {
    before = process.listenerCount('uncaughtException') + process.listenerCount('unhandledRejection')
    log.mockClear()
    warn.mockClear()
  })
  afterAll(() => vi.restoreAllMocks())

  it('keeps to itself: no handler on the process, nothing printed, the same answers and digest each time', () => {
    const first = createTranslator()
    const second = createTranslator()
    expect(first.toText('⠗⠕⠕⠍', 'ueb-contracted')).toBe('room')
    expect(second.identity).toEqual(first.identity)
    expect(process.listenerCount('uncaughtException') + process.listenerCount('unhandledRejection')).toBe(before)
    expect(log).not.toHaveBeenCalled()
    expect(warn).not.toHaveBeenCalled()
  })

  it('names itself, its tables and their digest', () => {
    expect(translator().identity).toMatchObject({
      engine: 'liblouis',
      version: '3.2.0',
      tables: { 'ueb-contracted': 'en-ueb-g2.ctb', 'ueb-uncontracted': 'en-ueb-g1.ctb' },
    })
    expect(translator().identity.digest).toMatch(/^sha256-[0-9a-f]{64}$/)
  })
})

/**
 * Outside source: the Rules, 6.5.2 (a small letter a to j after a number has the grade 1 sign; in a passage all letters are written small); the
 * texts with ABC and HIJ are those of liblouis issue 1323, which reports the defect. The room texts are invented.
 */
describe('defects of the engine that are guarded against', () => {
  it.each([
    ['ROOM 204B WEST WING', '⠠⠠⠠⠗⠕⠕⠍⠀⠼⠃⠚⠙⠰⠃⠀⠺⠑⠌⠀⠺⠬⠠⠄'],
    ['ABC 456G HIJ', '⠠⠠⠠⠁⠃⠉⠀⠼⠙⠑⠋⠰⠛⠀⠓⠊⠚⠠⠄'],
    ['ABC 4EFG HIJ', '⠠⠠⠠⠁⠃⠉⠀⠼⠙⠰⠑⠋⠛⠀⠓⠊⠚⠠⠄'],
    ['ROOM 204B', '⠠⠠⠗⠕⠕⠍⠀⠼⠃⠚⠙⠠⠃'],
  ])('grade 1 sign after a number in capitals: %s', (text, cells) => expect(g2(text)).toBe(cells))

  // Outside source: the Rules, 8.1 (capitals follow print and change no contraction) and 10.6.1 (con at the start of a word).
  it.each([
    ['CONSULTATION', '⠠⠠⠒⠎⠥⠇⠞⠁⠰⠝'],
    ["CONSULTANT'S ROOM", '⠠⠠⠒⠎⠥⠇⠞⠁⠝⠞⠄⠠⠎⠀⠠⠠⠗⠕⠕⠍'],
    ['LAUNDER', '⠠⠠⠇⠁⠥⠝⠙⠻'],
  ])('contraction in capitals: %s', (text, cells) => expect(g2(text)).toBe(cells))

  // Outside source: the Rules, 8.4.2 (SWIFT & CO. is no passage) and 8.5.1 (three or more symbols-sequences).
  it('a number does not make a passage of two words', () => {
    expect(g2('ROOM 204 B')).toBe('⠠⠠⠗⠕⠕⠍⠀⠼⠃⠚⠙⠀⠰⠠⠃')
    expect(g2('STAIR 3 UP')).toBe('⠠⠠⠌⠁⠊⠗⠀⠼⠉⠀⠠⠠⠥⠏')
  })

  // Outside source: the Rules, 6.6.1 (a numeric space separates parts of a single number).
  it('neighbouring numbers stay numbers of their own', () => expect(g2('rooms 204 206')).toBe('⠗⠕⠕⠍⠎⠀⠼⠃⠚⠙⠀⠼⠃⠚⠋'))
})

/** Invented texts; their cells follow the Rules: 6.1 and 6.5 (numbers and letters), 8.3 (capital letter), 10.4 (ing), 10.9 (first). */
describe('reading back what the engine misreads', () => {
  it.each([
    ['⠼⠃⠚⠙⠠⠁', '204A'],
    ['⠼⠃⠠⠃', '2B'],
    ['⠼⠃⠚⠙⠰⠁', '204a'],
    ['⠠⠕⠗⠡⠊⠙⠀⠠⠓⠳⠎⠑', 'Orchid House'],
    ['⠮⠁⠞⠻⠀⠰⠠⠃', 'theater B'],
    ['⠠⠇⠑⠧⠑⠇⠀⠠⠃⠼⠁', 'Level B1'],
    ['⠺⠬', 'wing'],
    ['⠋⠌⠀⠋⠇⠕⠕⠗', 'first floor'],
    ['⠠⠠⠠⠗⠕⠕⠍⠀⠼⠃⠚⠙⠰⠃⠀⠺⠑⠌⠀⠺⠬⠠⠄', 'ROOM 204B WEST WING'],
  ])('%s is %s', (cells, text) => expect(translator().toText(cells, 'ueb-contracted')).toBe(text))

  it.each(['⠗⠕⠕⠍⠀⠼⠃⠚⠙⠿⠿', '⠈⠐⠘⠈', '⠺⠁⠊⠞⠊⠝⠛', '', 'room', '⡀'])('“%s” has no contracted reading', (cells) =>
    expect(translator().toText(cells, 'ueb-contracted')).toBeUndefined(),
  )

  it('does not hang on long runs of marks', () => {
    for (const cell of '⠤⠄⠦⠲⠼⠠⠐') expect(translator().toText(cell.repeat(1500), 'ueb-contracted')).not.toBe('')
  })
})

describe('what cannot be translated', () => {
  it('names the character', () => {
    expect(() => g2('room 漢')).toThrow('“漢” (U+6F22)')
    expect(() => g2('♿')).toThrow('U+267F')
    expect(() => g2('a\u0000b')).toThrow('U+0000')
    expect(() => g2('⠗⠕⠕⠍')).toThrow('U+2817')
    expect(() => g2('\ud800')).toThrow(TranslationError)
  })

  it('has a longest text', () => {
    expect(() => g2('a'.repeat(MAX_TEXT_CHARACTERS + 1))).toThrow(TranslationError)
    expect(Array.from(g1('a'.repeat(MAX_TEXT_CHARACTERS)))).toHaveLength(MAX_TEXT_CHARACTERS)
  })

  it('refuses long runs of marks, on which the engine would run out of stack, and goes on', () => {
    for (const marks of ['"'.repeat(1500), '" '.repeat(750), "'".repeat(1500)]) {
      expect(() => createTranslator().toCells(`room ${marks}1`, 'ueb-contracted')).toThrow(TranslationError)
    }
    expect(g2('"room" '.repeat(200))).toContain('⠦⠗⠕⠕⠍⠴')
  })

  it('takes white space, composed letters and ligatures as what they are', () => {
    expect(g2('  exit\u00a0\n room ')).toBe(g2('exit room'))
    expect(g2('cafe\u0301')).toBe(g2('caf\u00e9'))
    expect(g2('o\ufb03ce')).toBe(g2('office'))
    expect(g2('   ')).toBe('')
  })
})
