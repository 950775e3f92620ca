import { describe, expect, it } from 'vitest'
import { findStandards } from '../../src/standards/catalogue.js'
import { commonWindows } from '../../src/windows/common.js'
import type { Setting } from '../../src/windows/setting.js'

/**
 * The tables themselves. Figures: 2010 ADA Standards, table 703.3.1 (inches, times 25.4); Australian Braille Authority, specifications for
 * braille on signage (brailleaustralia.org/?p=60); Korean Braille Regulations, notice of 10 September 2020, as newspim.com/news/view/20200910000150
 * reports it; California Building Code 2019, table 11B-703.3.1 (corada.com).
 */

const SHARED = ['us-ada-2010', 'au-aba', 'kr-2020']
const ROOM: Setting = { use: 'permanent-room' }

function windowsOf(ids: string[], setting = ROOM) {
  const { windows } = commonWindows(findStandards(ids), setting)
  return (quantity: string) => {
    const region = windows.find((window) => window.quantity === `braille.${quantity}`)?.region
    const { min, max } = region && 'ends' in region ? region.ends : {}
    return [min, max].map((end) => Number(end?.toFixed(6)))
  }
}

describe('the United States, Australia and Korea', () => {
  it('share these sizes of braille', () => {
    const of = windowsOf(SHARED)
    expect(of('dotBaseDiameter')).toEqual([1.5, 1.6])
    expect(of('dotHeight')).toEqual([0.635, 0.9])
    expect(of('dotSpacing')).toEqual([2.3, 2.5])
    expect(of('cellSpacing')).toEqual([6.1214, 6.9])
    expect(of('lineSpacing')).toEqual([10.033, 10.16])
  })

  it('tie the height of a dot to its base by the radius of its dome', () => {
    const { domes } = commonWindows(findStandards(SHARED), ROOM)
    const corners = domes?.corners.map(({ diameter, heights }) => [
      diameter,
      heights.map(({ min, max }) => [min?.toFixed(3), max?.toFixed(3)]),
    ])
    expect(corners).toEqual([
      [
        1.5,
        [
          ['0.635', '0.637'],
          ['0.883', '0.900'],
        ],
      ],
      [1.6, [['0.683', '0.900']]],
    ])
  })

  it('allow wider cells where the braille is on PVC, as far as Australia does', () => {
    expect(windowsOf(SHARED, { ...ROOM, carrier: 'pvc' })('cellSpacing')).toEqual([6.1214, 7])
    expect(windowsOf(SHARED, { ...ROOM, carrier: 'paper' })('cellSpacing')).toEqual([6.1214, 6.9])
  })

  it('are excluded by California, whose figures are the upper ends of the federal ranges', () => {
    const { conflicts, windows } = commonWindows(findStandards([...SHARED, 'us-ca-2019']), ROOM)
    const pairs = (quantity: string) =>
      conflicts
        .filter(({ quantities }) => quantities.includes(quantity))
        .map(({ rows }) => rows.map(({ standard, limit }) => [standard.id, limit.clause]))
    for (const quantity of ['braille.dotSpacing', 'braille.cellSpacing']) {
      const found = pairs(quantity)
      expect(found.map((pair) => pair.map(([id]) => id))).toEqual([
        ['au-aba', 'us-ca-2019'],
        ['kr-2020', 'us-ca-2019'],
      ])
      for (const pair of found) expect(pair[1]?.[1]).toMatch(/^11B-703\.3\.1/)
      expect(windows.map((window) => window.quantity)).not.toContain(quantity)
    }
  })
})

describe('California and the 2010 ADA Standards', () => {
  it('meet at the upper ends of the federal ranges', () => {
    const of = windowsOf(['us-ada-2010', 'us-ca-2019'])
    expect(of('dotSpacing')).toEqual([2.54, 2.54])
    expect(of('cellSpacing')).toEqual([7.62, 7.62])
  })
})
