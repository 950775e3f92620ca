import { describe, expect, test } from 'vitest'
import { checked, circlesIn, made, notPassing, refusalOf, room } from './made.js'

/**
 * Sources beside the checks: the 2010 ADA Standards (703.2, 703.3 and table 703.3.1), the California Building Code 2019 (11B-703.3) and the
 * NCC 2022 (Specification 15) as their tables cite them; the Rules of Unified English Braille 2013. Texts and panels are invented.
 */

const ADA = ['us-ada-2010']

const sizeOf = (drawing: string) => {
  const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/u.exec(drawing) ?? []
  return { width: Number(width), height: Number(height) }
}

describe('braille', () => {
  test('is spaced as table 703.3.1 of the 2010 ADA Standards has it, cell by cell', () => {
    const { drawing } = made(room('Seed'), ADA)
    const dots = circlesIn(drawing)
    // ⠎⠑⠫ (seed, with ed as a groupsign: RUEB 2013, 10.4): dots 234, 15 and 1246.
    expect(dots).toHaveLength(3 + 2 + 4)
    const columns = [...new Set(dots.map(({ x }) => x))].sort((a, b) => a - b)
    const [first, second, third] = columns
    expect(second - first).toBeGreaterThanOrEqual(2.3)
    expect(second - first).toBeLessThanOrEqual(2.5)
    expect(third - first).toBeGreaterThanOrEqual(6.1)
    expect(third - first).toBeLessThanOrEqual(7.6)
    for (const { r } of dots) {
      expect(2 * r).toBeGreaterThanOrEqual(1.5)
      expect(2 * r).toBeLessThanOrEqual(1.6)
    }
  })

  test('is spaced by a tenth and three tenths of an inch in California (11B-703.3.1)', () => {
    const columns = [...new Set(circlesIn(made(room('Kiln'), ['us-ca-2019']).drawing).map(({ x }) => x))]
    const [first, ...others] = columns.sort((a, b) => a - b)
    for (const x of others) {
      const inches = (x - first) / 25.4
      expect(Math.min(...[0, 0.1].map((column) => Math.abs(((inches - column + 1e-6) % 0.3) - 1e-6)))).toBeLessThan(
        1e-4,
      )
    }
  })

  test('stands 8 mm below the baseline in Australia (S15C6), whatever hangs below it', () => {
    const { drawing, sign } = made(room('Judge Grey'), ['au-ncc-2022', 'au-aba'])
    const baseline = sign.lettering?.[0].baseline?.y
    const y = typeof baseline === 'object' ? baseline.value : NaN
    const top = Math.min(...circlesIn(drawing).map((dot) => dot.y - dot.r))
    expect(top - y).toBeCloseTo(8, 3)
  })

  test('keeps capitals for listed names only in the United States (703.3.1), and all in Australia (S15C6)', () => {
    const order = room('Kim Hall', { properNames: ['Kim'] })
    const lines = (set: string[]) => checked(made(order, set), set).reading.braille[0].lines.map(({ text }) => text)
    expect(lines(ADA)).toEqual(['Kim hall'])
    expect(lines(['au-ncc-2022', 'au-aba'])).toEqual(['Kim Hall'])
  })

  test('is contracted in the United States (703.3) and not in Australia (S15C6)', () => {
    const cells = (set: string[]) => checked(made(room('shop'), set), set).reading.braille[0].lines[0].cells
    // ⠩ is the groupsign for sh (RUEB 2013, 10.4).
    expect(cells(ADA)).toBe('⠩⠕⠏')
    expect(cells(['au-ncc-2022', 'au-aba'])).toBe('⠎⠓⠕⠏')
  })
})

describe('the panel', () => {
  test('is the smallest blank of a step of 25 mm when none is ordered', () => {
    const { width, height } = sizeOf(made(room('Kiln'), ADA).drawing)
    expect([width % 25, height % 25]).toEqual([0, 0])
  })

  test('is the one that is ordered, and the characters become smaller where they must, never below 5/8 inch (703.2.5)', () => {
    const drawn = made(room('Ceramics Archive', { panel: { width: 145, height: 110 } }), ADA)
    expect(sizeOf(drawn.drawing)).toEqual({ width: 145, height: 110 })
    const report = checked(drawn, ADA)
    expect(notPassing(report)).toEqual([])
    const { characterHeight } = report.reading.lettering[0]
    expect(characterHeight).toBeLessThan(20)
    expect(characterHeight).toBeGreaterThanOrEqual(15.875)
  })

  test('of a key fob has no room for a room name, and the problem says what it would take', () => {
    const refusal = refusalOf(() => made(room('Ceramics Archive', { panel: { width: 40, height: 20 } }), ADA))
    expect(refusal.type).toBe('cannot-satisfy')
    expect(refusal.conflicts?.[0].quantity).toBe('panel.size')
    expect(refusal.conflicts?.[0].requirements).toContain('us-ada-2010/703.2.5/character-height')
    expect(refusal.detail).toMatch(/does not fit on 40 × 20 mm/u)
  })

  test('in inches is the same panel', () => {
    const inches = made(room('Kiln', { units: 'in', panel: { width: 8, height: 5 } }), ADA)
    expect(sizeOf(inches.drawing)).toEqual({ width: 203.2, height: 127 })
    expect(notPassing(checked(inches, ADA))).toEqual([])
  })
})

describe('the corner of the panel', () => {
  // Dubai Universal Design Code, 14.3.11, and Orden TMA/851/2021, article 44.1 a, as the tables cite them: 10 to 30 mm from the edges.
  test.each([
    ['ae-dubai', {}],
    ['ae-dubai', { panel: { width: 260, height: 150 } }],
    ['es-tma-851-2021', {}],
    ['es-tma-851-2021', { panel: { width: 260, height: 150 } }],
  ])('is where %s wants the braille, on %j', (id, more) => {
    const drawn = made(room('Kiln Room 204', more), [id])
    const dots = circlesIn(drawn.drawing)
    const { height } = sizeOf(drawn.drawing)
    const left = Math.min(...dots.map(({ x, r }) => x - r))
    const below = height - Math.max(...dots.map(({ y, r }) => y + r))
    for (const offset of [left, below]) {
      expect(offset).toBeGreaterThanOrEqual(10)
      expect(offset).toBeLessThanOrEqual(30)
    }
    expect(checked(drawn, [id]).summary.fail).toBe(0)
  })
})

describe('wishes', () => {
  test('a border keeps 3/8 inch from characters and braille (703.2.7, 703.3.2)', () => {
    const drawn = made(room('Kiln Room', { border: { width: 2 } }), ADA)
    const report = checked(drawn, ADA)
    expect(notPassing(report)).toEqual([])
    for (const slug of ['703.2.7/border-clearance', '703.3.2/border-clearance'])
      expect(report.findings.find(({ requirement }) => requirement === `us-ada-2010/${slug}`)?.verdict).toBe('pass')
  })

  test('centred lines are centred in the United States, and refused in Australia, which asks for flush left (S15C3)', () => {
    const order = room('', { lettering: [{ lines: ['Kiln Room', '204'], alignment: 'centred' }] })
    const drawn = made(order, ['us-ada-2010', 'us-ca-2019'])
    expect(notPassing(checked(drawn, ['us-ada-2010', 'us-ca-2019']))).toEqual([])
    const refusal = refusalOf(() => made(order, ['au-ncc-2022']))
    expect(refusal.conflicts?.[0].requirements).toEqual(['au-ncc-2022/S15C3/alignment', 'au-ncc-2022/S15C6/alignment'])
  })

  test('characters to be read from afar are higher', () => {
    const near = made(room('Kiln'), ADA)
    const far = made(room('Kiln', { installation: { viewingDistance: 12_000 } }), ADA)
    const height = (drawn: typeof near) => checked(drawn, ADA).reading.lettering[0].characterHeight ?? 0
    expect(height(near)).toBeCloseTo(20, 2)
    // One inch for 25 feet: common practice, no source.
    expect(height(far)).toBeCloseTo(40, 2)
  })

  test('a height that no standard allows is refused with its requirement', () => {
    const refusal = refusalOf(() => made(room('', { lettering: [{ text: 'Kiln', characterHeight: 60 }] }), ADA))
    expect(refusal.conflicts?.[0].requirements).toEqual(['us-ada-2010/703.2.5/character-height'])
  })

  test.each(['DejaVu Sans', 'DejaVu Sans Condensed', 'Arimo', 'Open Sans'])('%s passes', (family) => {
    const drawn = made(room('', { lettering: [{ text: 'Glaze Lab 5', typeface: { family } }] }), ADA)
    expect(notPassing(checked(drawn, ADA))).toEqual([])
  })

  test('a typeface with serifs is refused (703.2.3), and one that does not ship is named', () => {
    const of = (family: string) => room('', { lettering: [{ text: 'Kiln', typeface: { family } }] })
    expect(refusalOf(() => made(of('Tinos'), ADA)).conflicts?.[0].requirements).toContain('us-ada-2010/703.2.3/style')
    expect(refusalOf(() => made(of('Nowhere Sans'), ADA)).errors[0].pointer).toBe('/sign/lettering/0/typeface/family')
  })

  test('a panel that is light or dark gets characters that stand out (703.5.1)', () => {
    for (const colour of ['#ffffff', '#101010', '#777777', 'gold', 'navy'])
      expect(notPassing(checked(made(room('Kiln', { panel: { colour } }), ADA), ADA))).toEqual([])
  })

  test('a field for a pictogram is six inches high (703.6.1), clear, and above its descriptor (703.6.3)', () => {
    const order = room('Women', { pictogram: { meaning: 'women', colour: 'white', fieldColour: 'black' } })
    const report = checked(made(order, ADA), ADA)
    expect(notPassing(report)).toEqual([])
    const field = report.findings.find(({ requirement }) => requirement === 'us-ada-2010/703.6.1/field-height')
    expect(field?.verdict).toBe('pass')
  })
})

describe('what excludes each other', () => {
  test('contracted and uncontracted braille, gaps and clearances: the United States and Australia', () => {
    const refusal = refusalOf(() => made(room('Seed Library'), ['us-ada-2010', 'au-ncc-2022']))
    expect(refusal.type).toBe('cannot-satisfy')
    expect(refusal.conflicts?.map(({ requirements }) => requirements)).toEqual([
      ['us-ada-2010/703.3/contracted', 'au-ncc-2022/S15C6/uncontracted'],
      ['us-ada-2010/703.3.1/capitals', 'au-ncc-2022/S15C6/capitals-kept'],
      ['au-ncc-2022/S15C6/text-gap', 'us-ada-2010/703.3.2/character-clearance'],
    ])
  })

  test('spacings: California and Korea', () => {
    const refusal = refusalOf(() => made(room('Kiln'), ['us-ca-2019', 'kr-2020']))
    expect(refusal.conflicts?.map(({ quantity }) => quantity)).toEqual(['braille.dotSpacing', 'braille.cellSpacing'])
  })

  test('what only the finished product shows keeps no drawing from being made', () => {
    expect(made(room('Kiln'), ['us-ada-2010', 'au-aba']).drawing).toContain('<svg')
  })
})

test('the same order gives the same bytes', () => {
  expect(made(room('Kiln Room 204'), ADA)).toEqual(made(room('Kiln Room 204'), ADA))
})

test('markup in a text is text', () => {
  const { drawing } = made(room('A<B&"C"'), ADA)
  expect(drawing).toContain('<title>A&lt;B&amp;&quot;C&quot;</title>')
})

test('a text without braille is refused', () => {
  expect(refusalOf(() => made(room('☃'), ADA)).type).toBe('untranslatable-text')
})
