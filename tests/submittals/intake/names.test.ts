import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  LONGEST_SHOWN_NAME,
  markKey,
  nameKey,
  shownFileName,
  shownName,
  stemOf,
  waysToName,
} from '../../../src/submittals/intake/names.js'

/** Names of files and marks. All names are invented; what must not be in a shown name is listed by Unicode's general categories. */

describe('a name for showing', () => {
  it.each([
    ['H-204.svg', 'H-204.svg'],
    ['level 1\\H-204.svg', 'level 1/H-204.svg'],
    ['C:\\plans\\H-204.svg', 'plans/H-204.svg'],
    ['/etc/../H-204.svg', 'etc/H-204.svg'],
    ['./a//b.svg', 'a/b.svg'],
    ['a\r\nb\t.svg', 'ab.svg'],
    ['kiln \u00a0 room.svg', 'kiln room.svg'],
    ['Tu\u0308r.svg', 'T\u00fcr.svg'],
    ['H-204\u202egvs.exe', 'H-204gvs.exe'],
    ['\ud800.svg', '.svg'],
    ['..', 'unnamed'],
    ['', 'unnamed'],
  ])('%j is shown as %j', (name, shown) => {
    expect(shownName(name)).toBe(shown)
  })

  it('is of any text short, in one line, without characters that are not seen, and stays as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 600 }), (name) => {
        const shown = shownName(name)
        expect(shown.length).toBeGreaterThan(0)
        expect(shown.length).toBeLessThanOrEqual(LONGEST_SHOWN_NAME)
        expect(shown).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\\]/u)
        expect(shown.split('/')).not.toContain('..')
      }),
      { numRuns: 300 },
    )
  })

  it('keeps the end of a long one, which holds the extension', () => {
    const shown = shownName(`${'long '.repeat(100)}H-204.svg`)
    expect(shown).toHaveLength(LONGEST_SHOWN_NAME)
    expect(shown).toMatch(/….*H-204\.svg$/u)
  })

  it('of a sent file is the last part of its path', () => {
    expect(shownFileName('C:\\fakepath\\H-204.svg')).toBe('H-204.svg')
    expect(shownFileName('../../etc/passwd')).toBe('passwd')
  })
})

describe('the name without extension', () => {
  it.each([
    ['set.zip/level 1/H-204.svg', 'H-204'],
    ['H-204.SVG', 'H-204'],
    ['H-204.svg.exe', 'H-204.svg'],
    ['1.04', '1.04'],
    ['1.04.svg', '1.04'],
    ['Rev.B', 'Rev.B'],
    ['.svg', '.svg'],
  ])('of %j is %j', (name, stem) => {
    expect(stemOf(name)).toBe(stem)
  })
})

describe('marks', () => {
  it.each(['h-204', 'H 204', 'H_204', ' H204 ', 'H\u2013204', 'Ｈ２０４'])('%j is H-204', (mark) => {
    expect(markKey(mark)).toBe(markKey('H-204'))
  })

  it.each([
    ['1-12', '11-2'],
    ['1-12', '112'],
    ['1.04', '104'],
    ['H-204', 'H-2041'],
    ['H-204A', 'H-204B'],
  ])('%j is not %j', (one, other) => {
    expect(markKey(one)).not.toBe(markKey(other))
  })

  it('of nothing but dashes have no key', () => {
    expect(markKey('-- _')).toBe('')
  })
})

describe('the ways to name a drawing', () => {
  it('are few, however many folders there are, so that all drawings of an upload can be kept by them', () => {
    expect(waysToName(`${'a/'.repeat(95)}H-204.svg`).length).toBeLessThanOrEqual(10)
  })

  const fits = (drawing: string, written: string) => waysToName(drawing).includes(nameKey(written))

  it.each([
    'h-204',
    'H-204.SVG',
    'level 1/h-204',
    'Level 1\\H-204.svg',
    'a/b/Level 1/H-204',
    'set.zip/a/b/Level 1/H-204.svg',
    './H-204',
    'B/Level 1/h-204',
  ])('are with or without folders and extension, whatever the case: %s', (written) => {
    expect(fits('set.zip/a/b/Level 1/H-204.svg', written)).toBe(true)
  })

  it.each([
    'Level 2/H-204.svg',
    'x/b/Level 1/H-204',
    '4.svg',
    'other.zip/a/b/Level 1/H-204.svg',
    'H-204.svg/'.repeat(2),
  ])('are not %s', (written) => {
    expect(fits('set.zip/a/b/Level 1/H-204.svg', written)).toBe(false)
  })
})
