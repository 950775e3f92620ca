import { describe, expect, it } from 'vitest'
import { compareCells } from '../../src/braille/compare.js'
import { translator } from './translator.js'

/**
 * Outside source: The Rules of Unified English Braille, 2nd edition 2013 (International Council on English Braille), the examples
 * printed in the sections named, without their typeforms.
 */
const EXAMPLES: readonly (readonly [section: string, print: string, cells: string])[] = [
  ['8.3.1', '20B', '⠼⠃⠚⠠⠃'],
  ['8.3.1', 'B.C.', '⠠⠃⠲⠠⠉⠲'],
  ['8.3.1', 'Hush. Keep Quiet!', '⠠⠓⠥⠩⠲⠀⠠⠅⠑⠑⠏⠀⠠⠟⠥⠊⠑⠞⠖'],
  ['8.3.1', 'C. O. Linkletter', '⠰⠠⠉⠲⠀⠠⠕⠲⠀⠠⠇⠔⠅⠇⠑⠞⠞⠻'],
  ['8.3.2', 'Father Edmond Anderson', '⠠⠐⠋⠀⠠⠫⠍⠕⠝⠙⠀⠠⠯⠻⠎⠕⠝'],
  ['8.3.2', 'His name is Thomas.', '⠠⠦⠀⠐⠝⠀⠊⠎⠀⠠⠹⠕⠍⠁⠎⠲'],
  ['8.4.2', 'PARLIAMENT', '⠠⠠⠏⠜⠇⠊⠁⠰⠞'],
  ['8.4.2', 'ANGLO-SAXON', '⠠⠠⠁⠝⠛⠇⠕⠤⠠⠠⠎⠁⠭⠕⠝'],
  ['8.4.2', 'McGRAW-HILL', '⠠⠍⠉⠠⠠⠛⠗⠁⠺⠤⠠⠠⠓⠊⠇⠇'],
  ['8.4.2', "DON'T", '⠠⠠⠙⠕⠝⠄⠠⠞'],
  ['8.4.2', "O'SULLIVAN", '⠠⠕⠄⠠⠠⠎⠥⠇⠇⠊⠧⠁⠝'],
  ['8.4.2', 'I/O', '⠠⠊⠸⠌⠠⠕'],
  ['8.4.2', 'B&B', '⠠⠃⠈⠯⠠⠃'],
  ['8.4.2', 'SWIFT & CO.', '⠠⠠⠎⠺⠊⠋⠞⠀⠈⠯⠀⠠⠠⠉⠕⠲'],
  ['8.5.3', 'Please KEEP OFF THE GRASS in this area.', '⠠⠏⠇⠂⠎⠑⠀⠠⠠⠠⠅⠑⠑⠏⠀⠷⠋⠀⠮⠀⠛⠗⠁⠎⠎⠠⠄⠀⠔⠀⠹⠀⠜⠑⠁⠲'],
  ['8.5.3', 'THE BBC AFRICA NEWS', '⠠⠠⠠⠮⠀⠃⠃⠉⠀⠁⠋⠗⠊⠉⠁⠀⠝⠑⠺⠎⠠⠄'],
  ['8.5.3', 'FOR SALE: 1975 FIREBIRD', '⠠⠠⠠⠿⠀⠎⠁⠇⠑⠒⠀⠼⠁⠊⠛⠑⠀⠋⠊⠗⠑⠃⠊⠗⠙⠠⠄'],
  ['8.5.3', 'A SELF-MADE MAN', '⠠⠠⠠⠁⠀⠎⠑⠇⠋⠤⠍⠁⠙⠑⠀⠍⠁⠝⠠⠄'],
  ['8.5.3', 'A.A. (ALAN ALEXANDER) MILNE', '⠠⠠⠠⠁⠲⠁⠲⠀⠐⠣⠁⠇⠁⠝⠀⠁⠇⠑⠭⠯⠻⠐⠜⠀⠍⠊⠇⠝⠑⠠⠄'],
  ['8.6.2', 'ABCs', '⠠⠠⠁⠃⠉⠠⠄⠎'],
  ['8.6.2', 'WALKing', '⠠⠠⠺⠁⠇⠅⠠⠄⠬'],
  ['8.6.2', 'unSELFish', '⠥⠝⠠⠠⠎⠑⠇⠋⠠⠄⠊⠩'],
  ['8.6.2', "The two CEOs met in our CEO's office.", '⠠⠮⠀⠞⠺⠕⠀⠠⠠⠉⠑⠕⠠⠄⠎⠀⠍⠑⠞⠀⠔⠀⠳⠗⠀⠠⠠⠉⠑⠕⠄⠎⠀⠷⠋⠊⠉⠑⠲'],
  ['8.7.1', 'CD', '⠰⠠⠠⠉⠙'],
  ['8.7.1', 'AC SMITH', '⠰⠠⠠⠁⠉⠀⠠⠠⠎⠍⠊⠹'],
  ['8.7.1', 'Unified English Braille (UEB)', '⠠⠥⠝⠊⠋⠊⠫⠀⠠⠢⠛⠇⠊⠩⠀⠠⠃⠗⠇⠀⠐⠣⠠⠠⠥⠑⠃⠐⠜'],
  ['6.2.1', '62', '⠼⠋⠃'],
  ['6.2.1', '3,500', '⠼⠉⠂⠑⠚⠚'],
  ['6.2.1', '8.93', '⠼⠓⠲⠊⠉'],
  ['6.3.1', '7:30 a.m.', '⠼⠛⠒⠼⠉⠚⠀⠁⠲⠍⠲'],
  ['6.3.1', '9-10', '⠼⠊⠤⠼⠁⠚'],
  ['6.3.1', 'on call 24/7', '⠕⠝⠀⠉⠁⠇⠇⠀⠼⠃⠙⠸⠌⠼⠛'],
  ['6.5.2', '32', '⠼⠉⠃'],
  ['6.5.2', '3b', '⠼⠉⠰⠃'],
  ['6.5.2', '3B', '⠼⠉⠠⠃'],
  ['6.5.2', '3m', '⠼⠉⠍'],
  ['6.5.2', '4.B', '⠼⠙⠲⠠⠃'],
  ['6.5.3', 'houses4lease', '⠓⠳⠎⠑⠎⠼⠙⠇⠑⠁⠎⠑'],
  ['6.5.4', 'There are 3 beds in this 4-bed ward.', '⠠⠐⠮⠀⠜⠑⠀⠼⠉⠀⠃⠫⠎⠀⠔⠀⠹⠀⠼⠙⠤⠃⠫⠀⠺⠜⠙⠲'],
  ['6.5.4', '3-D', '⠼⠉⠤⠰⠠⠙'],
  ['6.5.4', '20yr period', '⠼⠃⠚⠽⠗⠀⠏⠻⠊⠕⠙'],
  ['6.7.1', '2nd', '⠼⠃⠝⠙'],
  ['6.7.1', '$8.75', '⠈⠎⠼⠓⠲⠛⠑'],
  ['6.7.1', '(416) 486-2500', '⠐⠣⠼⠙⠁⠋⠐⠜⠀⠼⠙⠓⠋⠤⠼⠃⠑⠚⠚'],
  ['5.2.1', 'Mrs X and Mr O', '⠠⠍⠗⠎⠀⠰⠠⠭⠀⠯⠀⠠⠍⠗⠀⠠⠕'],
  ['5.2.1', '22b 22B 22p', '⠼⠃⠃⠰⠃⠀⠼⠃⠃⠠⠃⠀⠼⠃⠃⠏'],
  ['5.6.1', '1st', '⠼⠁⠎⠞'],
  ['5.7.1', 'B-team', '⠰⠠⠃⠤⠞⠂⠍'],
  ['5.7.1', 'Sections (h) and (i).', '⠠⠎⠑⠉⠰⠝⠎⠀⠐⠣⠰⠓⠐⠜⠀⠯⠀⠐⠣⠊⠐⠜⠲'],
  ['5.8.1', 'T-SHIRTS FOR SALE', '⠰⠠⠠⠠⠞⠤⠩⠊⠗⠞⠎⠀⠿⠀⠎⠁⠇⠑⠠⠄'],
  ['10.1.1', 'Knowledge is power.', '⠠⠅⠀⠊⠎⠀⠏⠪⠻⠲'],
  ['10.1.1', 'people', '⠏'],
  ['10.1.2', "people's", '⠏⠄⠎'],
  ['10.2.1', 'Which CHILD-PROOF lock?', '⠠⠱⠀⠠⠠⠡⠤⠠⠠⠏⠗⠕⠷⠀⠇⠕⠉⠅⠦'],
  ['10.2.1', '(This way out!)', '⠐⠣⠠⠹⠀⠺⠁⠽⠀⠳⠖⠐⠜'],
  ['10.3.1', 'theatre', '⠮⠁⠞⠗⠑'],
  ['10.3.1', 'lofty', '⠇⠷⠞⠽'],
  ['10.3.1', 'comfort', '⠉⠕⠍⠿⠞'],
  ['10.3.1', 'northeast', '⠝⠕⠗⠹⠂⠌'],
  ['10.4.1', 'laugh', '⠇⠁⠥⠣'],
  ['10.4.1', 'whistle', '⠱⠊⠌⠇⠑'],
  ['10.4.1', 'thorough', '⠹⠕⠗⠳⠣'],
  ['10.4.3', 'sting', '⠌⠬'],
  ['10.4.3', 'ingot', '⠔⠛⠕⠞'],
  ['10.5.1', 'Be good.', '⠠⠆⠀⠛⠙⠲'],
  ['10.5.2', 'Buy meat (enough for 2).', '⠠⠃⠥⠽⠀⠍⠂⠞⠀⠐⠣⠢⠀⠿⠀⠼⠃⠐⠜⠲'],
  ['10.5.3', 'In or out?', '⠠⠔⠀⠕⠗⠀⠳⠦'],
  ['10.6.1', 'control', '⠒⠞⠗⠕⠇'],
  ['10.6.1', 'disco', '⠲⠉⠕'],
  ['10.6.5', 'beat', '⠃⠂⠞'],
  ['10.6.5', 'account', '⠁⠒⠨⠞'],
  ['10.6.5', 'Sheffield', '⠠⠩⠑⠖⠊⠑⠇⠙'],
  ['10.6.5', 'rabbi', '⠗⠁⠆⠊'],
  ['10.6.8', 'engine', '⠢⠛⠔⠑'],
]

describe('the Rules of Unified English Braille', () => {
  it.each(EXAMPLES)('section %s: %s', (_section, print, cells) => {
    expect(translator().toCells(print, 'ueb-contracted')).toBe(cells)
    expect(translator().toText(cells, 'ueb-contracted')).toBe(print)
    expect(compareCells(cells, print.toUpperCase(), translator()).grades).toContain('ueb-contracted')
  })
})
