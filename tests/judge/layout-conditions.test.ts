import { describe, expect, test } from 'vitest'
import { tactileWords } from '../../src/judge/layout-conditions.js'
import { conditionMet, conditionsMet } from '../../src/judge/scope.js'
import type { Condition } from '../../src/judge/types.js'
import { missing } from '../../src/sign/sign.js'
import { PUMP_ROOM, signOf, TWO_SETS } from '../measure/signs.js'

/** Conditions on what is on a sign, at its doors and on its two sets of characters. The signs are invented. */

type Json = Record<string, unknown>
type Verdict = boolean | 'open'

const said = (part: string, ...lines: string[]): Json => ({
  ...(PUMP_ROOM.lettering as Json[])[0],
  part,
  text: lines.join(' '),
  lines,
  ...(lines.length < 2 && { baselineSpacing: undefined }),
})
const words = (count: number): string[] => [Array.from({ length: count }, () => 'PUMP').join(' ')]
const braille = (...carriers: (string | undefined)[]): Json => ({
  braille: carriers.map((carrier, i) => ({
    ...(PUMP_ROOM.braille as Json[])[0],
    carrier,
    origin: { x: 20, y: 90 + 30 * i },
  })),
})
const readings = (...quantities: string[]): Json => ({
  measured: quantities.map((quantity) => ({ quantity, values: [0.8], unit: 'ratio' })),
})
const UNREAD: Json = { 'lettering.0.text': undefined, 'lettering.0.lines': undefined }
const NONE_RAISED: Json = { lettering: [said('visual', 'PUMP', 'ROOM')] }
const STATION: Json = { use: 'transit-station', installation: undefined }

const CASES: [Condition, Json, Verdict][] = [
  ['one-tactile-line', { lettering: [said('both', 'PUMPS')] }, true],
  ['one-tactile-line', { lettering: [said('both', 'PUMPS'), said('raised', '12')] }, false],
  ['one-tactile-line', { lettering: [said('both', 'PUMPS'), said('visual', '12')] }, true],
  ['one-tactile-line', NONE_RAISED, false],
  ['several-tactile-lines', { lettering: [said('both', 'PUMPS'), said('raised', '12')] }, true],
  ['several-tactile-lines', { lettering: [said('both', 'PUMPS')] }, false],
  ['several-tactile-lines', NONE_RAISED, false],
  ['one-word', { lettering: [said('both', 'PUMPS')] }, true],
  ['one-word', { lettering: [said('both', 'PUMPS'), said('raised', '12')] }, false],
  ['one-word', NONE_RAISED, false],
  ['one-word', UNREAD, 'open'],
  // Braille Literacy Canada, as ICEB reports it: a sentence of ten words or fewer is short
  ['english-over-ten-words', { lettering: [said('both', ...words(10))] }, false],
  ['english-over-ten-words', { lettering: [said('both', ...words(11))] }, true],
  ['english-over-ten-words', { lettering: [said('both', ...words(6)), said('raised', ...words(5))] }, true],
  ['english-over-ten-words', { lettering: [said('both', 'PUMP  ROOM')] }, false],
  // Korean Braille Regulations, general rule 7: rows of their own for PVC and for stainless steel
  ['carrier-pvc', braille('pvc', 'pvc'), true],
  ['carrier-pvc', braille('pvc', 'paper'), false],
  ['carrier-pvc', braille('paper'), false],
  ['carrier-pvc', { braille: [] }, false],
  ['carrier-not-pvc', braille('pvc', 'pvc'), false],
  ['carrier-not-pvc', braille('pvc', 'paper'), 'open'],
  ['carrier-not-pvc', braille('paper', 'sticker'), true],
  ['carrier-not-pvc', braille(undefined), true],
  ['carrier-not-pvc', braille('paper', 'stainless-steel'), 'open'],
  ['carrier-not-pvc', { braille: [] }, true],
  ['border-gives-contrast', {}, false],
  [
    'border-gives-contrast',
    { borders: [{ box: { x: 1, y: 1, width: 258, height: 148 }, width: 6, raised: false }] },
    'open',
  ],
  // The contrast of a row is that of its own formula: readings by others, or of other things, are none of it
  ['character-contrast-measured', readings('contrast.lighterReflectance', 'contrast.charactersByMichelson'), true],
  ['character-contrast-measured', readings('contrast.pictogramByMichelson'), false],
  ['character-contrast-measured', {}, false],
  ['pictogram-contrast-measured', readings('contrast.pictogramByMichelson'), true],
  ['pictogram-contrast-measured', readings('contrast.charactersByMichelson'), false],
  ['door-symbol', { pictograms: [{ meaning: 'toilet' }, { meaning: 'toilet', shape: 'triangle' }] }, true],
  ['door-symbol', { pictograms: [{ meaning: 'toilet' }] }, false],
  ['triangle-alone', { pictograms: [{ meaning: 'toilet' }, { meaning: 'toilet', shape: 'triangle' }] }, true],
  ['triangle-alone', { pictograms: [{ meaning: 'toilet', shape: 'circle' }] }, false],
  // Any word on the door of a station's sign tells that it is at a door
  ['at-a-door', STATION, 'open'],
  ['at-a-door', { use: 'transit-station', installation: { side: 'latch' } }, true],
  ['at-a-door', { use: 'transit-station', installation: { door: { leafWidth: 900 } } }, true],
  ['at-a-door', { use: 'transit-station', installation: { door: { swing: 'away' } } }, true],
  ['at-a-door', { use: 'transit-station', installation: { door: { swing: 'none' } } }, false],
  ['no-wall-at-latch', { 'installation.door.wallAtLatch': false }, true],
  ['no-wall-at-latch', { 'installation.door.wallAtLatch': true }, false],
  ['no-wall-at-latch', {}, 'open'],
  // 2010 ADA Standards 703.6 is of pictograms that designate permanent rooms and spaces
  ['pictogram-designates-room', {}, true],
  ['pictogram-designates-room', { pictograms: [{ meaning: 'no smoking' }, { meaning: 'restroom' }] }, true],
  ['pictogram-designates-room', { pictograms: [{ meaning: 'no smoking' }, { meaning: 'accessible pump' }] }, 'open'],
  ['pictogram-designates-room', { pictograms: [{ meaning: 'no smoking' }] }, false],
  ['elevator-car-control', { use: 'elevator-car-control' }, true],
  ['destination-oriented-elevator', { use: 'elevator-landing' }, 'open'],
  ['destination-oriented-elevator', {}, false],
  ['main-entry-level', { use: 'elevator-landing' }, 'open'],
  ['main-entry-level', {}, false],
  ['platform-space-limited', {}, false],
]

describe('a condition', () => {
  test.each(CASES)('%s, %j: %s', (condition, values, expected) => {
    expect(conditionMet(condition, signOf(PUMP_ROOM, values)).met).toBe(expected)
  })

  test.each([
    ['at-a-door', STATION, '/sign/installation/side', ['latch', 'hinge']],
    ['no-wall-at-latch', {}, '/sign/installation/door/wallAtLatch', ['true', 'false']],
  ] as const)('%s asks for what the client can say', (condition, values, pointer, choices) => {
    const met = conditionMet(condition, signOf(PUMP_ROOM, values))
    expect(met).toMatchObject({
      met: 'open',
      gap: { reason: 'missing-fact', places: [{ element: 'installation' }], ask: { pointer } },
    })
    if (met.met === 'open') expect(met.gap.ask?.choices).toEqual(expect.arrayContaining([...choices]))
  })

  test.each(['one-tactile-line', 'several-tactile-lines', 'one-word'] as const)(
    '%s is not met for want of raised characters where there are none',
    (condition) => {
      expect(conditionMet(condition, signOf(PUMP_ROOM, NONE_RAISED))).toEqual({
        met: false,
        because: 'The sign has no raised characters.',
      })
    },
  )

  test('that a person decides names the place', () => {
    expect(conditionMet('suspended-overhead', signOf(PUMP_ROOM))).toMatchObject({
      gap: { reason: 'needs-judgement', places: [{ element: 'panel' }] },
    })
    expect(
      conditionMet(
        'pictogram-designates-room',
        signOf(PUMP_ROOM, { pictograms: [{ meaning: 'no smoking' }, { meaning: 'accessible pump' }] }),
      ),
    ).toMatchObject({ gap: { places: [{ element: 'pictogram/1' }] } })
  })

  test('of several: what is not met, else what is open, else all are met', () => {
    const sign = signOf(PUMP_ROOM)
    const met = (...conditions: Condition[]) => conditionsMet(conditions, sign).met
    expect(met()).toBe(true)
    expect(met('at-a-door')).toBe(true)
    expect(met('at-a-door', 'suspended-overhead')).toBe('open')
    expect(met('suspended-overhead', 'at-a-door', 'one-word')).toBe(false)
  })
})

describe('the words of a sign', () => {
  test('are those of all characters for touch', () => {
    expect(tactileWords(signOf(PUMP_ROOM))).toBe(3)
    expect(tactileWords(signOf(TWO_SETS))).toBe(3)
    expect(tactileWords(signOf(PUMP_ROOM, NONE_RAISED))).toBe(0)
  })

  test('are not counted where one set was not read', () => {
    expect(tactileWords(signOf(PUMP_ROOM, { lettering: [said('both', 'PUMPS'), said('both', 'ROOM')] }))).toBe(2)
    const half = signOf(PUMP_ROOM, { lettering: [said('both', 'PUMPS'), { part: 'raised', characterHeight: 20 }] })
    expect(tactileWords(half)).toBeUndefined()
  })
})

// 2010 ADA Standards 703.2.5, Exception: characters whose text is given apart for sight
describe('a set of its own for sight', () => {
  const met = (values: Json, n?: number) => conditionMet('separate-visual-set', signOf(TWO_SETS, values), n)

  test('has the same words, however they are written', () => {
    expect(met({}).met).toBe(true)
    expect(met({ 'lettering.0.text': '  pump   ROOM 12 ', 'lettering.0.lines': undefined }).met).toBe(true)
    // The Unicode Standard, SpecialCasing: the capital form of ß is SS
    const street = {
      'lettering.0.text': 'Pumpstraße',
      'lettering.0.lines': ['Pumpstraße'],
      'lettering.1.text': 'PUMPSTRASSE',
      'lettering.1.lines': ['PUMPSTRASSE'],
    }
    expect(met(street).met).toBe(true)
    expect(met({ 'lettering.0.text': 'Pump Room', 'lettering.0.lines': ['Pump Room'] }).met).toBe('open')
    expect(met({ 'lettering.0.text': 'PumpRoom 12', 'lettering.0.lines': ['PumpRoom 12'] }).met).toBe('open')
  })

  test('is not told of characters that were not read', () => {
    const sign = signOf(TWO_SETS)
    const unread = { ...sign, lettering: sign.lettering.map((l) => ({ ...l, text: missing() })) }
    expect(conditionMet('separate-visual-set', unread).met).toBe('open')
  })

  test('is none of characters that serve both, nor where nothing is raised', () => {
    expect(met({ lettering: [said('visual', 'PUMPS')] }).met).toBe(false)
    expect(met({ lettering: [said('both', 'PUMPS')] }).met).toBe(false)
    expect(met({ lettering: [said('both', 'PUMPS'), said('visual', 'Pumps')] }).met).toBe(false)
  })

  test('of some of the characters only, is open for all and decided for each', () => {
    const some = { lettering: [said('raised', 'PUMPS'), said('visual', 'Pumps'), said('both', 'ROOM')] }
    expect(met(some).met).toBe('open')
    expect([met(some, 0).met, met(some, 2).met]).toEqual([true, false])
    const unsure = { lettering: [said('raised', 'PUMPS'), said('visual', 'Pumps'), said('raised', 'ROOM')] }
    expect(met(unsure)).toMatchObject({ met: 'open', gap: { places: [{ element: 'lettering/2' }] } })
    expect(met(some)).toMatchObject({ met: 'open', gap: { places: [{ element: 'panel' }] } })
  })

  test('may be on another sign where characters are described as raised only', () => {
    const alone = signOf(PUMP_ROOM, { 'lettering.0.part': 'raised' })
    expect(conditionMet('visual-set-elsewhere', alone)).toMatchObject({
      met: 'open',
      gap: { places: [{ element: 'lettering/0' }] },
    })
    expect(conditionMet('separate-visual-set', alone).met).toBe('open')
    expect(conditionMet('visual-set-elsewhere', signOf(PUMP_ROOM)).met).toBe(false)
  })
})
