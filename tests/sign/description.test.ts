import { describe, expect, it } from 'vitest'
import { hasContent, SignDescription } from '../../src/sign/description.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { faultsOf, nearest } from '../../src/sign/faults.js'

/** Where the schema finds fault, and what it says. */
function faults(json: object): Record<string, string> {
  const parsed = SignDescription.safeParse({ use: 'permanent-room', ...json })
  if (parsed.success) return {}
  const found: Record<string, string> = {}
  for (const { pointer, detail } of faultsOf(parsed.error, SignDescription, '/sign')) found[pointer ?? ''] = detail
  return found
}

describe('the schema of a description', () => {
  it('takes the documented example', () => {
    expect(faults(POTTERY_ROOM)).toEqual({})
    expect(hasContent(SignDescription.parse(POTTERY_ROOM))).toBe(true)
  })

  it('asks for the use and nothing else', () => {
    expect(faults({})).toEqual({})
    expect(faults({ use: undefined })).toEqual({ '/sign/use': expect.stringContaining('use') as string })
    expect(hasContent(SignDescription.parse({ use: 'gift', lettering: [], braille: [] }))).toBe(false)
  })

  it('names a misspelt key and what it was probably meant to be, at every depth', () => {
    const found = faults({
      brail: [],
      lettering: [{ txt: 'A', typeface: { famly: 'Open Sans' } }],
      installation: { door: { leafwidth: 900 } },
    })
    expect(found['/sign/brail']).toContain('“braille”')
    expect(found['/sign/lettering/0/txt']).toContain('“text”')
    expect(found['/sign/lettering/0/typeface/famly']).toContain('“family”')
    expect(found['/sign/installation/door/leafwidth']).toContain('“leafWidth”')
  })

  it('points at each wrong value, also inside a length with its own unit', () => {
    const found = faults({
      panel: { width: 0, colour: 'no colour' },
      braille: [{ dotSpacing: -2.4, cellSpacing: { value: 0, unit: 'in' }, lineSpacing: { value: 1, unit: 'ft' } }],
    })
    expect(Object.keys(found).sort()).toEqual([
      '/sign/braille/0/cellSpacing/value',
      '/sign/braille/0/dotSpacing',
      '/sign/braille/0/lineSpacing/unit',
      '/sign/panel/colour',
      '/sign/panel/width',
    ])
  })

  it('escapes a pointer as RFC 6901 asks', () => {
    expect(Object.keys(faults({ 'a/b~c': 1 }))).toEqual(['/sign/a~1b~0c'])
  })

  it('refuses keys that reach for a prototype like any other key', () => {
    const json = JSON.parse('{"constructor":{"prototype":{}},"use":"gift"}') as object
    expect(Object.keys(faults(json))).toEqual(['/sign/constructor'])
  })

  it('refuses texts with control characters, half characters or nothing', () => {
    const found = faults({ lettering: [{ text: 'A\nB' }, { text: '\ud800' }, { text: ' ' }] })
    expect(Object.keys(found)).toEqual([0, 1, 2].map((i) => `/sign/lettering/${i}/text`))
    expect(found['/sign/lettering/0/text']).toContain('lines')
  })

  it('takes texts in any script and marks of direction', () => {
    expect(faults({ lettering: [{ text: 'Ωδή \u202eRTL' }, { text: '👩‍🦯' }] })).toEqual({})
  })

  it('refuses a measured quantity that does not exist, and a unit that does not suit one', () => {
    const found = faults({
      measured: [
        { quantity: 'braille.smell', values: [1] },
        { quantity: 'braille.dotHeight', values: [1], unit: 'ratio' },
        { quantity: 'raised.strokeThickness', values: [1], unit: 'mm' },
      ],
    })
    expect(Object.keys(found)).toEqual(['/sign/measured/0/quantity', '/sign/measured/1/unit', '/sign/measured/2/unit'])
  })

  it('has an upper end for everything that a client could pile up', () => {
    const many = (item: unknown) => Array.from({ length: 2000 }, () => item)
    const piles: object[] = [
      { lettering: many({}) },
      { braille: many({}) },
      { pictograms: many({}) },
      { borders: many({ box: { x: 0, y: 0, width: 1, height: 1 } }) },
      { properNames: many('A') },
      { measured: many({ quantity: 'braille.dotHeight', values: [1] }) },
      { measured: [{ quantity: 'braille.dotHeight', values: many(1) }] },
      { measured: [{ quantity: 'sign.illuminance', values: [1e7] }] },
      { measured: [{ quantity: 'braille.dotHeight', values: [1], expandedUncertainty: 1e7 }] },
      { lettering: [{ lines: many('A') }] },
      { lettering: [{ text: 'A'.repeat(2000) }] },
      { mark: 'A'.repeat(2000) },
      { panel: { colour: ' '.repeat(2000) + 'red' } },
    ]
    for (const pile of piles) expect(Object.keys(faults(pile)), JSON.stringify(pile).slice(0, 60)).toHaveLength(1)
  })
})

describe('the nearest name', () => {
  // Distances by hand: Levenshtein 1966.
  it('is the known one that few slips away from', () => {
    expect(nearest('brail', ['braille', 'borders'])).toBe('braille')
    expect(nearest('colour', ['color', 'column'])).toBe('color')
  })

  it('is none when nothing is like it', () => {
    expect(nearest('xyz', ['braille', 'borders'])).toBeUndefined()
    expect(nearest('a'.repeat(1000), ['a'])).toBeUndefined()
    expect(nearest('a', [])).toBeUndefined()
  })
})
