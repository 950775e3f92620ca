import { describe, expect, test } from 'vitest'
import { findStandards } from '../../src/standards/catalogue.js'

/** What clients rely on in the table of the 2010 ADA Standards. Its figures are held against the source in figures.test.ts. */

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

describe('the table of the 2010 ADA Standards', () => {
  test('has every row that the contract names', () => {
    expect(NAMED.filter((slug) => rowOf(slug) === undefined)).toEqual([])
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

  test('was read in the documents themselves', () => {
    for (const { citation } of ada.requirements) expect(['verified', 'our-reading']).toContain(citation.confidence)
  })
})
