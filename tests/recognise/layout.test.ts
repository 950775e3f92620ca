import { createRequire } from 'node:module'
import { Resvg } from '@resvg/resvg-js'
import { describe, expect, it } from 'vitest'
import { readDrawing } from '../../src/drawing/read.js'
import { boxOfPoints, type Box } from '../../src/geometry/box.js'
import { flatten } from '../../src/geometry/curve.js'
import { layOut } from '../../src/recognise/layout.js'

/**
 * Live text against another program's layout: resvg sets the same text with the same font file and hands it back as paths.
 * Each contour must lie in the same place.
 */
const require = createRequire(import.meta.url)
const FONTS = [
  'dejavu-fonts-ttf/ttf/DejaVuSans.ttf',
  'dejavu-fonts-ttf/ttf/DejaVuSerif-Bold.ttf',
  '@expo-google-fonts/open-sans/600SemiBold/OpenSans_600SemiBold.ttf',
  '@expo-google-fonts/tinos/400Regular_Italic/Tinos_400Regular_Italic.ttf',
].map((file) => require.resolve(file))

const svg = (content: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="200" viewBox="0 0 400 200">${content}</svg>`
const bytes = (markup: string) => new TextEncoder().encode(markup)

/** Both programs round a little: millimetres. */
const TOLERANCE = 0.005
const TIDY = 1000

const sorted = (boxes: (Box | undefined)[]) =>
  boxes
    .filter((b) => b !== undefined)
    .sort((a, b) => Math.round((a.x - b.x) * TIDY) || Math.round((a.y - b.y) * TIDY) || a.width - b.width)

function ours(content: string): Box[] {
  const runs = layOut(readDrawing(bytes(svg(content))).texts)
  for (const run of runs) expect(run.trouble).toBeUndefined()
  return sorted(runs.flatMap((run) => run.characters.flatMap((c) => c.outlines.map(boxOfPoints))))
}

function theirs(content: string): Box[] {
  const font = { loadSystemFonts: false, fontFiles: FONTS }
  const drawn = new Resvg(svg(content), { font }).toString()
  const { shapes } = readDrawing(bytes(drawn))
  return sorted(shapes.flatMap((s) => s.contours.map((c) => boxOfPoints(flatten(c, TOLERANCE / 10)))))
}

const sans = `font-family="DejaVu Sans" font-size="26"`
const CASES: Record<string, string> = {
  'plain, with kerning': `<text x="10" y="50" ${sans}>AVATAR To 12</text>`,
  'with ligatures': `<text x="10" y="50" ${sans}>office fi</text>`,
  'letter-spacing': `<text x="10" y="50" ${sans} letter-spacing="4">AVATAR</text>`,
  'word-spacing': `<text x="10" y="50" ${sans} word-spacing="12">A B C</text>`,
  'fitted by spacing': `<text x="10" y="50" ${sans} textLength="300">OFFICE 12</text>`,
  'fitted by stretching': `<text x="10" y="50" ${sans} textLength="300" lengthAdjust="spacingAndGlyphs">OFFICE</text>`,
  'a list of x': `<text x="10 40 80 130" y="50" ${sans}>EXIT</text>`,
  'lists of dx and dy': `<text x="10" y="50" dx="0 3 -2" dy="0 5 -5" ${sans}>EXIT</text>`,
  'turned characters': `<text x="10" y="50" rotate="10 -20 0 45" ${sans}>EXIT</text>`,
  'anchored in the middle, over tspans': `<text x="200" y="50" text-anchor="middle" ${sans}>ROOM <tspan font-size="40">204</tspan> A</text>`,
  'anchored at the end': `<text x="390" y="50" text-anchor="end" ${sans}>ROOM</text>`,
  'at an angle, squeezed': `<text transform="translate(60 20) rotate(25) scale(0.8 1.2)" ${sans}>ROOM 204</text>`,
  'a bold serif face': `<text x="10" y="50" font-family="DejaVu Serif" font-weight="bold" font-size="26">AWAY Te</text>`,
  'a weight of its own': `<text x="10" y="50" font-family="Open Sans" font-weight="600" font-size="26">AVATAR</text>`,
  'an italic face': `<text x="10" y="50" font-family="Tinos" font-style="italic" font-size="26">Quiet AVA</text>`,
}

describe('live text lies where another program puts it', () => {
  it.each(Object.entries(CASES))('%s', (_, content) => {
    const [here, there] = [ours(content), theirs(content)]
    expect(there.length).toBeGreaterThan(3)
    expect(here).toHaveLength(there.length)
    here.forEach((box, i) => {
      for (const side of ['x', 'y', 'width', 'height'] as const)
        expect(Math.abs(box[side] - there[i][side]), `${side} of contour ${i}`).toBeLessThan(TOLERANCE)
    })
  })
})

describe('ligatures', () => {
  const charactersOf = (attributes: string) =>
    layOut(readDrawing(bytes(svg(`<text y="50" ${sans} ${attributes}>office</text>`))).texts)[0].characters.map(
      (c) => c.character,
    )
  // CSS Text 3, 8.2: optional ligatures are not applied where letters are spaced. The face has one for ffi.
  it('are formed only where letters stand together', () => {
    expect(charactersOf('')).toEqual(['o', 'ffi', 'c', 'e'])
    expect(charactersOf('letter-spacing="1"')).toEqual([...'office'])
    expect(charactersOf('dx="0 0 1"')).toEqual([...'office'])
    expect(charactersOf('rotate="5"')).toEqual([...'office'])
  })
})
