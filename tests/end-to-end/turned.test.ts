import { describe, expect, it } from 'vitest'
import { checked, finding, kiln, PANEL, PRODUCT } from './kiln.js'

/** The sign of kiln.ts turned on its page: sizes are of the sign, which stays what it was. Its words and sizes are invented. */

const turned = (degrees: number, changes: Parameters<typeof kiln>[0] = {}) =>
  kiln({ ...changes, all: `transform="rotate(${degrees} 100 55)"` }).replace(
    'width="200mm" height="110mm" viewBox="0 0 200 110"',
    'width="300mm" height="300mm" viewBox="-50 -95 300 300"',
  )

describe('a sign that is drawn turned', () => {
  it.each([0, 17, 90, 133.4, 180])('by %d degrees: the plate keeps its size', (degrees) => {
    const { width, height } = checked(turned(degrees), PRODUCT).reading.panel
    const long = degrees === 90 ? height : width
    const [most, least] = [Math.max(width ?? 0, height ?? 0), Math.min(width ?? 0, height ?? 0)]
    expect(most).toBeCloseTo(PANEL.width, 6)
    expect(least).toBeCloseTo(PANEL.height, 6)
    if (degrees <= 90) expect(long).toBeCloseTo(PANEL.width, 6)
  })

  it.each([0, 17, 133.4])(
    'by %d degrees: a border that is a stroke keeps its distance from the characters',
    (degrees) => {
      const border =
        '<rect id="border" x="6" y="6" width="188" height="98" fill="none" stroke="#ffffff" stroke-width="2"/>'
      const { measured } = finding(checked(turned(degrees, { more: border }), PRODUCT), '703.3.2/border-clearance')
      // The dots of dots 1 stand at x = 20 and have a diameter of 1.6 at most; the inner edge of the stroke is at x = 7.
      expect(measured?.value).toBeCloseTo(
        finding(checked(turned(0, { more: border }), PRODUCT), '703.3.2/border-clearance').measured?.value as number,
        6,
      )
      expect(measured?.value).toBeGreaterThan(12)
      expect(measured?.value).toBeLessThan(13)
    },
  )

  it.each([0, 17])('by %d degrees: characters over its edge are not passed', (degrees) => {
    const report = checked(turned(degrees, { textAt: -12 }), PRODUCT)
    expect(finding(report, '703.2.5/character-height')).toMatchObject({ verdict: 'undetermined', reason: 'unreadable' })
    expect(report.unread.map(({ why }) => why).join(' ')).toContain('over the edge of the panel')
  })

  it.each([0, 17])('by %d degrees: characters inside it are not said to reach over', (degrees) => {
    expect(checked(turned(degrees), PRODUCT).unread).toEqual([])
  })
})
