import type { Font, PathCommand } from 'fontkit'

/** Capitals as the font file holds them: outlines, and the few sizes of them that are exact numbers of font units. */

export interface Capital {
  /** Font units, y up, the baseline at 0. */
  box: { left: number; right: number; bottom: number; top: number }
  advance: number
  commands: readonly PathCommand[]
  /** The whole side is one straight line from the baseline up to the height of the I. */
  straightLeft: boolean
  straightRight: boolean
}

export interface CapitalI {
  height: number
  stroke: number
}

export function capital(font: Font, character: string): Capital {
  const glyph = font.glyphForCodePoint(character.codePointAt(0) ?? 0)
  const { minX, maxX, minY, maxY } = glyph.bbox
  const { commands } = glyph.path
  const top = font.glyphForCodePoint('I'.charCodeAt(0)).bbox.maxY
  const straight = (x: number) => uprightsAt(commands, x).some(([low, high]) => low <= 0 && high >= top)
  return {
    box: { left: minX, right: maxX, bottom: minY, top: maxY },
    advance: glyph.advanceWidth,
    commands,
    straightLeft: straight(minX),
    straightRight: straight(maxX),
  }
}

/** @throws when the I of the face is no plain bar: then its stroke is not the width of its box. */
export function capitalI(font: Font): CapitalI {
  const { box, commands } = capital(font, 'I')
  const corners = new Set(commands.flatMap(({ args }) => (args.length === 2 ? [args.join()] : [])))
  const plain = commands.every(({ args }) => args.length <= 2) && corners.size === 4 && box.bottom === 0
  if (!plain) throw new Error('the I is no bar')
  return { height: box.top, stroke: box.right - box.left }
}

/** Straight edges along an upright line, as the lowest and highest place of each. */
function uprightsAt(commands: readonly PathCommand[], x: number): [number, number][] {
  const found: [number, number][] = []
  let [startX, startY, lastX, lastY] = [NaN, NaN, NaN, NaN]
  for (const { command, args } of commands) {
    const [toX, toY] = command === 'closePath' ? [startX, startY] : args.slice(-2)
    if (command === 'moveTo') [startX, startY] = [toX, toY]
    else if (command !== 'quadraticCurveTo' && command !== 'bezierCurveTo' && lastX === x && toX === x)
      found.push([Math.min(lastY, toY), Math.max(lastY, toY)])
    ;[lastX, lastY] = [toX, toY]
  }
  return found
}

const LETTERS: Record<PathCommand['command'], string> = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
}

/** SVG path data of a capital whose origin stands at (x, y); `scale` turns font units into millimetres. */
export function pathData(
  commands: readonly PathCommand[],
  place: { x: number; y: number; scale: number },
  n: (millimetres: number) => string,
): string {
  const number = (v: number, i: number) => n(i % 2 === 0 ? place.x + v * place.scale : place.y - v * place.scale)
  return commands.map(({ command, args }) => LETTERS[command] + args.map(number).join(' ')).join('')
}
