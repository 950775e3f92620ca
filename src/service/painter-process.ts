import { createRequire } from 'node:module'
import { Resvg } from '@resvg/resvg-js'

/**
 * The module that the painting process runs: one drawing of ours at a time becomes a PNG. A process of its own, since the library is
 * native: what goes wrong in it takes the whole process along.
 */

/** Pixels of the longer side: enough to read the numbers. BCF-XML 3.0 (Topic folder structure) has a most, which is more. */
const LONGEST = 1000
/** The first characters of a drawing of ours, in which its size stands. */
const HEAD = 2000
const VIEW_BOX = /^<svg [^>]*viewBox="0 0 ([\d.]+) ([\d.]+)"/

/** The face that ships with this program, for numbers and words on the drawing; no other is looked for. */
const require = createRequire(import.meta.url)
const FONT_FILES = ['DejaVuSans.ttf', 'DejaVuSans-Bold.ttf'].map((name) =>
  require.resolve(`dejavu-fonts-ttf/ttf/${name}`),
)
const FAMILY = 'DejaVu Sans'

export type Painted = { png: Uint8Array } | { failed: string }

/** @throws when it is no drawing of ours */
function paint(svg: string): Uint8Array {
  const [, width, height] = VIEW_BOX.exec(svg.slice(0, HEAD)) ?? []
  if (!(Number(width) > 0) || !(Number(height) > 0)) throw new Error('The drawing does not say its size.')
  const mode = Number(width) >= Number(height) ? 'width' : 'height'
  const font = { loadSystemFonts: false, fontFiles: FONT_FILES, defaultFontFamily: FAMILY, sansSerifFamily: FAMILY }
  return new Resvg(svg, { fitTo: { mode, value: LONGEST }, font, logLevel: 'off' }).render().asPng()
}

function answer(svg: string): Painted {
  try {
    return { png: paint(svg) }
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) }
  }
}

process.on('message', (svg: string) => process.send?.(answer(svg)))
process.on('disconnect', () => process.exit())
