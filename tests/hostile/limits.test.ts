import { describe, expect, it } from 'vitest'
import { ENTITY_LIMITS, LARGEST_COORDINATE, LIMITS, SCALE_RANGE } from '../../src/drawing/limits.js'
import { readDrawing } from '../../src/drawing/read.js'
import { Refusal } from '../../src/refusal.js'
import { LIMIT_TABLES, limitsMarkdown } from '../../src/service/limits-page.js'
import { page, repeat } from './attacks/make.js'

/** Each limit of a drawing, met (and read) and passed by one step (and refused, with the limit and what was met). */

const refusalOf = (markup: string): Refusal | undefined => {
  try {
    readDrawing(new TextEncoder().encode(markup))
    return undefined
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
}

const inside = (tag: string, count: number) => `<${tag}>`.repeat(count) + `</${tag}>`.repeat(count)
/** A path of so many lines, in pieces that fit into attributes. */
const lines = (count: number) => {
  const most = 400_000
  const pieces = Array.from({ length: Math.ceil(count / most) }, (_, i) => Math.min(most, count - i * most))
  return pieces.map((n) => `<path d="M0 0${'h1'.repeat(n)}"/>`).join('')
}
/** Groups that refer to groups: `uses` references in all, each painting two elements. */
const uses = (count: number) => `<defs><g id="a"><circle r="1"/></g></defs>${'<use href="#a"/>'.repeat(count)}`
/** Shapes across the edge of a clip of many corners. How many edges each is held against is the affair of the clip's index. */
const clipped = (shapes: number) => {
  const corners = 2_000
  const polygon = `<polygon points="${repeat(corners, (i) => `${100 + 90 * Math.cos((2 * Math.PI * i) / corners)} ${50 + 45 * Math.sin((2 * Math.PI * i) / corners)} `)}"/>`
  return page(
    `<clipPath id="c">${polygon}</clipPath><g clip-path="url(#c)">${'<circle cx="100" cy="5" r="4"/>'.repeat(shapes)}</g>`,
  )
}
/** Dots one by one along a strip. */
const dotted = (dots: number) =>
  page(
    `<pattern id="p" width=".003" height="9" patternUnits="userSpaceOnUse"><circle cx=".0015" cy="4" r=".001"/></pattern><rect width="${dots * 0.003}" height="8" fill="url(#p)"/>`,
  )
/** References in a tree of eights, so that depth grows and elements do not. */
const nestedUses = (depth: number) => {
  // Each level is a group and a use: two elements of depth. The root, the first use and the circle are one each.
  const levels = Math.floor((depth - 3) / 2)
  const odd = (depth - 3) % 2
  const chain = repeat(levels, (i) => `<g id="g${i}"><use href="#g${i + 1}"/></g>`)
  return page(
    `<defs>${chain}<circle id="g${levels}" r="1"/></defs>${odd ? '<g>' : ''}<use href="#g0"/>${odd ? '</g>' : ''}`,
  )
}

/** Makes a drawing with so many of what is counted. */
const FIXTURES: Record<keyof typeof LIMITS, (count: number) => string> = {
  bytes: (count) => page('').padEnd(count, ' '),
  elements: (count) => page('<g/>'.repeat(count - 1)),
  depth: (count) => page(inside('g', count - 1)),
  attributesPerElement: (count) => page(`<g ${repeat(count, (i) => `a${i}="" `)}/>`),
  attributeLength: (count) => page(`<g id="${'a'.repeat(count)}"/>`),
  textLength: (count) => page(`<desc>${'a'.repeat(count)}</desc>`),
  renderedDepth: nestedUses,
  references: (count) => page(uses(count)),
  rendered: (count) => {
    // The root, then for each use: the use, the group and its circles.
    const circles = 97
    const each = circles + 2
    const whole = Math.floor((count - 1) / each)
    const rest = count - 1 - whole * each
    return page(
      `<defs><g id="a">${'<circle r="1"/>'.repeat(circles)}</g></defs>${'<use href="#a"/>'.repeat(whole)}${'<g/>'.repeat(rest)}`,
    )
  },
  pathSegments: (count) => page(lines(count)),
  dashes: (count) =>
    page(
      `<path d="M0 50h100" stroke="#000" stroke-linecap="round" stroke-width=".01" stroke-dasharray="0 ${100 / count}"/>`,
    ),
  clipEdges: clipped,
  styleSheetLength: (count) => page(`<style>${'a{}'.padEnd(count, ' ')}</style>`),
  styleSelectors: (count) => page(`<style>${repeat(count, (i) => `.a${i}{}`)}</style>`),
  selectorSteps: (count) => {
    // One selector that may hold for every element; how often it looks further is the style engine's own affair.
    const selectors = 1_000
    const elements = Math.round(count / selectors)
    return page(`<style>${repeat(selectors, (i) => `[a="${i}"]{}`)}</style>${'<g/>'.repeat(elements)}`)
  },
  patterns: (count) =>
    page(
      `<pattern id="p" width="9" height="9" patternUnits="userSpaceOnUse"><circle cx="4" cy="4" r="3"/></pattern>${'<rect width="9" height="9" fill="url(#p)"/>'.repeat(count)}`,
    ),
  patternCopies: dotted,
  textCharacters: (count) => page(`<text x="1" y="9">${'a'.repeat(count)}</text>`),
}

/** Limits whose count takes steps of more than one: how near to the limit the fixtures go, as a share of it. */
const COARSE: Partial<Record<Name, number>> = { selectorSteps: 0.1, dashes: 0.001, patternCopies: 0.001 }
/** Limits on work that only the reader knows the amount of: the last number that is read is looked for, up to this one. */
const SOUGHT: Partial<Record<Name, number>> = { clipEdges: 8_000 }

type Name = keyof typeof LIMITS

/** How near to each other the two are sought. */
const NEAR = 0.05

/** A number of things that is read, and one a little greater that is refused. */
function sought(make: (count: number) => string, most: number): [number, number] {
  let [read, refused] = [0, most]
  while (refused - read > NEAR * refused) {
    const middle = (read + refused) >> 1
    if (refusalOf(make(middle))) refused = middle
    else read = middle
  }
  return [read, refused]
}

function around(name: Name): [met: number, passed: number] {
  const [limit, most, coarse] = [LIMITS[name], SOUGHT[name], COARSE[name] ?? 0]
  if (most !== undefined) return sought(FIXTURES[name], most)
  return [Math.floor(limit * (1 - coarse)), Math.max(limit + 1, Math.ceil(limit * (1 + coarse)))]
}

describe('a drawing at its limit is read, and beyond it is refused:', () => {
  it.each(Object.keys(LIMITS) as Name[])('%s', (name) => {
    const [met, passed] = around(name)
    expect(met).toBeGreaterThan(0)
    expect(refusalOf(FIXTURES[name](met))?.detail).toBeUndefined()
    const refusal = refusalOf(FIXTURES[name](passed))
    const row = LIMIT_TABLES['A drawing'].find((one) => one.name === name)
    expect(refusal?.type).toBe(row?.beyond)
    expect(refusal?.excess?.limit).toBe(LIMITS[name])
    expect(refusal?.excess?.actual).toBeGreaterThan(LIMITS[name])
  })
})

/** Makes a document type declaration, and uses of entities, with so many of what is counted. */
const ENTITY_FIXTURES: Record<keyof typeof ENTITY_LIMITS, (count: number) => string> = {
  // The blank after `<!DOCTYPE` counts too.
  doctypeLength: (count) => page('', `<!DOCTYPE svg${' '.repeat(count - ' svg'.length)}>`),
  count: (count) => page('', `<!DOCTYPE svg [${repeat(count, (i) => `<!ENTITY a${i} "b">`)}]>`),
  length: (count) => page('', `<!DOCTYPE svg [<!ENTITY a "${'b'.repeat(count)}">]>`),
  expansion: (count) => {
    const length = 1_000
    const whole = Math.floor(count / length)
    const rest = count - whole * length
    const subset = `<!ENTITY a "${'b'.repeat(length)}"><!ENTITY r "${'b'.repeat(Math.max(1, rest))}">`
    return page(`<desc>${'&a;'.repeat(whole)}${rest > 0 ? '&r;' : ''}</desc>`, `<!DOCTYPE svg [${subset}]>`)
  },
}

describe('entities at their limit are read, and beyond it are refused with their place:', () => {
  it.each(Object.keys(ENTITY_LIMITS) as (keyof typeof ENTITY_LIMITS)[])('%s', (name) => {
    const make = ENTITY_FIXTURES[name]
    expect(refusalOf(make(ENTITY_LIMITS[name]))?.detail).toBeUndefined()
    const refusal = refusalOf(make(ENTITY_LIMITS[name] + 1))
    expect(refusal?.type).toBe('entities-not-accepted')
    expect(refusal?.errors[0]?.line).toBeGreaterThanOrEqual(1)
  })
})

describe('lengths', () => {
  const ignored = (x: number) =>
    readDrawing(new TextEncoder().encode(page(`<circle cx="${x}" cy="5" r="1"/>`))).ignored.map(({ why }) => why)

  it('beyond LARGEST_COORDINATE are passed over, and listed', () => {
    expect(ignored(LARGEST_COORDINATE - 2).filter((why) => /far away/.test(why))).toEqual([])
    expect(ignored(LARGEST_COORDINATE + 2).filter((why) => /far away/.test(why))).toHaveLength(1)
  })

  it.each([SCALE_RANGE.least, SCALE_RANGE.most])(
    'of %d mm for each user unit are the last that can be a scale',
    (scale) => {
      const beyond = scale === SCALE_RANGE.least ? 0.9 : 1.1
      const sized = (factor: number) =>
        refusalOf(
          `<svg xmlns="http://www.w3.org/2000/svg" width="1mm" height="1mm" viewBox="0 0 ${1 / (scale * factor)} ${1 / (scale * factor)}"/>`,
        )
      expect(sized(2 - beyond)?.detail).toBeUndefined()
      expect(sized(beyond)?.type).toBe('scale-unknown')
    },
  )
})

describe('the page of limits', () => {
  it('names every limit with its value, and no other', () => {
    const text = limitsMarkdown()
    for (const row of Object.values(LIMIT_TABLES).flat()) expect(text).toContain(`| \`${row.name}\` |`)
    expect(LIMIT_TABLES['A drawing'].map(({ name }) => name).sort()).toEqual(Object.keys(FIXTURES).sort())
    expect(LIMIT_TABLES['Entities of a drawing'].map(({ name }) => name).sort()).toEqual(
      Object.keys(ENTITY_FIXTURES).sort(),
    )
  })
})
