import { describe, expect, it } from 'vitest'
import { load } from '../../src/standards/load.js'
import { commonWindows } from '../../src/windows/common.js'
import type { Setting } from '../../src/windows/setting.js'
import type { Conflict, Window } from '../../src/windows/window.js'
import { length, row, table, type InventedTable } from '../standards/invented.js'

/** Small invented tables, so that every answer can be worked out in the head. */

const common = (tables: InventedTable[], setting: Setting = { use: 'permanent-room' }) =>
  commonWindows(tables.map(load), setting)

const plain = ({ quantity, region, rows, ...characters }: Window) => ({
  quantity,
  ...characters,
  ...('ends' in region ? region.ends : 'kinds' in region ? { kinds: region.kinds, judgement: region.judgement } : {}),
  from: rows.map(({ row }) => row.requirement),
})
const named = ({ quantities, rows, why }: Conflict) => [why, quantities, rows.map(({ row }) => row.requirement)]

const cells = (id: string, min?: number, max?: number, changes = {}) =>
  table(id, [row(`${id}/1/cell-spacing`, 'braille.cellSpacing', length(min, max))], changes)

describe('common windows', () => {
  it('are what all rows in force leave, with the rows that they are from', () => {
    const { windows, conflicts } = common([cells('a', 6, 7), cells('b', 6.5), cells('c', undefined, 6.9)])
    expect(windows.map(plain)).toEqual([
      {
        quantity: 'braille.cellSpacing',
        min: 6.5,
        max: 6.9,
        from: ['a/1/cell-spacing', 'b/1/cell-spacing', 'c/1/cell-spacing'],
      },
    ])
    expect(conflicts).toEqual([])
  })

  it('take the unit that a standard puts first', () => {
    const inches = { kind: 'length' as const, in: { min: 0.25, max: 0.5 }, mm: { min: 6.3, max: 12 } }
    const a = table('a', [row('a/1/cell-spacing', 'braille.cellSpacing', inches)], { firstUnit: 'in' })
    expect(common([a]).windows.map(plain)).toMatchObject([{ min: 6.35, max: 12.7 }])
  })

  it('may be a single value: two ends that touch, or a figure without a tolerance', () => {
    const b = table('b', [row('b/1/cell-spacing', 'braille.cellSpacing', { kind: 'nominal', mm: 6.5 })])
    expect(common([cells('a', 6, 7), cells('c', 7, 8)]).windows.map(plain)).toMatchObject([{ min: 7, max: 7 }])
    expect(common([cells('a', 6, 7), b]).windows.map(plain)).toMatchObject([{ min: 6.5, max: 6.5 }])
  })

  it('are missing where standards exclude each other; every pair that does is named', () => {
    const { windows, conflicts } = common([cells('a', 6, 7), cells('b', 6.5), cells('c', 7.5, 8), cells('d', 5, 6.4)])
    expect(windows).toEqual([])
    expect(conflicts.map(named)).toEqual([
      ['no-value', ['braille.cellSpacing'], ['a/1/cell-spacing', 'c/1/cell-spacing']],
      ['no-value', ['braille.cellSpacing'], ['b/1/cell-spacing', 'd/1/cell-spacing']],
      ['no-value', ['braille.cellSpacing'], ['c/1/cell-spacing', 'd/1/cell-spacing']],
    ])
  })

  it('hold for the use that is asked for, and for rows of force shall only', () => {
    const exit = row('a/2/cell-spacing', 'braille.cellSpacing', length(9), { scope: { uses: ['exit-door'] } })
    const advice = row('a/3/cell-spacing', 'braille.cellSpacing', length(9), { force: 'advice' })
    const a = table('a', [row('a/1/cell-spacing', 'braille.cellSpacing', length(6, 7)), exit, advice])
    expect(common([a]).windows.map(plain)).toMatchObject([{ min: 6, max: 7 }])
    expect(common([a], { use: 'exit-door' }).windows.map(plain)).toMatchObject([{ min: 9 }])
    expect(common([a], { use: 'gift' })).toMatchObject({ windows: [], asked: [{ inForce: 0 }] })
  })

  it('are sets for kinds; what a person judges is kept apart', () => {
    const finish = (id: string, pass: string[], judgement: string[] = []) =>
      table(id, [row(`${id}/1/finish`, 'visual.finish', { kind: 'one-of', pass, judgement })])
    expect(
      common([finish('a', ['matte', 'eggshell'], ['satin']), finish('b', ['matte', 'satin'])]).windows.map(plain),
    ).toEqual([
      { quantity: 'visual.finish', kinds: ['matte'], judgement: ['satin'], from: ['a/1/finish', 'b/1/finish'] },
    ])
    const three = [finish('a', ['matte', 'satin']), finish('b', ['satin', 'glossy']), finish('c', ['glossy', 'matte'])]
    expect(common(three).conflicts.map(named)).toEqual([
      ['no-value', ['visual.finish'], ['a/1/finish', 'b/1/finish', 'c/1/finish']],
    ])
  })

  it('are apart for characters that rows of their own look at', () => {
    const heights = (name: string, parts: string[], min: number, max: number) =>
      row(name, 'raised.characterHeight', length(min, max), { scope: { parts } })
    const a = table('a', [heights('a/1/height', ['raised', 'both'], 16, 50)])
    const b = table('b', [heights('b/1/height', ['both'], 60, 70)])
    expect(common([a, b]).windows.map(plain)).toEqual([
      { quantity: 'raised.characterHeight', parts: ['raised'], min: 16, max: 50, from: ['a/1/height'] },
    ])
    expect(common([a, b]).conflicts.map(named)).toEqual([
      ['no-value', ['raised.characterHeight'], ['a/1/height', 'b/1/height']],
    ])
  })

  it('say that braille cannot be contracted and uncontracted', () => {
    const [a, b] = ['contracted', 'uncontracted'].map((name) =>
      table(name[0], [row(`${name[0]}/1/${name}`, `braille.${name}`, { kind: 'yes' })]),
    )
    const { windows, conflicts } = common([a, b])
    expect(conflicts.map(named)).toEqual([
      ['opposite', ['braille.contracted', 'braille.uncontracted'], ['c/1/contracted', 'u/1/uncontracted']],
    ])
    expect(windows).toEqual([])
    expect(common([a]).windows.map(({ region }) => region.unit)).toEqual(['truth'])
  })

  it('leave reference geometries out', () => {
    const reference = cells('r', 1, 2, { kind: 'reference-geometry' })
    expect(common([cells('a', 6, 7), reference]).windows.map(plain)).toMatchObject([
      { min: 6, max: 7, from: ['a/1/cell-spacing'] },
    ])
  })
})

describe('conditions', () => {
  const conditional = (scope: object, changes = {}) =>
    table('a', [row('a/1/cell-spacing', 'braille.cellSpacing', length(6, 7), { scope, ...changes })])
  const open = (found: ReturnType<typeof common>) =>
    found.conditional.map(({ when, clause, isException }) => ({ when, clause, isException }))

  it('that a sign decides put the row aside, by name', () => {
    const found = common([conditional({ when: ['several-tactile-lines'] })])
    expect(found.windows).toEqual([])
    expect(open(found)).toEqual([{ when: ['several-tactile-lines'], clause: '1', isException: false }])
  })

  it('that the use or the carrier decides are decided', () => {
    const pvc = conditional({ when: ['carrier-pvc'] })
    expect(common([pvc])).toMatchObject({ windows: [], conditional: [] })
    expect(common([pvc], { use: 'permanent-room', carrier: 'pvc' }).windows).toHaveLength(1)
    expect(common([conditional({ when: ['main-entry-level'] })])).toMatchObject({ windows: [], conditional: [] })
  })

  it('of exceptions leave the row as it is while they are open', () => {
    const exceptions = [
      { when: 'separate-visual-set', clause: '1 Exception', text: 'Less.', limit: { printed: 'l', ...length(5, 7) } },
    ]
    const found = common([conditional({}, { exceptions })])
    expect(found.windows.map(plain)).toMatchObject([{ min: 6, max: 7 }])
    expect(open(found)).toEqual([{ when: ['separate-visual-set'], clause: '1 Exception', isException: true }])
  })

  it('of exceptions that hold change the limit or set the row aside', () => {
    const at = { use: 'elevator-car-control' as const }
    const scope = { uses: ['elevator-car-control'] }
    const exception = { when: 'elevator-car-control', clause: '1 Exception', text: 'Less.' }
    const relaxed = conditional(scope, { exceptions: [{ ...exception, limit: { printed: 'l', ...length(5, 7) } }] })
    expect(common([relaxed], at).windows.map(plain)).toMatchObject([{ min: 5, max: 7 }])
    const aside = conditional(scope, { exceptions: [{ ...exception, exempt: true }] })
    expect(common([aside], at)).toMatchObject({ windows: [], conditional: [] })
  })

  it('of distance leave a limit open', () => {
    const share = row('a/1/height', 'visual.characterHeight', { kind: 'distance-share', share: 0.03 })
    expect(open(common([table('a', [share])]))).toMatchObject([{ when: ['viewing-distance'] }])
  })
})

describe('the radius of the dome', () => {
  const dots = (id: string, quantity: string, min?: number, max?: number) =>
    table(id, [row(`${id}/1/dot`, `braille.${quantity}`, length(min, max))])
  // The ranges of the Australian Braille Authority (brailleaustralia.org/?p=60); what they leave is worked out by hand, as in dome.test.ts.
  const [base, height, radius] = [
    dots('d', 'dotBaseDiameter', 1.5, 1.6),
    dots('h', 'dotHeight', 0.6, 0.9),
    dots('r', 'domeRadius', 0.76, 0.81),
  ]

  it('ties the height to the diameter', () => {
    const { domes, conflicts } = common([base, height, radius])
    expect(conflicts).toEqual([])
    const corners = domes?.corners.map(({ diameter, heights }) => [
      diameter,
      ...heights.map(({ min = NaN, max = NaN }) => [min.toFixed(3), max.toFixed(3)]),
    ])
    expect(corners).toEqual([
      [1.5, ['0.600', '0.637'], ['0.883', '0.900']],
      [1.6, ['0.683', '0.900']],
    ])
    expect(domes?.example).toEqual({ diameter: 1.55, height: 0.75 })
  })

  it('excludes what no dome can have, by the fewest rows', () => {
    // At 1.5 mm and up no height gives a radius below 0.75 mm: half the diameter.
    const small = dots('s', 'domeRadius', 0.5, 0.7)
    expect(common([base, height, small]).conflicts.map(named)).toEqual([
      ['dome', ['braille.domeRadius', 'braille.dotBaseDiameter', 'braille.dotHeight'], ['s/1/dot', 'd/1/dot']],
    ])
  })

  it('is told once at a diameter of a single value', () => {
    const nominal = table('n', [row('n/1/dot', 'braille.dotBaseDiameter', { kind: 'nominal', mm: 1.5 })])
    const { domes } = common([base, nominal, height, radius])
    expect(domes?.corners.map(({ diameter }) => diameter)).toEqual([1.5])
    expect(domes?.example?.diameter).toBe(1.5)
  })

  it('is shown by a dome that does not overhang its base, where there is one', () => {
    const nominal = table('n', [row('n/1/dot', 'braille.dotBaseDiameter', { kind: 'nominal', mm: 1.5 })])
    // 0.635 mm: 0.025 inch, 2010 ADA Standards 703.3.1. It leaves 0.635 to 0.637 and 0.883 to 0.9 mm.
    const { domes } = common([nominal, dots('h', 'dotHeight', 0.635, 0.9), radius])
    expect(domes?.example?.height.toFixed(3)).toBe('0.636')
  })

  it('leaves nothing where no height satisfies all, or no diameter', () => {
    // Czech plates, 0.475 to 0.525 mm (www.sons.cz): below every Australian dot.
    expect(common([base, height, radius, dots('cz', 'dotHeight', 0.475, 0.525)]).domes).toBeUndefined()
    expect(common([base, height, radius, dots('wide', 'dotBaseDiameter', 1.8)]).domes).toBeUndefined()
  })

  it('says nothing where no row limits it, and less where less is limited', () => {
    expect(common([base, height]).domes).toBeUndefined()
    expect(common([radius]).domes).toMatchObject({ corners: [], radius: { min: 0.76, max: 0.81 } })
    expect(common([radius, base]).domes?.corners).toHaveLength(2)
  })
})
