import { describe, expect, it } from 'vitest'
import { checked, finding, kiln, PRODUCT, verdictOf } from './kiln.js'

// A drawing is what will be made: what it does not show, or shows off the panel, does not pass because the description has it.
// The rows are those of the 2010 ADA Standards; the contract names the reasons and where things are listed.

const BRAILLE_ROWS = ['703.2/repeated-in-braille', '703.2/wording', '703.3.1/dot-spacing', '703.3.1/cell-spacing']
const SAID = { text: 'kiln room', dotBaseDiameter: 1.55, dotSpacing: 2.4, cellSpacing: 6.9, origin: { x: 20, y: 65 } }

/** The same on a page that is larger than the panel. */
const onSheet = (drawing: string): string =>
  drawing.replace(
    'width="200mm" height="110mm" viewBox="0 0 200 110"',
    'width="300mm" height="200mm" viewBox="0 0 300 200"',
  )

describe('a drawing without braille', () => {
  it.each([
    ['no dots', kiln({ cells: '⠀' })],
    ['dots that are not displayed', kiln({ braille: 'id="braille" display="none"' })],
    ['dots that are wholly transparent', kiln({ braille: 'id="braille" opacity="0"' })],
  ])('with %s fails, whatever the description says of dot heights', (_, drawing) => {
    const report = checked(drawing, PRODUCT)
    expect(verdictOf(report, '703.2/repeated-in-braille')).toBe('fail')
    expect(report.assumptions.some((a) => a.about === 'conflict' && a.text.includes('shows no braille'))).toBe(true)
  })

  it.each([
    ['display="none"', 'It is not displayed.'],
    ['opacity="0"', 'It is wholly transparent.'],
    ['style="display:none"', 'It is not displayed.'],
  ])('that has a part with %s lists it', (hidden, why) => {
    const report = checked(kiln({ braille: `id="braille" ${hidden}` }), PRODUCT)
    expect(report.ignored).toEqual([{ source: { id: 'braille', line: 4, column: 1 }, why }])
  })

  it('is undecided where the description says what braille there is', () => {
    const report = checked(kiln({ cells: '⠀' }), { ...PRODUCT, braille: [{ ...PRODUCT.braille[0], ...SAID }] })
    for (const row of BRAILLE_ROWS)
      expect(finding(report, row)).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
    expect(report.stages.drawing).toBe('undetermined')
  })
})

describe('described values that the drawing contradicts', () => {
  it('are judged, and a caveat says that the verdict rests on them', () => {
    const drawing = kiln({ dot: (x, y) => `<circle cx="${x}" cy="${y}" r="0.9"/>` })
    const report = checked(drawing, { ...PRODUCT, braille: [{ ...PRODUCT.braille[0], dotBaseDiameter: 1.55 }] })
    expect(verdictOf(report, '703.3.1/dot-base-diameter')).toBe('pass')
    expect(report.caveats.join(' ')).toMatch(/may fail/)
    expect(checked(drawing, PRODUCT).caveats.join(' ')).not.toMatch(/may fail/)
    expect(verdictOf(checked(drawing, PRODUCT), '703.3.1/dot-base-diameter')).toBe('fail')
  })
})

describe('characters and braille over the edge of the panel', () => {
  it('are not judged as if they were on it', () => {
    const report = checked(kiln({ textAt: 90 }), { ...PRODUCT, panel: { finish: 'matte', colour: '#20303c' } })
    expect(report.stages.drawing).toBe('undetermined')
    for (const row of ['703.2/wording', '703.2.5/character-height', '703.3.2/below-text'])
      expect(finding(report, row)).toMatchObject({ verdict: 'undetermined', reason: 'unreadable' })
    expect(finding(report, '703.2/wording').message).toMatch(/over the edge of the panel/)
  })

  it('are told of braille as well', () => {
    const drawing = kiln({ braille: 'id="braille" transform="translate(140,0)"' })
    const report = checked(onSheet(drawing), PRODUCT)
    expect(finding(report, '703.3.1/dot-spacing')).toMatchObject({ verdict: 'undetermined', reason: 'unreadable' })
  })

  it.each([
    ['the page', 'It lies wholly outside of the page.', (drawing: string) => drawing],
    ['the panel', 'The text lies outside the panel.', onSheet],
  ])('are listed where they lie wholly outside %s', (_, why, sheet) => {
    const note = '<text x="20" y="140" font-family="Open Sans" font-size="24" letter-spacing="2.2">Note</text>'
    const report = checked(sheet(kiln({ more: note })))
    expect(report.ignored.map((one) => one.why)).toContain(why)
    expect(report.reading.lettering.map(({ text }) => text)).toEqual(['KILN ROOM'])
  })
})

describe('what is not understood', () => {
  const IMAGE = '<image x="100" y="80" width="50" height="20" href="data:image/png;base64,AAAA"/>'
  const TEXT_PATH =
    '<path id="p" fill="none" d="M0 100h100"/><text font-size="10" font-family="Open Sans"><textPath href="#p">HELLO</textPath></text>'

  it.each([
    ['a picture', kiln({ more: IMAGE })],
    ['text along a path', kiln({ more: TEXT_PATH })],
  ])('%s stands in what was ignored, with its line, and leaves rows open', (_, drawing) => {
    const report = checked(drawing, PRODUCT)
    const listed = report.ignored.filter(({ why }) => why.endsWith('What depends on it is left undecided.'))
    expect(listed).toHaveLength(1)
    expect(listed[0].source.line).toBe(5)
    expect(verdictOf(report, '703.2/wording')).toBe('undetermined')
  })

  it.each([
    ['its own data-part', kiln({ more: IMAGE.replace('<image', '<image data-part="ignore"') }), {}],
    ['a group round it', kiln({ more: `<g data-part="ignore">${IMAGE}</g>` }), {}],
    ['the request', kiln({ more: IMAGE.replace('<image', '<image id="logo"') }), { part: { logo: 'ignore' as const } }],
    [
      'a group that is masked',
      kiln({ more: '<g data-part="ignore" mask="url(#m)"><mask id="m"/><circle cx="160" cy="90" r="5"/></g>' }),
      {},
    ],
  ])('is left out when %s says that it is to be ignored', (_, drawing, options) => {
    const report = checked(drawing, PRODUCT, options)
    expect(report.stages.drawing).toBe('pass')
  })

  it('says who said so', () => {
    const report = checked(kiln({ more: IMAGE.replace('<image', '<image data-part="ignore"') }), PRODUCT)
    expect(report.ignored.map(({ why }) => why)).toEqual(['It is to be ignored: data-part="ignore".'])
  })
})

describe('shapes that are named braille and are no dots', () => {
  const square = (x: number, y: number) => `<rect x="${x - 0.775}" y="${y - 0.775}" width="1.55" height="1.55"/>`

  it('are not taken for no braille', () => {
    const report = checked(kiln({ dot: square }), PRODUCT)
    for (const row of [...BRAILLE_ROWS, '703.3.1/dot-base-diameter'])
      expect(finding(report, row)).toMatchObject({ verdict: 'undetermined', reason: 'unreadable' })
    expect(report.ignored.filter(({ why }) => why.startsWith('It is named braille'))).toHaveLength(24)
  })

  it('leave the rows open when one stands among true dots', () => {
    let count = 0
    const drawing = kiln({ dot: (x, y) => (count++ === 6 ? square(x, y) : `<circle cx="${x}" cy="${y}" r="0.775"/>`) })
    expect(verdictOf(checked(drawing, PRODUCT), '703.2/wording')).toBe('undetermined')
  })

  it('are a guide when they are large and the braille was read', () => {
    const guide = '<rect data-part="braille" x="15" y="60" width="100" height="15" fill="none" stroke="#fff"/>'
    expect(checked(kiln({ more: guide }), PRODUCT).stages.drawing).toBe('pass')
  })
})

describe('the contrast of text in a typeface that is not known', () => {
  // WCAG 2.2, definition of contrast ratio: white on #20303c, computed by hand from the relative luminances: 13.55.
  it('follows from its fill and what is painted behind its place', () => {
    const report = checked(kiln({ family: 'An Unknown Face' }), PRODUCT)
    expect(finding(report, '703.5.1/contrast')).toMatchObject({ verdict: 'pass' })
    expect(finding(report, '703.5.1/contrast').measured?.value).toBeCloseTo(13.55, 2)
  })

  it('is not known where nothing is painted there', () => {
    const drawing = kiln({ family: 'An Unknown Face' }).replace('fill="#20303c"', 'fill="none" stroke="#000"')
    expect(verdictOf(checked(drawing, PRODUCT), '703.5.1/contrast')).toBe('undetermined')
  })
})

describe('the clearance below characters whose outlines are not known', () => {
  // 2010 ADA Standards 703.3.2: 9.5 mm from the raised characters, and Q reaches below its baseline.
  const arial = (y: number) => kiln({ family: 'Arial' }).replace('y="45"', `y="${y}"`)
  const clearance = (y: number) => finding(checked(arial(y), PRODUCT), '703.3.2/character-clearance')

  it('is open where the baseline keeps it, for the characters may not', () => {
    expect(clearance(54.3)).toMatchObject({ verdict: 'undetermined', reason: 'missing-fact' })
    expect(clearance(45).verdict).toBe('undetermined')
  })

  it('fails where even the baseline is too near', () => {
    expect(clearance(60).verdict).toBe('fail')
  })
})
