import { describe, expect, it } from 'vitest'
import { checked, finding, kiln, PRODUCT, verdictOf } from './kiln.js'
import { drawingOf } from './truth.js'

// How braille and letters lie to each other. The rows are 703.2 and 703.3.2 of the 2010 ADA Standards: braille repeats the
// raised text, for one who reads it where it hangs, and stands below it.

const braille = (transform: string) => kiln({ braille: `id="braille" transform="${transform}"` })
const MIRROR = 'translate(98,0) scale(-1,1)'
const HALF_TURN = 'rotate(180 49 67.4)'
const blockOf = (drawing: string) => checked(drawing, PRODUCT).reading.braille[0]

describe('braille that does not lie as upright letters do', () => {
  it.each([
    ['mirrored', MIRROR, /mirrored relative to the letters/, /^Mirror the braille back/],
    ['upside down and mirrored', 'translate(0,134.8) scale(1,-1)', /mirrored relative to the letters/, /^Mirror/],
    ['upside down', HALF_TURN, /upside down relative to the letters/, /^Turn the braille by half a turn/],
  ])('%s: is a fault of the wording, not of its place', (_, transform, why, remedy) => {
    const report = checked(braille(transform), PRODUCT)
    const wording = finding(report, '703.2/wording')
    expect(wording.verdict).toBe('fail')
    expect(wording.message).toMatch(why)
    expect(wording.remedy?.text).toMatch(remedy)
    expect(verdictOf(report, '703.3.2/below-text')).toBe('pass')
    expect(report.caveats.join(' ')).not.toMatch(/back of a clear sheet/)
  })

  it('says the same of a typeface that is not known: its direction is', () => {
    const drawing = kiln({ braille: `id="braille" transform="${MIRROR}"`, family: 'An Unknown Face' })
    expect(verdictOf(checked(drawing, PRODUCT), '703.2/wording')).toBe('fail')
  })

  it('leaves it to a person where the letters were not read', () => {
    const drawing = braille(MIRROR).replace(/<text.*<\/text>/u, '<path d="M20 30h20l-5 15h-8z"/>')
    const described = { ...PRODUCT, lettering: [{ ...PRODUCT.lettering[0], text: 'KILN ROOM' }] }
    const report = checked(drawing, described)
    expect(finding(report, '703.2/wording')).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
    expect(report.assumptions.map((a) => a.about)).toContain('braille-orientation')
  })

  it('leaves braille across the letters to a person', () => {
    const report = checked(braille('translate(160,20) rotate(90) translate(-20,-65)'), PRODUCT)
    expect(finding(report, '703.2/wording')).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
  })

  it('and letters that are mirrored alone fail too', () => {
    const drawing = kiln().replace('<text ', '<text transform="translate(170,0) scale(-1,1)" ')
    const wording = finding(checked(drawing, PRODUCT), '703.2/wording')
    expect(wording.verdict).toBe('fail')
    expect(wording.message).toMatch(/letters are drawn mirrored/)
  })
})

describe('rotation of a mirrored block', () => {
  it.each([
    [MIRROR, 0, true],
    ['translate(0,134.8) scale(1,-1)', 180, true],
    [HALF_TURN, 180, false],
    ['', 0, false],
  ])('%s', (transform, rotation, mirrored) => {
    expect(blockOf(braille(transform))).toMatchObject({ rotation, mirrored })
  })
})

describe('a whole drawing', () => {
  // The word EXIT: its cells mirrored are cells of another word, so that only the outlined letters tell how it lies.
  it('mirrored, of a short word in outlines, is read as its letters lie', () => {
    const drawing = Buffer.from(drawingOf('hand-rgb-hsl')).toString('utf8')
    const [, open, inside] = /(<svg[^>]*>)([\s\S]*)<\/svg>/u.exec(drawing) ?? []
    const [x, , width] = (/viewBox="([^"]*)"/u.exec(open)?.[1] ?? '').split(/[ ,]+/u).map(Number)
    const mirrored = `${open}<g transform="translate(${2 * x + width},0) scale(-1,1)">${inside}</g></svg>`
    for (const [given, isMirrored] of [
      [drawing, false],
      [mirrored, true],
    ] as const) {
      const report = checked(given)
      expect(report.reading.braille[0]).toMatchObject({ rotation: 0, mirrored: isMirrored })
      for (const row of ['703.2/wording', '703.3.2/below-text']) expect(verdictOf(report, row)).toBe('pass')
    }
  })

  it('mirrored, is read as artwork for the back of clear sheet, and it is said', () => {
    const report = checked(kiln({ all: 'transform="translate(200,0) scale(-1,1)"' }), PRODUCT)
    for (const row of ['703.2/wording', '703.3.2/below-text', '703.3.1/dot-spacing', '703.2/repeated-in-braille'])
      expect(verdictOf(report, row)).toBe('pass')
    expect(report.reading.braille[0]).toMatchObject({ rotation: 0, mirrored: true })
    expect(report.caveats.join(' ')).toMatch(/back of a clear sheet/)
    expect(report.assumptions.map((a) => a.about)).toContain('braille-orientation')
  })

  it('turned by half, is read as it is', () => {
    const report = checked(kiln({ all: 'transform="rotate(180 100 55)"' }), PRODUCT)
    for (const row of ['703.2/wording', '703.3.2/below-text']) expect(verdictOf(report, row)).toBe('pass')
  })
})
