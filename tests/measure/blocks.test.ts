import { describe, expect, test } from 'vitest'
import { failing, judgementOf } from '../judge/verdicts.js'
import { dots, sign, text } from './several.js'

/** Signs with several texts and several blocks of braille. Words, places and sizes are invented. */

const verdicts = (given: ReturnType<typeof sign>, ...rows: string[]) =>
  rows.map((row) => judgementOf(given, row).verdict)

// Access Board guide to chapter 7: separate blocks of text may each have their own braille
describe('texts that each have their own braille below', () => {
  test('one above the other', () => {
    const two = sign([text('PUMP', 20, 40), text('BOILER', 20, 110)], [dots('pump', 20, 60), dots('boiler', 20, 130)])
    expect(failing(two)).toEqual([])
    expect(verdicts(two, '703.2/wording', '703.3.2/below-text', '703.3.2/character-clearance')).toEqual([
      'pass',
      'pass',
      'pass',
    ])
  })

  test('a block that stands above its own text still fails', () => {
    const wrong = sign([text('PUMP', 20, 60), text('BOILER', 20, 150)], [dots('pump', 20, 10), dots('boiler', 20, 170)])
    expect(verdicts(wrong, '703.3.2/below-text')).toEqual(['fail'])
  })

  test('one of which is misspelt is a wrong wording, and no wrong place', () => {
    const wrong = sign([text('PUMP', 20, 40), text('BOILER', 20, 110)], [dots('pump', 20, 60), dots('boil', 20, 130)])
    expect(verdicts(wrong, '703.2/wording', '703.3.2/below-text')).toEqual(['fail', 'undetermined'])
  })

  // 703.3.2: 3/8 inch. By hand: dots from (20, 60) end at x = 20 + 3 × 6.9 + 2.4; the other text begins at x = 200
  test('side by side: braille is clear of text in another column', () => {
    const two = sign([text('PUMP', 20, 40), text('BOILER', 200, 90)], [dots('pump', 20, 60), dots('boiler', 200, 110)])
    expect(verdicts(two, '703.3.2/character-clearance')).toEqual(['pass'])
    expect(failing(two)).toEqual([])
  })

  test('braille to the right of characters of unknown width is open, not wrong', () => {
    const beside = sign(
      [text('PUMP', 20, 40), text('BOILER', 200, 40)],
      [dots('pump', 20, 60), dots('boiler', 200, 45)],
    )
    expect(verdicts(beside, '703.3.2/character-clearance')).toEqual(['fail'])
    const only = sign([text('PUMP', 20, 40)], [dots('pump', 150, 45)])
    expect(judgementOf(only, '703.3.2/character-clearance')).toMatchObject({
      verdict: 'undetermined',
      reason: 'missing-fact',
    })
    // "PUMP" is four strokes and three gaps wide at least: braille that begins there is under it
    const under = sign([text('PUMP', 20, 40)], [dots('pump', 30, 45)])
    expect(verdicts(under, '703.3.2/character-clearance')).toEqual(['fail'])
  })
})

describe('the order of reading', () => {
  test('texts in one row are read from the left, though their baselines differ a little', () => {
    const row = sign([text('READING ROOM', 100, 59), text('204', 20, 60)], [dots('204 reading room', 20, 90)])
    expect(verdicts(row, '703.2/wording')).toEqual(['pass'])
  })

  test('a large number beside two lines is read where it is listed', () => {
    const three = (order: number[]) => {
      const all = [
        text('204', 20, 60, { characterHeight: 40, strokeThickness: 5 }),
        text('READING', 100, 45, { characterHeight: 16 }),
        text('ROOM', 99, 70, { characterHeight: 16 }),
      ]
      return sign(
        order.map((i) => all[i] ?? {}),
        [dots('204 reading room', 20, 90)],
      )
    }
    expect(verdicts(three([0, 1, 2]), '703.2/wording')).toEqual(['pass'])
  })

  test('lines below each other are read from the top, however they are listed', () => {
    const listed = (braille: string) => sign([text('ROOM', 20, 70), text('PUMP', 20, 40)], [dots(braille, 20, 100)])
    expect(verdicts(listed('pump room'), '703.2/wording')).toEqual(['pass'])
    expect(verdicts(listed('room pump'), '703.2/wording')).toEqual(['fail'])
  })
})

// 2010 ADA Standards 703.2: raised characters are repeated in braille; nothing forbids other braille
describe('braille that repeats no raised text', () => {
  test('may stand beside braille that does', () => {
    const more = sign([text('PUMP ROOM 12', 20, 40)], [dots('pump room 12', 20, 60), dots('push to open', 20, 150)])
    expect(verdicts(more, '703.2/wording', '703.3.2/below-text')).toEqual(['pass', 'pass'])
    expect(failing(more)).toEqual([])
  })

  test('does not stand in for what is missing', () => {
    const none = sign([text('PUMP ROOM 12', 20, 40)], [dots('pump room', 20, 60), dots('push to open', 20, 80)])
    expect(verdicts(none, '703.2/wording')).toEqual(['fail'])
  })

  // 2010 ADA Standards, Table 407.4.7.1.3
  test('is the word of a control that is marked with a symbol', () => {
    const panel = sign(
      [text('2', 40, 40, { characterSpacing: undefined })],
      [dots('2', 20, 30), dots('alarm', 20, 80)],
      { use: 'elevator-car-control', pictograms: [{ meaning: 'alarm' }] },
    )
    expect(verdicts(panel, '703.2/wording', '407.4.7.1.3/control-words')).toEqual(['pass', 'pass'])
  })
})

test('more texts than are held against each other leave the wording open', () => {
  const names = Array.from({ length: 13 }, (_, i) => `ROOM ${i + 1}`)
  const texts = names.map((name, i) => text(name, 20, 40 + 60 * i))
  const inOrder = names.map((name, i) => dots(name.toLowerCase(), 20, 55 + 60 * i))
  expect(verdicts(sign(texts, inOrder), '703.2/wording')).toEqual(['pass'])
  const turned = names.map((name, i) => dots(name.toLowerCase(), 20, 55 + 60 * (12 - i)))
  expect(judgementOf(sign(texts, turned), '703.2/wording')).toMatchObject({
    verdict: 'undetermined',
    reason: 'limit-reached',
  })
})
