import { describe, expect, it } from 'vitest'
import { check } from '../../src/check.js'
import { SignDescription } from '../../src/sign/description.js'
import { PUMP_ROOM, translator, withValues } from '../measure/signs.js'

/**
 * Plane geometry: a circle is widest at its middle, so a part of a ball higher than its half is wider above its base. Sizes are
 * invented; those that overhang keep the limits of the 2010 ADA Standards, 703.3.1, all the same.
 */

function caveats(values: Record<string, unknown>): string {
  const sign = SignDescription.parse(withValues(PUMP_ROOM, values))
  const options = { use: sign.use, decisionRule: 'simple', unitSystem: 'printed', language: 'en' } as const
  return check({ sign, standards: ['us-ada-2010'], options }, translator).caveats.join('\n')
}

const dots = (dotBaseDiameter: number, dotHeight: number, more: Record<string, unknown> = {}): string =>
  caveats({ 'braille.0.dotBaseDiameter': dotBaseDiameter, 'braille.0.dotHeight': dotHeight, ...more })

describe('a dot higher than half its base is wide', () => {
  it('is told, with its sizes', () => {
    expect(dots(1.5, 0.9)).toContain('Dots 0.9 mm high on a base 1.5 mm wide are higher than half their base is wide')
    expect(dots(1.5, 0.75)).not.toContain('overhangs')
    expect(dots(1.6, 0.75)).not.toContain('overhangs')
  })

  it('is told of shapes that may be part of a ball only', () => {
    for (const shape of ['flat', 'pointed'])
      expect(dots(1.5, 0.9, { 'braille.0.dotShape': shape })).not.toContain('overhangs')
    expect(dots(1.5, 0.9, { 'braille.0.dotShape': undefined })).toContain('overhangs')
  })

  it('is told of readings when the lowest of them is too high', () => {
    const read = (...values: number[]) => ({ measured: [{ quantity: 'braille.dotHeight', values, unit: 'mm' }] })
    expect(dots(1.5, 0.7, read(0.8, 0.85))).toContain('Dots 0.8 mm high')
    expect(dots(1.5, 0.7, read(0.7, 0.85))).not.toContain('overhangs')
  })
})
