import { describe, expect, test } from 'vitest'
import { TranslationError, type Translator } from '../../src/braille/translator.js'
import { cellsOf, isSurplus, pair, TOO_MANY, tryPair, type Pair } from '../../src/measure/pairing.js'
import type { Sign } from '../../src/sign/sign.js'
import { dots, sign, text } from './several.js'
import { translator } from './signs.js'

/**
 * Which blocks repeat which texts. That each text may have braille of its own, and other braille may stand beside, is the Access Board's guide
 * to chapter 7 and 2010 ADA Standards 703.2; which of several ways is taken is told in pairing.ts. Words and places are invented values.
 */

const below = (words: string[]) => words.map((word, i) => dots(word, 20, 10 + 15 * i))
const lines = (words: string[]) => words.map((word, i) => text(word, 220, 20 + 30 * i))

function pairs(of: Sign): Pair[] {
  const found = pair(of, translator)
  if (!Array.isArray(found)) throw new Error('there are no pairs')
  return found
}
/** For each pair its texts and the numbers of its blocks; all of them say the same. */
function said(texts: string[], blocks: string[]) {
  const found = pairs(sign(lines(texts), below(blocks)))
  for (const { grades } of found) expect(grades).not.toEqual([])
  return found.map((one) => [one.print, ...one.blocks.map(({ n }) => n)])
}

describe('blocks and texts in the order of reading', () => {
  test('go together in runs: several blocks may say one text, one block several texts', () => {
    expect(said(['PUMP ROOM', '12'], ['pump', 'room', '12'])).toEqual([
      ['PUMP ROOM', 0, 1],
      ['12', 2],
    ])
    expect(said(['PUMP', 'ROOM', '12'], ['pump room', '12'])).toEqual([
      ['PUMP ROOM', 0],
      ['12', 1],
    ])
  })

  test('come before pairs of one each in any order, where no block is left over', () => {
    expect(said(['PUMP ROOM', 'PUMP', 'ROOM'], ['pump', 'room', 'pump room'])).toEqual([
      ['PUMP ROOM', 0, 1],
      ['PUMP ROOM', 2],
    ])
  })

  test('leave as few blocks over as possible', () => {
    expect(said(['PUMP ROOM', 'BOILER DOOR'], ['pump room', 'pump', 'room', 'boiler', 'door'])).toEqual([
      ['PUMP ROOM', 1, 2],
      ['BOILER DOOR', 3, 4],
    ])
  })

  test('are in as many pairs as possible where as many blocks are left over', () => {
    const blocks = ['pump room', 'pump', 'room', 'pump room', 'boiler', 'door']
    expect(said(['PUMP', 'ROOM', 'PUMP ROOM', 'BOILER DOOR'], blocks)).toEqual([
      ['PUMP', 1],
      ['ROOM', 2],
      ['PUMP ROOM', 3],
      ['BOILER DOOR', 4, 5],
    ])
  })

  test('are counted in words, whatever blanks stand around them', () => {
    // by hand, letter by letter (Rules of Unified English Braille 2013, 4.1): ⠏⠥⠍⠏ pump
    const padded = sign(lines(['PUMP ROOM', '12']), below(['⠀⠏⠥⠍⠏⠀', 'room', '12']))
    expect(pairs(padded)).toHaveLength(2)
    const plain = sign(lines(['PUMP ROOM', '12']), below(['pump', 'room', '12']))
    const lettering = plain.lettering.map((one) => ({
      ...one,
      text: { ...one.text, ...('value' in one.text && { value: ` ${one.text.value} ` }) },
    }))
    expect(pairs({ ...plain, lettering })).toHaveLength(2)
  })
})

describe('blocks in another order than the texts', () => {
  test('are paired one with one', () => {
    expect(said(['PUMP', 'BOILER', 'DOOR'], ['boiler', 'door', 'pump'])).toEqual([
      ['PUMP', 2],
      ['BOILER', 0],
      ['DOOR', 1],
    ])
  })

  test('are, where this leaves fewer over than the order of reading', () => {
    expect(said(['PUMP', 'ROOM'], ['pump room', 'room', 'pump'])).toEqual([
      ['PUMP', 2],
      ['ROOM', 1],
    ])
  })

  test('serve one text each: a text that stands twice needs two', () => {
    const [only, ...more] = pairs(sign(lines(['PUMP', 'PUMP']), below(['pump', 'room'])))
    expect([only?.grades, more]).toEqual([[], []])
  })
})

// the number is the project's own: MOST_TRIED_APART
describe('blocks or texts that are more than are tried one by one', () => {
  const words = Array.from({ length: 13 }, (_, i) => `ROOM ${i + 1}`)
  const turned = words.map((word) => word.toLowerCase()).reverse()
  const at = (x: number) => (word: string, i: number) => (x < 200 ? dots(word, x, 10 + 15 * i) : text(word, x, 30 * i))
  const of = (texts: number, blocks: number) =>
    pair(sign(words.slice(0, texts).map(at(220)), turned.slice(-blocks).map(at(20))), translator)

  test('are not paired, be it the blocks, the texts or both', () => {
    expect(of(12, 12)).toHaveLength(12)
    expect(of(13, 13)).toBe(TOO_MANY)
    expect(of(13, 12)).toBe(TOO_MANY)
    expect(of(12, 13)).toBe(TOO_MANY)
  })
})

describe('blocks side by side', () => {
  // a cell is two dot spacings of 2.4 mm high: less apart than 4.8 mm is one row (reading-order.ts)
  const besides = (apart: number) =>
    pairs(sign([text('204 PUMP', 20, 40)], [dots('pump', 100, 90), dots('204', 20, 90 + apart)]))

  test('are read from the left where they are less than a cell apart in height', () => {
    expect(besides(4.7)).toMatchObject([
      { grades: ['ueb-contracted', 'ueb-uncontracted'], blocks: [{ n: 1 }, { n: 0 }] },
    ])
  })

  test('are read from the top where they are further apart', () => {
    expect(besides(4.9)).toMatchObject([{ grades: [], blocks: [{ n: 0 }, { n: 1 }] }])
  })
})

describe('braille that does not say the text', () => {
  test('is told in the order of reading, however it is listed', () => {
    const wrong = sign([text('ROOM', 220, 60), text('PUMP', 220, 30)], [dots('⠗⠕⠕', 20, 60), dots('⠏⠥⠍', 20, 30)])
    expect(pairs(wrong)).toMatchObject([{ grades: [], cells: '⠏⠥⠍⠀⠗⠕⠕', print: 'PUMP ROOM' }])
  })

  test('is never surplus, and makes no other block so', () => {
    const right = sign([text('PUMP', 220, 30)], below(['pump', 'boiler']))
    expect([0, 1].map((n) => isSurplus(pairs(right), n))).toEqual([false, true])
    const [said] = pairs(right)
    if (!said) throw new Error('there is no pair')
    const wrong: Pair = { ...said, grades: [] }
    expect([0, 1].map((n) => isSurplus([wrong], n))).toEqual([false, false])
    expect(isSurplus([said, wrong], 1)).toBe(false)
  })
})

// Rules of Unified English Braille 2013, 10.13: a word is divided at its hyphen, which it keeps. Cells by hand, letter by letter (4.1).
describe('a line that ends in a hyphen', () => {
  const whole = (print: string, ...cells: string[]) =>
    pairs(sign([text(print, 220, 30)], [dots('', 20, 60, { text: undefined, lines: cells, lineSpacing: 10 })]))

  test('goes on without a blank where the text does', () => {
    const both = ['ueb-contracted', 'ueb-uncontracted']
    expect(whole('TOP-UP', '⠞⠕⠏⠤', '⠥⠏')).toMatchObject([{ grades: both, cells: '⠞⠕⠏⠤⠥⠏' }])
  })

  test('goes on with a blank where the text has one', () => {
    const cells = '⠏⠗⠑⠤⠀⠁⠝⠙⠀⠏⠕⠎⠞'
    expect(whole('PRE- AND POST', '⠏⠗⠑⠤', '⠁⠝⠙⠀⠏⠕⠎⠞')).toMatchObject([{ grades: ['ueb-uncontracted'], cells }])
  })

  test('is told as it stands where the braille says something else', () => {
    expect(whole('TOP-UP', '⠞⠕⠏⠤', '⠥⠞')).toMatchObject([{ grades: [], cells: '⠞⠕⠏⠤⠀⠥⠞' }])
  })
})

// contract of the service: what was not read is open
describe('nothing is paired', () => {
  const read = sign(lines(['PUMP', 'ROOM']), below(['pump', 'room']))
  const unread = { unknown: 'unreadable' as const, why: 'the dots are blurred' }

  test('where a block or a text is unread, even beside others that are read', () => {
    const [first, second] = read.braille
    const [pump, room] = read.lettering
    if (!first || !second || !pump || !room) throw new Error('the sign has two of each')
    const blurred = { ...second, lines: second.lines.map((line) => ({ ...line, cells: unread })) }
    expect(pair({ ...read, braille: [first, blurred] }, translator)).toBeUndefined()
    expect(pair({ ...read, lettering: [pump, { ...room, text: unread }] }, translator)).toBeUndefined()
    const [line] = second.lines
    if (!line) throw new Error('the block has a line')
    expect(cellsOf({ ...second, lines: [line, { ...line, cells: unread }] })).toBeUndefined()
  })

  test('where one of the two is not there, or a block has no cells', () => {
    expect(pair({ ...read, braille: [] }, translator)).toBeUndefined()
    expect(pair({ ...read, lettering: [] }, translator)).toBeUndefined()
    const bare = read.braille.map((block) => ({ ...block, lines: [] }))
    expect(bare.map(cellsOf)).toEqual([undefined, undefined])
    expect(pair({ ...read, braille: bare }, translator)).toBeUndefined()
  })

  test('where a text cannot be translated, which is told; any other error is not taken for that', () => {
    const failing = (error: Error): Translator => ({
      ...translator,
      toCells: () => {
        throw error
      },
    })
    const untranslatable = new TranslationError('no braille for this')
    expect(tryPair(read, failing(untranslatable))).toBe(untranslatable)
    expect(() => tryPair(read, failing(new RangeError('a fault of ours')))).toThrow(RangeError)
  })
})
