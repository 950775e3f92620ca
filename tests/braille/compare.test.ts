import { describe, expect, it } from 'vitest'
import { compareCells, gradesOf, readingOf } from '../../src/braille/compare.js'
import { TranslationError } from '../../src/braille/translator.js'
import { translator } from './translator.js'

const compare = (cells: string, print: string) => compareCells(cells, print, translator())

/** Cells and lettering of our own test drawings, whose truth was checked by rendering them; translations by the Rules of UEB. */
describe('cells against the lettering above them', () => {
  it.each([
    ['⠮⠁⠞⠻⠀⠰⠠⠃', 'THEATER B'],
    ['⠮⠁⠞⠻⠀⠰⠃', 'THEATER B'],
    ['⠠⠕⠗⠡⠊⠙⠀⠠⠓⠳⠎⠑', 'ORCHID\nHOUSE'],
    ['⠠⠠⠗⠕⠕⠍⠀⠼⠃⠁⠙', 'ROOM 214'],
    ['⠓⠐⠕⠽⠀⠗⠕⠕⠍', 'HONEY ROOM'],
    ['⠇⠁⠝⠞⠻⠝⠀⠇⠷⠞', 'LANTERN LOFT'],
    ['⠙⠕⠉⠅⠀⠼⠉', ' Dock  3 '],
    ['⠼⠃⠚⠙⠠⠁', '204A'],
    ['⠼⠃⠚⠙⠰⠁', '204A'],
    ['⠠⠍⠉⠠⠙⠕⠝⠁⠇⠙⠀⠓⠁⠇⠇', 'MCDONALD HALL'],
    ['⠺⠕⠍⠢⠄⠎', 'WOMEN’S'],
    ['⠗⠕⠕⠍⠎⠀⠼⠁⠤⠼⠓', 'ROOMS 1–8'],
    ['⠗⠕⠕⠍⠎⠀⠼⠁⠠⠤⠼⠓', 'ROOMS 1–8'],
    ['⠗⠕⠕⠍⠎⠀⠼⠁⠐⠃', 'ROOMS 1 2'],
  ])('%s says %s', (cells, print) => {
    expect(compare(cells, print)).toMatchObject({ saysTheSame: true })
    expect(compare(cells, print).grades).toContain('ueb-contracted')
  })

  it.each([
    ['⠏⠗⠔⠞⠀⠩⠕⠏', 'MAP ROOM'],
    ['⠇⠕⠕⠍⠀⠼⠃⠁⠙', 'ROOM 214'],
    ['⠮⠁⠞⠻⠀⠠⠃', 'THEATER B'],
    ['⠼⠃⠚⠙⠁', '204A'],
    ['⠼⠃⠚⠙⠀⠠⠁', '204A'],
    ['⠗⠕⠕⠍', 'ROOM 214'],
    ['⠗⠕⠕⠍⠀⠼⠃⠁⠙⠀⠼⠃⠁⠙', 'ROOM 214'],
    ['⠼⠃⠁⠙⠀⠗⠕⠕⠍', 'ROOM 214'],
    ['', 'ROOM'],
    ['⠗⠕⠕⠍', ''],
    ['', ''],
  ])('%s does not say %s', (cells, print) => {
    expect(compare(cells, print)).toMatchObject({ saysTheSame: false, grades: [] })
  })

  it('tells the grade, and both when a text has no contraction', () => {
    expect(compare('⠺⠁⠊⠞⠊⠝⠛⠀⠗⠕⠕⠍', 'WAITING ROOM').grades).toEqual(['ueb-uncontracted'])
    expect(compare('⠺⠁⠊⠞⠬⠀⠗⠕⠕⠍', 'WAITING ROOM').grades).toEqual(['ueb-contracted'])
    expect(compare('⠑⠭⠊⠞', 'EXIT').grades).toEqual(['ueb-contracted', 'ueb-uncontracted'])
    expect(compare('⠺⠁⠊⠞⠬⠀⠗⠕⠕⠍⠀⠊⠝', 'WAITING ROOM IN').grades).toEqual([])
  })

  // Not by the Rules' passage sign, but each word is right: capital signs aside it says the same.
  it('reads capitalised words that are not gathered into a passage', () => {
    expect(compare('⠠⠠⠗⠕⠕⠍⠀⠠⠠⠺⠑⠌⠀⠠⠠⠺⠬', 'ROOM WEST WING').grades).toEqual(['ueb-contracted'])
    expect(readingOf('⠠⠠⠗⠕⠕⠍⠀⠠⠠⠺⠑⠌⠀⠠⠠⠺⠬', 'ueb-contracted', translator())).toBe('ROOM WEST WING')
  })

  // A passage is written as in lower case (Rules of UEB, 8.4); a capital sign more in it, for the A of 100A, changes no letter.
  it('reads a passage that has a capital sign too many', () => {
    const cells = '⠠⠠⠠⠥⠎⠃⠀⠼⠁⠚⠚⠠⠁⠀⠰⠃⠀⠁⠼⠁⠚⠠⠄'
    expect(readingOf(cells, 'ueb-contracted', translator())).toBe('USB 100A B A10')
    expect(compare(cells, 'USB 100A B A10').grades).toEqual(['ueb-contracted'])
    expect(compare(cells, 'USB 100E B A10').grades).toEqual([])
  })

  // One dot apart: knowledge as a wordsign of contracted braille, the capital letter of uncontracted braille.
  it('tells by the grade what cells say that mean two things', () => {
    expect(compare('⠠⠅', 'K').grades).toEqual(['ueb-uncontracted'])
    expect(compare('⠠⠅', 'KNOWLEDGE').grades).toEqual(['ueb-contracted'])
    expect(compare('⠰⠅', 'K').grades).toEqual(['ueb-contracted'])
  })

  it('expects small letters but for single ones under lettering in capitals, else the capitals of the cells', () => {
    expect(compare('⠗⠕⠕⠍', 'THEATER B').expected).toEqual({
      'ueb-contracted': '⠮⠁⠞⠻⠀⠰⠠⠃',
      'ueb-uncontracted': '⠞⠓⠑⠁⠞⠑⠗⠀⠠⠃',
    })
    expect(compare('⠠⠕⠗⠡⠊⠙', 'ORCHID').expected).toEqual({ 'ueb-contracted': '⠠⠕⠗⠡⠊⠙', 'ueb-uncontracted': '⠠⠕⠗⠉⠓⠊⠙' })
  })

  it('refuses lettering that has no braille', () => expect(() => compare('⠗⠕⠕⠍', '漢')).toThrow(TranslationError))
})

describe('the grade of cells that nobody explains', () => {
  it.each([
    ['⠺⠁⠊⠞⠊⠝⠛⠀⠗⠕⠕⠍', ['ueb-uncontracted']],
    ['⠺⠁⠊⠞⠬⠀⠗⠕⠕⠍', ['ueb-contracted']],
    ['⠑⠭⠊⠞', ['ueb-contracted', 'ueb-uncontracted']],
    ['⠗⠂⠙⠬⠀⠗⠕⠕⠍⠀⠼⠃⠚⠙', ['ueb-contracted']],
    ['⠗⠂⠙', ['ueb-contracted']],
    ['⠈⠐⠘⠈', undefined],
    ['⠀⠀', undefined],
    ['', undefined],
  ])('%s: %j', (cells, grades) => expect(gradesOf(cells, translator())).toEqual(grades))
})
