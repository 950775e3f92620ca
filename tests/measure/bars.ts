import type { Lettering, Sign } from '../../src/sign/sign.js'
import { drawn, drawnSign, rectangle } from './drawn.js'

/** Signs of bars, each a line of characters, on the pump room's sheet. All places are invented. */

export type Bar = [x: number, top: number, width: number, height?: number]

/** One set of characters of one bar each. */
export function setOf(bars: Bar[], more: Partial<Lettering> = {}): Lettering {
  const [set] = drawnSign().lettering
  return {
    ...set,
    text: drawn('PUMP'),
    lines: bars.map(([x, top, width, height = 20]) => ({
      ...set.lines[0],
      text: drawn('PUMP'),
      baseline: drawn({ x, y: top + height }),
      outlines: [rectangle(x, top, width, height)],
    })),
    ...more,
  }
}

export const signWith = (...lettering: Lettering[]): Sign => ({ ...drawnSign(), lettering })
