import { describe, expect, test } from 'vitest'
import { QUANTITIES } from '../../src/measure/measurer.js'
import { findStandards } from '../../src/standards/catalogue.js'
import type { Limit } from '../../src/standards/standard.js'
import { EXCEPTIONS, FIGURES, type Figure } from './ada-figures.js'

const [ada] = findStandards(['us-ada-2010'])
const rowOf = (slug: string) => ada.requirements.find((r) => r.requirement === `us-ada-2010/${slug}`)

/** Names that clients rely on (the contract of the service). */
const NAMED = `703.2/repeated-in-braille 703.2.1/relief 703.2.2/case 703.2.3/style 703.2.4/proportion
  703.2.5/character-height 703.2.6/stroke-thickness 703.2.7/character-spacing-min 703.2.7/character-spacing-max
  703.2.7/character-spacing-base-min 703.2.7/border-clearance 703.2.8/line-spacing 703.3/contracted 703.2/wording
  703.3.1/dot-base-diameter 703.3.1/dot-spacing 703.3.1/cell-spacing 703.3.1/dot-height 703.3.1/line-spacing
  703.3.1/dot-shape 703.3.1/capitals 703.3.2/below-text 703.3.2/character-clearance 703.3.2/border-clearance
  703.4.1/lowest-baseline 703.4.1/highest-baseline 703.4.2/side 703.4.2/floor-space 703.5.1/finish 703.5.1/contrast
  703.5.2/case 703.5.3/style 703.5.4/proportion 703.5.5/character-height 703.5.6/height-above-floor
  703.5.7/stroke-thickness 703.5.8/character-spacing 703.5.9/line-spacing 703.6.1/field-height 703.6.1/field-clear
  703.6.2/finish 703.6.2/contrast 703.6.3/descriptor 407.2.3.1/character-height`.split(/\s+/u)

const PRODUCT = ['703.2/edges', '703.2.1/relief', '703.3.1/dot-height', '703.3.1/dot-shape']
const FINISHES = ['703.5.1/finish', '703.6.2/finish', '703.7.1/finish']
const ON_SITE =
  /^us-ada-2010\/(703\.4|703\.5\.5|703\.5\.6|307|216\.5|407\.2\.3\.1\/both-jambs|407\.4\.7\.1\.1\/location)/u

function expectLimit(limit: Limit | undefined, figure: Figure) {
  if (limit?.kind === 'ratio')
    expect({ min: limit.min, max: limit.max }).toEqual({ min: undefined, max: undefined, ...figure.share })
  else if (limit?.kind === 'length')
    expect({ in: limit.in, mm: limit.mm }).toEqual({ in: figure.inches, mm: figure.millimetres })
  else expect(limit?.kind).toBe('length or ratio')
}

describe('the table of the 2010 ADA Standards', () => {
  test.each(FIGURES)('$row has the printed figures', (figure) => expectLimit(rowOf(figure.row)?.limit, figure))

  test.each(EXCEPTIONS)('$row has the printed figures when $when', (figure) => {
    expectLimit(rowOf(figure.row)?.exceptions.find((e) => e.when === figure.when)?.limit, figure)
  })

  test('has no interval row whose figures were not typed a second time', () => {
    const intervals = ada.requirements.filter((r) => r.limit.kind === 'length' || r.limit.kind === 'ratio')
    const typed = FIGURES.map((f) => `us-ada-2010/${f.row}`)
    expect(intervals.map((r) => r.requirement).sort()).toEqual(typed.sort())
  })

  test('has every row that the contract names', () => {
    expect(NAMED.filter((slug) => rowOf(slug) === undefined)).toEqual([])
  })

  test('has each row once, under its own clause', () => {
    const ids = ada.requirements.map((r) => r.requirement)
    expect(new Set(ids).size).toBe(ids.length)
    for (const r of ada.requirements) expect(r.requirement.split('/')[1]).toBe(r.clause)
  })

  test('puts every row in the stage of the contract', () => {
    for (const { requirement, stage } of ada.requirements) {
      const slug = requirement.replace('us-ada-2010/', '')
      const expected = [...PRODUCT, ...FINISHES].includes(slug)
        ? 'product'
        : ON_SITE.test(requirement)
          ? 'site'
          : 'drawing'
      expect(`${requirement} ${stage}`).toBe(`${requirement} ${expected}`)
    }
  })

  test('asks only for quantities that are defined, in the unit of its limit', () => {
    const units: Record<string, string> = { length: 'mm', ratio: 'ratio', 'one-of': 'kind', yes: 'truth', 'by-viewing-distance': 'mm' }
    for (const { requirement, quantity, limit } of ada.requirements)
      expect(`${requirement} ${QUANTITIES[quantity]?.unit}`).toBe(`${requirement} ${units[limit.kind]}`)
  })

  test('cites for every row a source that is listed, and none from memory or in conflict', () => {
    for (const { citation } of ada.requirements) {
      expect(Object.keys(ada.sources)).toContain(citation.source)
      expect(['verified', 'our-reading']).toContain(citation.confidence)
    }
  })

  test('prints millimetres that are the inches, rounded as the text rounds them', () => {
    for (const { requirement, limit } of ada.requirements) {
      if (limit.kind !== 'length') continue
      for (const end of ['min', 'max'] as const) {
        const [inches, millimetres] = [limit.in?.[end], limit.mm[end]]
        if (inches === undefined || millimetres === undefined) continue
        expect(Math.abs(inches * 25.4 - millimetres) / millimetres, requirement).toBeLessThan(0.06)
      }
    }
  })
})
