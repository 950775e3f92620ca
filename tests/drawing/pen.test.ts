import { describe, expect, it } from 'vitest'
import { readDrawing } from '../../src/drawing/read.js'

/** Numbers may have any size as they are written (SVG 1.1, 4.2); what no IEEE 754 double holds is nowhere. The shapes are invented. */
const read = (content: string) =>
  readDrawing(
    Buffer.from(
      `<svg xmlns="http://www.w3.org/2000/svg" width="16mm" height="16mm" viewBox="0 0 16 16"><rect width="2" height="2"/>${content}</svg>`,
    ),
  )

describe('a shape with a coordinate that no number can hold', () => {
  it.each([
    ['a control of a curve', '<path d="M5 5c.1-1e400 .5-1 1-1 1 1 1 1 1 1 1 1 1 1-1 1 1 1 1 1-1 1z"/>'],
    ['an end', '<path d="M5 5l-.5e400.5v2z"/>'],
    ['a sum of two that can be held', '<path d="M1.7e308 5l1.7e308 0v2z"/>'],
    ['a corner', '<polygon transform="scale(1e300)" points="5,5 1e10,5 6,6"/>'],
    ['what a transform makes of it', '<path transform="scale(1e300)" d="M5 5c1e10 0 .5-1 1.5-1v2z"/>'],
  ])('is left out and told of: %s', (_what, content) => {
    const { shapes, ignored } = read(content)
    expect(shapes).toHaveLength(1)
    expect(ignored.map(({ why }) => why)).toHaveLength(1)
    expect(JSON.stringify(shapes)).not.toContain('null')
  })
})
