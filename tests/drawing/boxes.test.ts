import { Resvg } from '@resvg/resvg-js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { unionOfBoxes } from '../../src/geometry/box.js'
import { expectBox, read, SVG } from './svg.js'

/**
 * Outside reference: the box that resvg (@resvg/resvg-js, getBBox) finds for the same drawing. Its boxes are in px of the
 * page, and an inch has 96 of them (CSS Values 4, 5.2) and 25.4 mm.
 */
const MM = 25.4 / 96

/** resvg counts in single precision: 24 bits for places of up to 400 px. */
const SINGLE = (400 / 2 ** 24) * MM

/** A page whose user unit is a px, so that resvg's box and ours differ by that factor alone. */
const wrap = (content: string, attributes = '') => `<svg ${SVG} width="400" height="300" ${attributes}>${content}</svg>`

/** @param share of the box's size that resvg may be off: it draws an arc by cubics of up to a quarter turn. */
function compare(content: string, share = 1e-5): void {
  const markup = wrap(content)
  const reference = new Resvg(markup, { font: { loadSystemFonts: false } }).getBBox()
  if (!reference) throw new Error('resvg found nothing')
  const ours = unionOfBoxes(read(markup).shapes.map((shape) => shape.box))
  const size = Math.max(reference.width, reference.height) * MM
  for (const side of ['x', 'y', 'width', 'height'] as const)
    expect(Math.abs((ours?.[side] ?? NaN) - reference[side] * MM), side).toBeLessThanOrEqual(size * share + SINGLE)
}

/** The error of a cubic for a quarter of a circle, on either side (Goldapp 1991: 2.7e-4 of the radius), and a margin. */
const ARC_SHARE = 6e-4

const CASES: Record<string, string> = {
  circle: '<circle cx="50" cy="60" r="7.5"/>',
  'circle in per cent': '<circle cx="25%" cy="50%" r="10%"/>',
  'circle in mm, in, pt, pc, cm':
    '<circle cx="20mm" cy="1in" r="9pt"/><rect x="1pc" y="0.5cm" width="3pc" height="1cm"/>',
  ellipse: '<ellipse cx="50" cy="60" rx="20" ry="7"/>',
  rect: '<rect x="10" y="20" width="30" height="40"/>',
  'rect with clamped radii': '<rect x="10" y="20" width="30" height="40" rx="25" ry="3"/>',
  'line with a stroke so thin that it adds nothing': '<rect x="1" y="1" width="90" height="1"/>',
  polygon: '<polygon points="10,10 50 20,30,70"/>',
  polyline: '<polyline points="10-10 50.5.5 30,70"/>',
  'cubic whose controls lie outside': '<path d="M10 10C-40 150 190 150 60 10z"/>',
  'smooth cubics': '<path d="M10 80C40 10 65 10 95 80S150 150 180 80z"/>',
  'relative, implicit, without separators': '<path d="m10 10 20-5.5.5 30h-4v10l-1-1z m50 50l5 5 0 -9z"/>',
  'arc with compact flags': '<path d="M100 100a25 15 30 1150-25L100 90z"/>',
  'arc, small and negative': '<path d="M100 100A40 20 -45 0 0 150 120z"/>',
  'arc whose radii are too small': '<path d="M100 100A5 2 20 0 1 180 120z"/>',
  'two half circles': '<path d="M100 100a8 8 0 1 0 16 0a8 8 0 1 0-16 0z"/>',
  'nested transforms':
    '<g transform="translate(40 30) rotate(30)"><rect x="5" width="30" height="8" transform="skewX(20) scale(1.5 2)"/></g>',
  'transform list without separators':
    '<rect width="9" height="5" transform="matrix(1,0,0,1,10,20)translate(5,5)rotate(10 1 2),scale(2)"/>',
  'use and symbol':
    '<symbol id="s" viewBox="0 0 10 20"><rect width="10" height="20"/></symbol><use xlink:href="#s" x="30" y="10" width="50" height="50"/>',
  'use of a shape':
    '<defs><circle id="d" r="4"/></defs><g transform="scale(2)"><use href="#d" x="20" y="30"/><use href="#d" x="60" y="30"/></g>',
  'nested svg, xMinYMax slice':
    '<svg x="20" y="10" width="60" height="90" viewBox="0 0 10 10" preserveAspectRatio="xMinYMax meet"><rect x="1" y="1" width="5" height="8"/></svg>',
  'percentages inside a nested viewBox':
    '<svg width="200" height="100" viewBox="0 0 50 25"><rect x="10%" y="20%" width="50%" height="40%"/></svg>',
  'style sheet that hides and shows':
    '<style>.a{display:none} g>.a.b{display:inline!important}</style><g><circle class="a b" cx="50" cy="50" r="5"/></g><circle class="a" cx="150" cy="50" r="5"/><rect x="70" y="9" width="5" height="5"/>',
  switch:
    '<switch><rect requiredExtensions="http://example.com/x" width="300" height="200"/><rect x="5" y="6" width="7" height="8"/><rect width="200" height="100"/></switch>',
}

describe('boxes as resvg finds them', () => {
  for (const [name, content] of Object.entries(CASES))
    it(name, () => compare(content, /arc|circle|ellipse/.test(name) ? ARC_SHARE : undefined))

  it('agrees for any arc', () => {
    const n = fc.integer({ min: 1, max: 60 })
    const arc = fc.record({
      rx: n,
      ry: n,
      turn: fc.integer({ min: -180, max: 180 }),
      large: fc.boolean(),
      positive: fc.boolean(),
      dx: n,
      dy: n,
    })
    fc.assert(
      fc.property(arc, ({ rx, ry, turn, large, positive, dx, dy }) =>
        compare(
          `<path d="M150 150a${rx} ${ry} ${turn} ${Number(large)} ${Number(positive)} ${dx} ${dy}z"/>`,
          ARC_SHARE,
        ),
      ),
      { numRuns: 60, seed: 11 },
    )
  })

  it('agrees for any transform of any cubic', () => {
    const n = fc.integer({ min: -40, max: 40 })
    const cubic = fc.array(n, { minLength: 6, maxLength: 6 })
    const turn = fc.integer({ min: -360, max: 360 })
    fc.assert(
      fc.property(cubic, turn, fc.integer({ min: -50, max: 50 }), (c, rotate, skew) => {
        fc.pre(new Set(c).size > 3)
        compare(
          `<path transform="translate(200 150) rotate(${rotate}) skewY(${skew})" d="M0 0C${c.join(' ')}L30 7z"/>`,
          2,
        )
      }),
      { numRuns: 60, seed: 5 },
    )
  })

  it('agrees for any drawing of groups, copies, nested viewports and shapes', () => {
    const n = fc.integer({ min: 1, max: 60 })
    const shape = fc.oneof(
      fc.tuple(n, n, n).map(([x, y, r]) => `<circle cx="${x}" cy="${y}" r="${r}"/>`),
      fc.tuple(n, n, n, n).map(([x, y, w, h]) => `<rect x="${x}" y="${y}" width="${w}" height="${h}" rx="${w % 5}"/>`),
      fc.tuple(n, n, n, n).map(([x, y, rx, ry]) => `<ellipse cx="${x}" cy="${y}" rx="${rx}" ry="${ry}"/>`),
      fc.tuple(n, n, n, n).map((v) => `<path d="m${v[0]} ${v[1]}c${v.join(' ')} 9-9h${v[2]}v-${v[3]}z"/>`),
      fc.tuple(n, n, n, n).map((v) => `<polygon points="${v.join(' ')} 3,70"/>`),
      fc.tuple(n, n, n).map(([x, y, i]) => `<use href="#d${i % 2}" x="${x}" y="${y}"/>`),
    )
    const transform = fc.oneof(
      fc.tuple(n, n).map(([x, y]) => `translate(${x} -${y})`),
      n.map((turn) => `rotate(${turn * 6})`),
      n.map((turn) => `skewX(${turn - 30})`),
      n.map((scale) => `scale(-${scale / 20} ${scale / 30})`),
    )
    const { drawing } = fc.letrec<{ drawing: string }>((tie) => ({
      drawing: fc.oneof(
        { maxDepth: 3, withCrossShrink: true },
        shape,
        fc.tuple(transform, fc.array(tie('drawing'), { minLength: 1, maxLength: 3 })).map(([t, inside]) => `<g transform="${t}">${inside.join('')}</g>`), // prettier-ignore
        fc.tuple(n, tie('drawing')).map(([x, inside]) => `<svg x="${x}" width="${x}%" height="90" viewBox="0 0 ${x} 50" overflow="visible">${inside}</svg>`), // prettier-ignore
      ),
    }))
    const defs =
      '<defs><circle id="d0" r="7"/><g id="d1" transform="scale(.5 2)"><rect width="9" height="4"/></g></defs>'
    fc.assert(
      fc.property(drawing, (content) =>
        compare(`${defs}<g transform="translate(200 150) scale(.05)">${content}</g>`, ARC_SHARE),
      ),
      { numRuns: 150, seed: 8 },
    )
  })

  it('measures a page of our own the same in every unit (CSS Values 4, 5.2: 1 in = 2.54 cm = 25.4 mm = 72 pt = 6 pc = 101.6 Q)', () => {
    for (const width of [
      '2in',
      '5.08cm',
      '50.8mm',
      '144pt',
      '12pc',
      '203.2Q',
      '192px',
      '192',
      '2IN',
      '+2.0e0in',
      ' 2in ',
    ]) {
      const { viewport, shapes } = read(
        `<svg ${SVG} width="${width}" viewBox="0 0 20 10"><rect x="2" y="2" width="1" height="1"/></svg>`,
      )
      expect(viewport.width).toBeCloseTo(50.8, 9)
      expect(viewport.height).toBeCloseTo(25.4, 9)
      expectBox(shapes[0].box, [5.08, 5.08, 2.54, 2.54], 9)
    }
  })
})
