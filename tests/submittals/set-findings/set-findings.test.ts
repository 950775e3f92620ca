import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { SetFinding } from '../../../src/report/set/evidence.js'
import { READING_NOISE } from '../../../src/submittals/set-findings/braille-spacing-differs.js'
import type { ComparedSign } from '../../../src/submittals/set-findings/compared-sign.js'
import { roomIn } from '../../../src/submittals/set-findings/room.js'
import { setFindings } from '../../../src/submittals/set-findings/set-findings.js'
import { door, sign } from './signs.js'

/** The rules compare signs with each other. No standard asks for any of it (common practice, no source); all values are invented. */

const kinds = (findings: SetFinding[]): string[] => findings.map(({ kind }) => kind)
const of = (kind: SetFinding['kind'], signs: ComparedSign[]): SetFinding[] =>
  setFindings(signs, []).filter((finding) => finding.kind === kind)

describe('same-mark', () => {
  it('names a mark that stands for several signs, whatever its spelling', () => {
    const found = of('same-mark', [
      sign('W-1', { location: '1, 101' }),
      sign('w-1 ', { location: '1, 102' }),
      sign('W-2'),
    ])
    expect(found).toHaveLength(1)
    expect(found[0]?.marks).toEqual(['W-1', 'w-1 '])
    expect(found[0]?.message).toContain('2 signs')
    // Places have commas themselves.
    expect(found[0]?.message).toContain('1, 101; 1, 102')
  })

  it('is the same finding when the two signs say the same', () => {
    const [found] = of('same-mark', [sign('W-1', { wording: ['LOOMS'] }), sign('W-1', { wording: ['LOOMS'] })])
    expect(found?.message).toContain('all with the same wording')
  })

  it('is silent where every mark is one sign’s', () => {
    expect(setFindings([sign('W-1'), sign('W-11'), sign('W-1A')], [])).toEqual([])
  })
})

describe('wording-differs', () => {
  const inRoom = (mark: string, words: string, more: Partial<ComparedSign> = {}) =>
    sign(mark, { location: '104', wording: words.split('/'), ...more })

  it('names a room whose signs say different things, with who says what', () => {
    const [found, ...others] = of('wording-differs', [inRoom('W-1', 'WARPING/104'), inRoom('W-2', 'WEAVING/104')])
    expect(others).toEqual([])
    expect(found?.marks).toEqual(['W-1', 'W-2'])
    expect(found?.message).toContain('“WARPING 104” (W-1)')
    expect(found?.message).toContain('“WEAVING 104” (W-2)')
  })

  it.each([
    ['lines in another order', inRoom('W-2', '104/WARPING')],
    ['other capitals', inRoom('W-2', 'Warping/104')],
    ['an exit sign in the room', inRoom('W-2', 'EXIT', { use: 'exit-door' })],
    ['a sign of which nobody said what it is for', inRoom('W-2', 'EXIT', { use: null })],
    ['a sign that could not be read', inRoom('W-2', '', { wording: null })],
    ['another room', inRoom('W-2', 'WEAVING', { location: '105' })],
    ['the room of that number in another building', inRoom('W-2', 'WEAVING', { location: 'Annexe, 104' })],
  ])('is silent for %s', (_, other) => {
    expect(of('wording-differs', [inRoom('W-1', 'WARPING/104'), other])).toEqual([])
  })

  it('does not take a corridor or a level for a room', () => {
    for (const place of ['Level 2', 'North corridor', '2nd floor', 'Corridor 3', ''])
      expect(roomIn(place), place).toBeNull()
    expect(roomIn('104')).toBe('104')
    expect(roomIn('Room b-104')).toBe('B-104')
    expect(roomIn('104 Dye kitchen')).toBe('104')
    expect(roomIn('Annexe, Level 2, 2.13A')).toBe('ANNEXE/LEVEL2/2.13A')
  })
})

describe('typefaces-differ', () => {
  it('names each family with its signs', () => {
    const signs = [
      sign('W-1', { families: ['Open Sans'] }),
      sign('W-2', { families: ['open sans'] }),
      sign('W-3', { families: ['Arimo'] }),
    ]
    const [found] = of('typefaces-differ', signs)
    expect(found?.message).toBe('The set has 2 typefaces: Open Sans (W-1, W-2) and Arimo (W-3).')
  })

  it('is silent where one is known and the others are not', () => {
    expect(of('typefaces-differ', [sign('W-1', { families: ['Arimo'] }), sign('W-2')])).toEqual([])
  })

  it('tells kinds of typeface apart where the families are not known', () => {
    const signs = [sign('W-1', { styles: ['sans-serif'] }), sign('W-2', { styles: ['serif'] })]
    expect(of('typefaces-differ', signs)).toHaveLength(1)
  })
})

describe('braille-spacing-differs', () => {
  const spacedAt = (...spacings: number[]) => spacings.map((dots, at) => sign(`W-${at + 1}`, { dotSpacings: [dots] }))

  it('names the spacings with their signs', () => {
    const [found] = of('braille-spacing-differs', spacedAt(2.3, 2.5, 2.3))
    expect(found?.message).toContain('2.30 mm (W-1, W-3) and 2.50 mm (W-2)')
  })

  it('looks at the cells apart from the dots', () => {
    const signs = [sign('W-1', { cellSpacings: [6.1] }), sign('W-2', { cellSpacings: [7.6] })]
    expect(of('braille-spacing-differs', signs).map(({ message }) => message)[0]).toContain('cell spacing')
    expect(of('braille-spacing-differs', signs)).toHaveLength(1)
  })

  it('takes for one what lies within the noise, and no more', () => {
    expect(of('braille-spacing-differs', spacedAt(2.4, 2.4 + READING_NOISE * 0.99))).toEqual([])
    expect(of('braille-spacing-differs', spacedAt(2.4, 2.4 + READING_NOISE * 1.01))).toHaveLength(1)
  })

  it('takes 0.1 inch and 2.5 mm for one spacing', () => {
    expect(of('braille-spacing-differs', spacedAt(0.1 * 25.4, 2.5))).toEqual([])
  })

  it('does not let small steps add up to a large one unseen', () => {
    expect(of('braille-spacing-differs', spacedAt(2.3, 2.34, 2.38, 2.42))).toHaveLength(1)
  })
})

describe('door-without-sign', () => {
  const found = (signs: ComparedSign[], ...doors: ReturnType<typeof door>[]) =>
    setFindings(signs, doors).filter(({ kind }) => kind === 'door-without-sign')

  it('names a door that no sign is said to stand at', () => {
    const [first, ...others] = found([sign('W-1', { door: '101A' })], door('101A'), door('102', 'Spool store'))
    expect(others).toEqual([])
    expect(first?.message).toContain('Door 102 (Spool store) is listed in doors.csv, row 2')
  })

  it.each([
    ['spelt otherwise', sign('W-1', { door: '102 b' }), door('102B')],
    ['with other doors in one cell', sign('W-1', { door: '102A, 102B' }), door('102B')],
    ['by its place, where the sign names no door', sign('W-1', { location: 'Spool store' }), door('D7', 'Spool store')],
    ['by the number of its room', sign('W-1', { location: 'Annexe, 102' }), door('102')],
    ['by the number of its room and a letter', sign('W-1', { location: '102' }), door('102B')],
  ])('is silent for a door that is named %s', (_, one, listed) => {
    expect(found([one], listed)).toEqual([])
  })

  it('does not let a sign that names another door stand for this one', () => {
    expect(found([sign('W-1', { door: '102A', location: '102' })], door('102B', '102'))).toHaveLength(1)
  })

  it('says that a sign without a place may be for it', () => {
    expect(found([sign('W-1')], door('102'))[0]?.message).toContain('One sign names neither a door nor a place')
  })

  it('names a door once that is listed twice', () => {
    expect(found([], door('102'), door('102'))).toHaveLength(1)
  })
})

describe('a set', () => {
  it('of one sign has nothing to compare', () => {
    const alone = sign('W-1', { location: '104', wording: ['LOOMS'], dotSpacings: [2.4], families: ['Arimo'] })
    expect(setFindings([alone], [])).toEqual([])
  })

  it('that repeats one sign under other marks has no finding, however often', () => {
    const same: Partial<ComparedSign> = {
      location: '104',
      wording: ['LOOMS', '104'],
      dotSpacings: [2.4],
      cellSpacings: [6.9],
      families: ['Arimo'],
      styles: ['sans-serif'],
    }
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), (count) => {
        const signs = Array.from({ length: count }, (_, at) => sign(`W-${at}`, same))
        expect(setFindings(signs, [door('104')])).toEqual([])
      }),
      { numRuns: 20 },
    )
  })

  it('gives the same kinds whatever the order of its signs', () => {
    const signs = [
      sign('W-1', { location: '104', wording: ['LOOMS'], dotSpacings: [2.3], families: ['Arimo'] }),
      sign('W-2', { location: '104', wording: ['DYES'], dotSpacings: [2.5], families: ['Tinos'] }),
      sign('W-1', { location: '105', door: '105' }),
    ]
    const all = ['same-mark', 'wording-differs', 'typefaces-differ', 'braille-spacing-differs', 'door-without-sign']
    fc.assert(
      fc.property(fc.shuffledSubarray(signs, { minLength: signs.length }), (order) => {
        expect(kinds(setFindings(order, [door('D9')]))).toEqual(all)
      }),
      { numRuns: 20 },
    )
  })
})
