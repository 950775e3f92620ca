import { expect } from 'vitest'
import type { Drawing } from '../../src/drawing/drawing.js'
import { readDrawing } from '../../src/drawing/read.js'
import type { Box } from '../../src/geometry/box.js'
import { Refusal } from '../../src/refusal.js'

export const SVG = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"'

/** A drawing of 100 mm by 100 mm whose user unit is a millimetre. */
export const page = (content: string, attributes = ''): string =>
  `<svg ${SVG} width="100mm" height="100mm" viewBox="0 0 100 100" ${attributes}>${content}</svg>`

export const read = (markup: string, options: { scale?: number } = {}): Drawing =>
  readDrawing(new TextEncoder().encode(markup), options)

/** The shapes of a page of 100 mm by 100 mm. */
export const shapesOf = (content: string): Drawing['shapes'] => read(page(content)).shapes

/** What reading refuses, and why; fails when it does not refuse. */
export function refusalOf(input: string | Uint8Array, options: { scale?: number } = {}): Refusal {
  try {
    readDrawing(typeof input === 'string' ? new TextEncoder().encode(input) : input, options)
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
  throw new Error('the drawing was read')
}

export function expectBox(
  actual: Box | undefined,
  [x, y, width, height]: [number, number, number, number],
  digits = 6,
): void {
  expect(actual?.x).toBeCloseTo(x, digits)
  expect(actual?.y).toBeCloseTo(y, digits)
  expect(actual?.width).toBeCloseTo(width, digits)
  expect(actual?.height).toBeCloseTo(height, digits)
}
