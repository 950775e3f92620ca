import { describe, expect, test } from 'vitest'
import { measurer, QUANTITIES } from '../../src/measure/measurer.js'
import type { Unread } from '../../src/sign/sign.js'
import { PUMP_ROOM, signOf, translator } from './signs.js'

/**
 * Which quantities stay open because of a part of the drawing that was not understood (contract of the service, 5: never a silent pass). Every
 * quantity of braille may be of braille that is in it, and so on; besides, what is measured between two kinds may hang on either.
 */

type Kind = Unread['couldBe'][number]

const BESIDES: Record<string, { family: RegExp; others: string[] }> = {
  braille: {
    family: /^braille\.(?!repeatsRaisedText$)/u,
    others: [
      'installation.aboveHandle',
      'installation.brailleBaselineHighest',
      'installation.brailleBaselineLowest',
      'installation.brailleHighest',
      'installation.highestTactile',
      'installation.lowestBaseline',
      'installation.lowestTactile',
      'installation.topHeight',
      'raised.horizontal',
    ],
  },
  lettering: {
    family: /^(raised|visual|contrast\.(characters|reflectance|lighter))/u,
    others: [
      'braille.alignment',
      'braille.capitalsKept',
      'braille.characterClearance',
      'braille.position',
      'braille.textGap',
      'braille.wording',
      'installation.highestBaseline',
      'installation.highestTactile',
      'installation.lowestBaseline',
      'installation.lowestTactile',
      'installation.raisedLowestBaseline',
      'installation.tactileLine',
      'installation.topHeight',
      'pictogram.descriptor',
    ],
  },
  pictogram: {
    family: /^(pictogram|symbol|contrast\.(pictogram|symbol))/u,
    others: ['braille.controlWords', 'installation.topHeight'],
  },
  border: { family: /^border\./u, others: ['braille.borderClearance', 'raised.borderClearance'] },
  colour: { family: /^contrast\.(?!(pictogram|symbol)$)/u, others: [] },
}

const open = (kind: Kind): string[] => {
  const part: Unread = { place: { element: 'drawing' }, why: 'an image was not looked into', couldBe: [kind] }
  const measure = measurer({ ...signOf(PUMP_ROOM), unread: [part] }, translator)
  return Object.keys(QUANTITIES).filter((name) =>
    measure(name, {}).gaps.some(({ why, reason }) => why === part.why && reason === 'unreadable'),
  )
}

describe.each(Object.entries(BESIDES))('a part that could be %s', (kind, { family, others }) => {
  test('leaves open what is measured on it, and nothing else', () => {
    const expected = Object.keys(QUANTITIES).filter((name) => family.test(name) || others.includes(name))
    expect(open(kind as Kind).sort()).toEqual(expected.sort())
  })
})

// A yes that is seen stays a yes; what is missing may be in the part that was not read.
test.each([
  ['braille', 'braille.repeatsRaisedText', { braille: [] }],
  ['braille', 'sign.braille', { braille: [] }],
  ['lettering', 'sign.tactileCharacters', { 'lettering.0.part': 'visual' }],
  ['lettering', 'sign.stationTactileCharacters', { 'lettering.0.part': 'visual' }],
] as const)('a part that could be %s leaves a no open, not a yes: %s', (kind, quantity, values) => {
  const part: Unread = { place: { element: 'drawing' }, why: 'an image', couldBe: [kind] }
  const take = (more: Record<string, unknown>) =>
    measurer({ ...signOf(PUMP_ROOM, more), unread: [part] }, translator)(quantity, {})
  expect(take({})).toMatchObject({ observations: [{ value: true }], gaps: [] })
  expect(take(values).gaps.length).toBeGreaterThan(0)
  expect(take(values).observations.filter(({ value }) => value === false)).toEqual([])
})
