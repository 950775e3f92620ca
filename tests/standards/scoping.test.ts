import { expect, test } from 'vitest'
import { findStandards } from '../../src/standards/catalogue.js'

/**
 * Conditions of rows, typed anew and apart from the tables. Sources: the clauses named; ADA and the comparison by the Access Board, the
 * California code as reprinted, NCC 2022 as reported, the Korean notice as reported.
 */
const WHEN: Record<string, Record<string, string[]>> = {
  'us-ada-2010': {
    '407.2.3.1/star': ['main-entry-level'],
    '407.2.3.2/character-height': ['destination-oriented-elevator'],
    '703.4.2/side': ['at-a-door'],
    // 216.2: "where pictograms are provided as designations of permanent interior rooms"
    '703.6.1/field-height': ['pictogram-designates-room'],
    '703.6.1/field-clear': ['pictogram-designates-room'],
    '703.6.2/finish': ['pictogram-designates-room'],
    '703.6.2/contrast': ['pictogram-designates-room'],
    '703.6.3/descriptor': ['pictogram-designates-room'],
    '307.4/headroom': ['over-circulation-path'],
  },
  'us-adaag-1991': {
    '4.30.4/field-height': ['pictogram-designates-room'],
    '4.30.4/descriptor': ['pictogram-designates-room'],
    '4.30.5/contrast-pictogram': ['pictogram-designates-room'],
    '4.30.6/side': ['at-a-door'],
    // table 4.30.3: "Suspended or Projected Overhead"
    '4.30.3/character-height': ['suspended-overhead'],
  },
  'us-a117.1-2003': {
    '407.2.3.1/star': ['main-entry-level'],
    '407.2.3.2/character-height': ['destination-oriented-elevator'],
    '703.3.11/side': ['at-a-door'],
    '703.5.2/field-height': ['pictogram-designates-room'],
    '703.5.2/field-clear': ['pictogram-designates-room'],
    '703.5.3/finish': ['pictogram-designates-room'],
    '703.5.3/contrast': ['pictogram-designates-room'],
    '703.5.4/descriptor': ['pictogram-designates-room'],
  },
  'us-ca-2019': {
    '11B.703.6.1/field-height': ['pictogram-designates-room'],
    '11B.703.7.2.6.1/triangle-edge': ['triangle-alone'],
    '11B.703.7.2.6.2/circle-diameter': ['door-symbol'],
    '11B.703.7.2.6.3/triangle-in-circle': ['door-symbol'],
    '11B.703.7.2.6/thickness': ['door-symbol'],
    '11B.703.7.2.6/unread-clause': ['door-symbol'],
    '11B.407.2.3.2/character-height': ['destination-oriented-elevator'],
  },
  'au-ncc-2022': {
    // S15C2(b): "signs with a single line of characters"
    'S15C2.b/tactile-line': ['one-tactile-line'],
    'S15C2.c/side': ['at-a-door'],
    'S15C2.c.i/architrave-distance': ['at-a-door'],
    // S15C4(a): a border counts only where it is what gives the contrast
    'S15C4.a/border-width': ['border-gives-contrast'],
    // signs with several lines of text
    'S15C6/locator': ['several-tactile-lines'],
  },
  'au-aba': {},
  // paper and stickers; PVC
  'kr-2020': { '7/cell-spacing': ['carrier-not-pvc'], '7/cell-spacing-pvc': ['carrier-pvc'] },
  'nls-800': {},
  'marburg-medium': {},
}

test.each(Object.entries(WHEN))('the rows of %s are in force under the conditions that were typed anew', (id, when) => {
  const found = findStandards([id])[0]?.requirements.flatMap(({ requirement, scope }) =>
    scope.when.length > 0 ? [[requirement.replace(`${id}/`, ''), scope.when] as const] : [],
  )
  expect(Object.fromEntries(found ?? [])).toEqual(when)
})

/** A row's name ends as its quantity does, so that the same quantity has the same name in every table; these are named otherwise. */
const OTHERWISE: Record<string, string> = {
  'braille.position': 'below-text',
  'braille.repeatsRaisedText': 'repeated-in-braille',
  'raised.characterSpacing': 'character-spacing-min',
  'raised.characterSpacingInStrokes': 'character-spacing-max',
  'raised.characterSpacingAtBase': 'character-spacing-base-min',
  'sign.leftOfControl': 'location',
  'installation.overhang': 'post-overhang',
  'installation.brailleBaselineLowest': 'braille-lowest-baseline',
  'installation.brailleBaselineHighest': 'braille-highest-baseline',
  'sign.parkingIdentification': 'identification',
  'sign.stationTactileCharacters': 'tactile-characters',
  'contrast.reflectance': 'reflectance-contrast',
  'border.width': 'border-width',
}

const kebab = (name: string): string => name.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)

function slugOf(quantity: string): string {
  if (OTHERWISE[quantity] !== undefined) return OTHERWISE[quantity]
  const [family = '', rest = ''] = quantity.split('.')
  return family === 'contrast' ? 'contrast' : kebab(rest)
}

test.each(Object.keys(WHEN))('the rows of %s are named after their quantities', (id) => {
  for (const { requirement, quantity } of findStandards([id])[0]?.requirements ?? []) {
    const slug = requirement.split('/')[2]
    expect(slug === slugOf(quantity) || slug?.startsWith(`${slugOf(quantity)}-`), `${requirement} ${quantity}`).toBe(
      true,
    )
  }
})
