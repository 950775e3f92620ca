import { describe, expect, test } from 'vitest'
import { Refusal } from '../../src/refusal.js'
import { catalogueOf, findStandards, listStandards, type Catalogue } from '../../src/standards/catalogue.js'
import { canonicalJson } from '../../src/standards/load.js'
import { length, row, table } from './invented.js'

const refusalOf = (ids: string[], find: Catalogue['find'] = findStandards): Refusal => {
  try {
    find(ids)
  } catch (error) {
    if (error instanceof Refusal) return error
  }
  throw new Error('nothing was refused')
}

describe('the catalogue of standards', () => {
  test('lists each standard with a digest', () => {
    for (const { digest } of listStandards()) expect(digest).toMatch(/^sha256-[\w-]{43}$/u)
  })

  test('finds a standard by its id and by its id with the revision, once', () => {
    for (const { id, revision } of listStandards())
      expect(findStandards([id, `${id}@${revision}`]).map((s) => s.id)).toEqual([id])
  })

  test('names every id that is not known, with its place', () => {
    const refusal = refusalOf(['us-ada-2010', 'mars-1', 'us-ada-2010@999'])
    expect(refusal.type).toBe('unknown-standard')
    expect(refusal.errors.map((e) => e.pointer)).toEqual(['/standards/1', '/standards/2'])
    expect(refusal.errors[0]?.detail).toContain('mars-1')
    expect(refusal.errors[1]?.detail).toMatch(/us-ada-2010@\d/)
  })

  test('does not take a name of the object prototype for a standard', () => {
    expect(refusalOf(['__proto__', 'constructor']).errors).toHaveLength(2)
  })

  test('writes equal data as equal text, whatever the order of the keys', () => {
    expect(canonicalJson({ b: [1, { d: null, c: 'x' }], a: true })).toBe('{"a":true,"b":[1,{"c":"x","d":null}]}')
    expect(canonicalJson({ a: 1, b: 2 })).toBe(canonicalJson({ b: 2, a: 1 }))
    expect(canonicalJson({ a: 1 })).not.toBe(canonicalJson({ a: 2 }))
  })
})

describe('revisions', () => {
  const rows = (max: number) => [row('moon-1/1/dot-height', 'braille.dotHeight', length(0.5, max))]
  const first = table('moon-1', rows(0.8))
  const second = table('moon-1', rows(0.9), {
    revision: 2,
    changes: [
      { revision: 1, date: '2026-01-01', text: 'First table.' },
      { revision: 2, date: '2026-02-01', text: 'Greater height.', requirements: ['moon-1/1/dot-height'] },
    ],
  })
  const catalogue = catalogueOf([second], [first])
  const heightOf = (id: string) => catalogue.find([id])[0]?.requirements[0]?.limit

  test('an earlier one stays callable by its number, with its own rows and digest', () => {
    expect(heightOf('moon-1')).toMatchObject({ mm: { max: 0.9 } })
    expect(heightOf('moon-1@2')).toMatchObject({ mm: { max: 0.9 } })
    expect(heightOf('moon-1@1')).toMatchObject({ mm: { max: 0.8 } })
    const digests = ['moon-1@1', 'moon-1@2'].map((id) => catalogue.find([id])[0]?.digest)
    expect(new Set(digests).size).toBe(2)
    expect(catalogue.list().map(({ revision }) => revision)).toEqual([2])
  })

  test('two of one standard are not mixed in one answer, and those that are here are named', () => {
    expect(refusalOf(['moon-1@1', 'moon-1'], catalogue.find).detail).toContain('revisions 1 and 2')
    expect(refusalOf(['moon-1@3'], catalogue.find).detail).toContain('moon-1@1, moon-1@2')
  })

  test('a table is read by its schema only when it is asked for', () => {
    const broken = { ...table('broken', rows(1)), kind: 'no kind' }
    const both = catalogueOf([broken, second], [])
    expect(both.find(['moon-1'])).toHaveLength(1)
    expect(() => both.find(['broken'])).toThrow(/kind/)
  })
})
