import { describe, expect, it } from 'vitest'
import { boxOfPoints } from '../../../src/geometry/box.js'
import { measureLetters, type LetterMeasures } from '../../../src/recognise/letters/measure.js'
import { CAPITAL, glyphOf, heldOutFaces, type Face } from './faces.js'
import { LEADING, readDrawn, setText, type DrawnOutline } from './setting.js'

/** Outside checks: boxes of the glyphs as the font files hold them (read by fontkit), and rectangles of known size. */

const faceNamed = (name: string): Face => {
  const face = heldOutFaces().find((f) => f.name === name)
  if (!face) throw new Error(name)
  return face
}
const sans = faceNamed('DejaVuSans')

const measured = (outlines: readonly DrawnOutline[], rotation?: number): LetterMeasures => {
  const reading = readDrawn(outlines, { rotation })
  return measureLetters(reading.lines, reading.lie)
}
const boxIn = (face: Face, character: string) => {
  const box = boxOfPoints(glyphOf(face, character)?.contours.flat() ?? [])
  if (!box) throw new Error(character)
  return box
}

describe('sizes of the characters', () => {
  const { characterHeight, characterProportion, strokeThickness, style } = measured(setText(sans, ['VISION']).outlines)

  it('height of the I', () => {
    expect(characterHeight).toMatchObject({ method: 'height of the drawn capital I', count: 2 })
    expect('value' in characterHeight && characterHeight.value).toBeCloseTo(CAPITAL, 6)
  })

  it('width of the O over the height of the I', () => {
    expect('value' in characterProportion && characterProportion.value).toBeCloseTo(boxIn(sans, 'O').width / CAPITAL, 6)
  })

  it('stem of the I, which in this face is a plain bar', () => {
    expect('value' in strokeThickness && strokeThickness.value).toBeCloseTo(boxIn(sans, 'I').width, 6)
  })

  it('sans-serif', () => expect(style).toMatchObject({ value: 'sans-serif' }))

  it('without an I, flat-topped capitals, and it says which', () => {
    const without = measured(setText(sans, ['HOTEL']).outlines).characterHeight
    expect(without).toMatchObject({ method: 'height of the flat-topped capitals E, H, L, T, for want of a capital I' })
    expect('value' in without && without.value).toBeCloseTo(boxIn(sans, 'H').height, 6)
  })

  it('never from round capitals', () => {
    expect(measured(setText(sans, ['COQ 8']).outlines).characterHeight).toMatchObject({ unknown: 'unreadable' })
  })

  it('no O, no proportion', () => {
    expect(measured(setText(sans, ['EXIT']).outlines).characterProportion).toMatchObject({ unknown: 'unreadable' })
  })
})

describe('gaps and lines', () => {
  // Between straight stems the gap is the two side bearings and the tracking.
  const gap = (face: Face, tracking: number) => {
    const [h, i] = [glyphOf(face, 'H'), glyphOf(face, 'I')]
    const [left, right] = [boxIn(face, 'H'), boxIn(face, 'I')]
    return (h?.advance ?? NaN) - left.x - left.width + tracking * CAPITAL + right.x + 0 * (i?.advance ?? 0)
  }

  it.each([0, 0.1, 0.3])('closest gap with tracking %d', (tracking) => {
    const { characterSpacing } = measured(setText(sans, ['HIHI HIH'], tracking).outlines)
    expect(characterSpacing).toMatchObject({ count: 5 })
    expect('value' in characterSpacing && characterSpacing.min).toBeCloseTo(gap(sans, tracking), 6)
    expect('value' in characterSpacing && characterSpacing.max).toBeCloseTo(gap(sans, tracking), 6)
  })

  it('distance of baselines, also when turned', () => {
    const { outlines } = setText(sans, ['HOTEL', 'LOUNGE', 'BAR'])
    const quarter = outlines.map((o) => ({ ...o, outline: o.outline.map(({ x, y }) => ({ x: -y, y: x })) }))
    for (const { baselineSpacing } of [measured(outlines), measured(quarter, 90)]) {
      expect(baselineSpacing).toMatchObject({ count: 2 })
      expect(baselineSpacing && 'value' in baselineSpacing && baselineSpacing.value).toBeCloseTo(LEADING * CAPITAL, 6)
    }
  })
})

describe('style', () => {
  it.each(['LibreBaskerville_400Regular', 'Gelasio_700Bold', 'DejaVuSerif'])('%s has serifs', (name) => {
    expect(measured(setText(faceNamed(name), ['HIMH']).outlines).style).toMatchObject({ value: 'serif' })
  })

  it.each(
    heldOutFaces()
      .filter((f) => f.kind === 'sans')
      .map((f) => f.name),
  )('%s has none', (name) => {
    expect(measured(setText(faceNamed(name), ['THIRD EXIT']).outlines).style).toMatchObject({ value: 'sans-serif' })
  })

  it('a slant is oblique, and strokes are measured square to the stem', () => {
    const slant = (10 * Math.PI) / 180
    const { outlines } = setText(sans, ['HILL'])
    const leaning = outlines.map((o) => ({
      ...o,
      outline: o.outline.map(({ x, y }) => ({ x: x - y * Math.tan(slant), y })),
    }))
    const { style, strokeThickness } = measured(leaning)
    expect(style).toMatchObject({ value: 'oblique' })
    expect('value' in strokeThickness && strokeThickness.value).toBeCloseTo(boxIn(sans, 'I').width * Math.cos(slant), 3)
  })
})
