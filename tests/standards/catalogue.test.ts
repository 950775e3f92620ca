import { describe, expect, test } from 'vitest'
import { Refusal } from '../../src/refusal.js'
import { canonicalJson, findStandards, listStandards } from '../../src/standards/catalogue.js'

const refusalOf = (ids: string[]): Refusal => {
  try {
    findStandards(ids)
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
    const [{ id, revision }] = listStandards()
    expect(findStandards([id, `${id}@${revision}`]).map((s) => s.id)).toEqual([id])
  })

  test('names every id that is not known, with its place', () => {
    const refusal = refusalOf(['us-ada-2010', 'mars-1', 'us-ada-2010@999'])
    expect(refusal.type).toBe('unknown-standard')
    expect(refusal.errors.map((e) => e.pointer)).toEqual(['/standards/1', '/standards/2'])
    expect(refusal.errors[0]?.detail).toContain('mars-1')
    expect(refusal.errors[1]?.detail).toContain('us-ada-2010@1')
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
