import { describe, expect, it } from 'vitest'
import { translator } from './translator.js'

const g2 = (text: string): string => translator().toCells(text, 'ueb-contracted')

/**
 * Outside source: 2010 ADA Standards, Table 407.4.7.1.3 (control button identification) gives the braille of these words as cells;
 * their numbers of cells are what a contracted translation must have.
 */
describe('words of ADA Table 407.4.7.1.3', () => {
  it.each([
    ['stop', 3],
    ['alarm', 4],
    ['open', 3],
    ['close', 5],
    ['main', 3],
    ['phone', 4],
  ])('%s has %d cells', (word, cells) => {
    expect(Array.from(g2(word))).toHaveLength(cells)
  })
})

/** Outside source: The Rules of Unified English Braille, 2nd edition 2013, section 10 and Appendix 1 (list of shortforms). */
describe('contractions of the Rules, section 10', () => {
  it.each([
    [
      '10.1 alphabetic wordsigns',
      'but can do every from go have just knowledge like more not people quite rather so that us very will it you as',
      '⠃⠉⠙⠑⠋⠛⠓⠚⠅⠇⠍⠝⠏⠟⠗⠎⠞⠥⠧⠺⠭⠽⠵',
    ],
    ['10.2 strong wordsigns', 'child shall this which out still', '⠡⠩⠹⠱⠳⠌'],
    ['10.3 strong contractions', 'and for of the with', '⠯⠿⠷⠮⠾'],
    ['10.5 lower wordsigns', 'be enough were his in was', '⠆⠢⠶⠦⠔⠴'],
  ])('%s', (_section, words, cells) => {
    expect(words.split(' ').map(g2)).toEqual(Array.from(cells))
    expect(Array.from(cells).map((cell) => translator().toText(cell, 'ueb-contracted'))).toEqual(words.split(' '))
  })

  it.each([
    ['ch', 'church', '⠡⠥⠗⠡'],
    ['gh', 'night', '⠝⠊⠣⠞'],
    ['sh', 'shower', '⠩⠪⠻'],
    ['th', 'bath', '⠃⠁⠹'],
    ['wh', 'wheel', '⠱⠑⠑⠇'],
    ['ed', 'bed', '⠃⠫'],
    ['er', 'supper', '⠎⠥⠏⠏⠻'],
    ['ou', 'lounge', '⠇⠳⠝⠛⠑'],
    ['ow', 'tower', '⠞⠪⠻'],
    ['st', 'storage', '⠌⠕⠗⠁⠛⠑'],
    ['ar', 'garden', '⠛⠜⠙⠢'],
    ['ing', 'parking', '⠏⠜⠅⠬'],
    ['ea', 'meat', '⠍⠂⠞'],
    ['con', 'conference', '⠒⠋⠻⠰⠑'],
    ['dis', 'display', '⠲⠏⠇⠁⠽'],
    ['tion', 'station', '⠌⠁⠰⠝'],
    ['ment', 'basement', '⠃⠁⠎⠑⠰⠞'],
    ['ance', 'entrance', '⠢⠞⠗⠨⠑'],
    ['mother', 'mother', '⠐⠍'],
    ['work', 'workshop', '⠐⠺⠩⠕⠏'],
    ['shortform', 'first', '⠋⠌'],
    ['shortform', 'children', '⠡⠝'],
  ])('%s in %s', (_contraction, word, cells) => {
    expect(g2(word)).toBe(cells)
    expect(translator().toText(cells, 'ueb-contracted')).toBe(word)
  })
})
