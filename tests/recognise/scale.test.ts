import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../src/drawing/drawing.js'
import { doubtOfScale } from '../../src/recognise/scale.js'
import { drawing } from './built.js'

/** Dots of true braille (2.4 mm and 6.9 mm, inside Table 703.3.1 of the 2010 ADA Standards), read at a wrong scale. */
const dots = (factor: number) =>
  [0, 1, 2, 3].flatMap((i) => [
    { x: 6.9 * i * factor, y: 0 },
    { x: 6.9 * i * factor, y: 2.4 * factor },
  ])
const at = (from: Drawing['scale']['from'], millimetresPerUnit = 25.4 / 96) =>
  drawing([], [], { scale: { from, millimetresPerUnit } })

describe('the doubt about the scale', () => {
  it('names the scale at which the dots would be true', () => {
    const points = doubtOfScale(at('css-px'), [], dots(72 / 96))
    expect(points).toHaveLength(1)
    expect(points[0]).toMatchObject({ about: 'scale', text: expect.stringContaining('72 units per inch') as string })
    const millimetres = doubtOfScale(at('css-px'), [], dots(25.4 / 96))
    expect(millimetres.map((a) => a.text)).toEqual([expect.stringContaining('1 unit = 1 mm')])
  })
  it('is not raised of dots that are true, of a scale that the file or the client gives, or without dots', () => {
    expect(doubtOfScale(at('css-px'), [], dots(1))).toEqual([])
    expect(doubtOfScale(at('units'), [], dots(72 / 96))).toEqual([])
    expect(doubtOfScale(at('option'), [], dots(72 / 96))).toEqual([])
    expect(doubtOfScale(at('css-px'), [], [])).toEqual([])
    expect(doubtOfScale(at('css-px'), [], [{ x: 1, y: 1 }])).toEqual([])
  })
  it('goes by what was read, when braille was read', () => {
    const dotSpacing = { value: 2.4, basis: 'drawn' as const }
    const block = { dotSpacing } as Parameters<typeof doubtOfScale>[1][number]
    expect(doubtOfScale(at('css-px'), [block], dots(72 / 96))).toEqual([])
  })
  it('is not raised of dots that are true at no common scale', () => {
    expect(doubtOfScale(at('css-px'), [], dots(2.7 / 2.4))).toEqual([])
  })
})
