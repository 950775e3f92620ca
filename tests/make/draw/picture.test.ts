import { createRequire } from 'node:module'
import { Resvg } from '@resvg/resvg-js'
import { openSync } from 'fontkit'
import { describe, expect, test } from 'vitest'
import { dotsOfLine } from '../../../src/braille/cells.js'
import { checked, circlesIn, made, room, SETS } from './made.js'

/**
 * Outside reference: resvg (@resvg/resvg-js) with its own reader of fonts. The picture of a drawing is compared with a picture of what the
 * sign says: its letters as live text of the same face in resvg's hands, and its dots where the cells that are read have them. No shape is
 * missing, and none is there that was not ordered.
 */

const require = createRequire(import.meta.url)
const FILE = require.resolve('@expo-google-fonts/open-sans/400Regular/OpenSans_400Regular.ttf')
const PIXELS_PER_MM = 8
const INK = 100
/** Edges fall on pixels a little differently as outlines and as text: so much of the ink may differ. */
const EDGES = 0.03

function inkOf(svg: string): { ink: boolean[]; count: number } {
  const { pixels } = new Resvg(svg, {
    font: { loadSystemFonts: false, fontFiles: [FILE], defaultFontFamily: 'Open Sans' },
    background: '#fff',
    fitTo: { mode: 'zoom', value: PIXELS_PER_MM },
  }).render()
  const ink = Array.from({ length: pixels.length / 4 }, (_, i) => pixels[4 * i] < INK)
  return { ink, count: ink.filter(Boolean).length }
}

const boxOfPath = (path: string) =>
  new Resvg(`<svg xmlns="http://www.w3.org/2000/svg" width="999" height="999">${path}</svg>`).getBBox()

/** The drawing without its panel, and in one unit a millimetre. */
const bare = (drawing: string): string =>
  drawing
    .replace(/<rect id="panel"[^>]*>|<rect [^>]*id="panel"[^>]*>/u, '')
    .replace(/(width|height)="([\d.]+)mm"/gu, '$1="$2"')

function rebuilt(drawing: string, standards: string[], sign: ReturnType<typeof made>['sign']): string {
  const { reading } = checked({ drawing, sign }, standards)
  const font = openSync(FILE)
  if (!('glyphForCodePoint' in font)) throw new Error('no single font')
  const [lettering] = sign.lettering ?? []
  const lines = lettering?.lines ?? [lettering?.text ?? '']
  const baselines = reading.lettering.flatMap((item) => item.characterHeight ?? [])
  const height = baselines[0]
  const scale = height / -boxOfGlyph(font, 'I').minY
  const groups = [...drawing.matchAll(/<g id="line-\d+"[^>]*>([\s\S]*?)<\/g>/gu)].map(([, inner]) => inner)
  const texts = groups.flatMap((inner, i) => {
    const paths = inner.match(/<path [^>]*>/gu) ?? []
    const characters = Array.from(lines[i].replaceAll(' ', ''))
    expect(paths).toHaveLength(characters.length)
    return characters.map((character, n) => {
      const glyph = boxOfGlyph(font, character)
      const box = boxOfPath(paths[n])
      if (!box) throw new Error('a path paints nothing')
      const [x, y] = [box.x - glyph.minX * scale, box.y - glyph.minY * scale]
      const written = character.replace('&', '&amp;')
      return `<text x="${x}" y="${y}" font-family="Open Sans" font-size="${scale * font.unitsPerEm}">${written}</text>`
    })
  })
  const { dotSpacing, cellSpacing, lines: read } = reading.braille[0]
  const circles = circlesIn(drawing)
  const left = Math.min(...circles.map(({ x }) => x))
  const top = Math.min(...circles.map(({ y }) => y))
  const spacing = { dotSpacing: dotSpacing ?? 0, cellSpacing: cellSpacing ?? 0, lineSpacing: 0 }
  const dots = read.flatMap(({ cells }) => dotsOfLine(cells ?? '', { ...spacing, origin: { x: 0, y: 0 } }))
  const [own, high] = [Math.min(...dots.map(({ x }) => x)), Math.min(...dots.map(({ y }) => y))]
  const drawnDots = dots.map(
    ({ x, y }) => `<circle cx="${x - own + left}" cy="${y - high + top}" r="${circles[0].r}"/>`,
  )
  const [, size] = /<svg [^>]*?(width="[^"]*" height="[^"]*")/u.exec(bare(drawing)) ?? []
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${texts.join('')}${drawnDots.join('')}</svg>`
}

type Face = Extract<ReturnType<typeof openSync>, { glyphForCodePoint: unknown }>

/** The box of a glyph in font units, y down. */
function boxOfGlyph(font: Face, character: string) {
  const { minX, maxY } = font.glyphForCodePoint(character.codePointAt(0) ?? 0).path.bbox
  return { minX, minY: -maxY }
}

describe.each(SETS.map((set) => [set.join(' + '), set] as const))('%s', (_, set) => {
  test.each(['Seed Library', 'Quiz & Puzzle Jar 407', 'Xylophone Gym 12689'])('%s', (text) => {
    const { drawing, sign } = made(room(text), set)
    const [drawn, again] = [inkOf(bare(drawing)), inkOf(rebuilt(drawing, set, sign))]
    expect(drawn.ink.length).toBe(again.ink.length)
    const off = drawn.ink.filter((ink, i) => ink !== again.ink[i]).length
    expect(off / drawn.count).toBeLessThan(EDGES)
  })
})

test('the comparison sees a dot that is missing', () => {
  const { drawing, sign } = made(room('Kiln'), ['us-ada-2010'])
  const [drawn, again] = [inkOf(bare(drawing)), inkOf(rebuilt(drawing, ['us-ada-2010'], sign))]
  const without = inkOf(bare(drawing.replace(/<circle [^>]*>/u, '')))
  const off = (one: typeof drawn) => one.ink.filter((ink, i) => ink !== again.ink[i]).length
  // A dot of the table's least size covers 1.77 square millimetres (703.3.1).
  expect(off(without) - off(drawn)).toBeGreaterThan(1.5 * PIXELS_PER_MM ** 2)
})
