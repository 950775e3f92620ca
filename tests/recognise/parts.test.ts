import { describe, expect, it } from 'vitest'
import { namedPart, partInName } from '../../src/recognise/parts.js'

const nothing = new Set<string>()

/** The order and the words are the contract's; the names are invented, as drawing programs write them. */
describe('the part that a name tells', () => {
  it.each([
    ['raised', 'raised'],
    ['Raised-Text', 'raised'],
    ['layer_braille_2', 'braille'],
    ['brailleDots', 'braille'],
    ['Borders', 'border'],
    ['raised border', 'border'],
    ['raised + visual', 'both'],
    ['picto', 'pictogram'],
    ['IGNORE panel', 'ignore'],
  ])('%s is %s', (name, part) => {
    expect(partInName(name)).toBe(part)
  })
  it.each(['text', 'praised', 'layer1', 'ornament', 'supervisual', ''])('%s tells nothing', (name) => {
    expect(partInName(name)).toBeUndefined()
  })
})

describe('the part that an element was said to be', () => {
  const labels = { dataPart: 'visual', names: ['a', 'raised-letters', 'Layer 1'] }
  it('is the mapping first, then data-part, then the nearest name', () => {
    expect(namedPart(labels, { 'Layer 1': 'ignore' }, nothing)?.part).toBe('ignore')
    expect(namedPart(labels, {}, nothing)?.part).toBe('visual')
    expect(namedPart({ names: ['braille', 'raised'] }, {}, nothing)?.part).toBe('braille')
    expect(namedPart({ names: ['dots'] }, {}, nothing)).toBeUndefined()
  })
  it('does not come from a data-part that is no part, or from a name of the whole drawing', () => {
    expect(namedPart({ dataPart: 'rim', names: ['raised'] }, {}, nothing)?.part).toBe('raised')
    expect(namedPart({ names: ['braille sign'] }, {}, new Set(['braille sign']))).toBeUndefined()
  })
  it('is not found on the prototype of the mapping', () => {
    expect(namedPart({ names: ['constructor', '__proto__'] }, {}, nothing)).toBeUndefined()
  })
})
