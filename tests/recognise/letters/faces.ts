import { fileURLToPath } from 'node:url'
import { openSync, type Font } from 'fontkit'
import { flatten } from '../../../src/geometry/curve.js'
import type { Polyline } from '../../../src/geometry/outline.js'
import { contoursOfGlyph } from '../../../src/recognise/typeface.js'

/** Open typefaces from the registry, as outlines: those that the references are made from, and those held out from them. */

export interface Face {
  name: string
  font: Font
  kind: 'sans' | 'serif'
}

const ROOT = fileURLToPath(new URL('../../../node_modules/', import.meta.url))
const WEIGHTS: Record<string, string> = {
  300: 'Light',
  400: 'Regular',
  500: 'Medium',
  600: 'SemiBold',
  700: 'Bold',
  800: 'ExtraBold',
}

const google = (folder: string, kind: Face['kind'], weights: number[]) => ({ folder, kind, weights })

export const REFERENCE_FACES = [
  google('roboto', 'sans', [300, 400, 500, 700]),
  google('lato', 'sans', [300, 400, 700]),
  google('montserrat', 'sans', [300, 400, 500, 600, 700]),
  google('source-sans-3', 'sans', [300, 400, 600, 700]),
  google('work-sans', 'sans', [300, 400, 500, 700]),
  google('open-sans', 'sans', [300, 400, 600, 700, 800]),
  google('arimo', 'sans', [400, 500, 700]),
  google('oswald', 'sans', [300, 400, 500, 700]),
  google('cousine', 'sans', [400, 700]),
  google('merriweather', 'serif', [300, 400, 700]),
  google('roboto-slab', 'serif', [300, 400, 500, 700]),
  google('tinos', 'serif', [400, 700]),
]

/** Never among the references. */
export const HELD_OUT_FACES = [
  google('poppins', 'sans', [400, 500, 700]),
  google('nunito', 'sans', [400, 600, 700]),
  google('inter', 'sans', [400, 500, 700]),
  google('ibm-plex-sans', 'sans', [400, 500, 700]),
  google('atkinson-hyperlegible', 'sans', [400, 700]),
  google('libre-baskerville', 'serif', [400, 700]),
  google('gelasio', 'serif', [400, 700]),
]
const DEJAVU = [
  ['DejaVuSans', 'sans'],
  ['DejaVuSans-Bold', 'sans'],
  ['DejaVuSansCondensed', 'sans'],
  ['DejaVuSerif', 'serif'],
] as const

function open({ folder, kind, weights }: ReturnType<typeof google>): Face[] {
  const family = folder
    .split('-')
    .map((word) => (word === 'ibm' ? 'IBM' : word[0].toUpperCase() + word.slice(1)))
    .join('')
  return weights.map((weight) => {
    const style = `${weight}${WEIGHTS[weight]}`
    const name = `${family}_${style}`
    return { name, kind, font: openFont(`${ROOT}@expo-google-fonts/${folder}/${style}/${name}.ttf`) }
  })
}

function openFont(path: string): Font {
  const font = openSync(path)
  if ('fonts' in font) throw new Error(`${path} is a collection`)
  return font
}

export const referenceFaces = (): Face[] => REFERENCE_FACES.flatMap(open)
export const heldOutFaces = (): Face[] => [
  ...HELD_OUT_FACES.flatMap(open),
  ...DEJAVU.map(([name, kind]) => ({ name, kind, font: openFont(`${ROOT}dejavu-fonts-ttf/ttf/${name}.ttf`) })),
]

/** Millimetres: the flattening is as fine as on a sign. */
export const CAPITAL = 20

/** The outline of a character, `CAPITAL` high when it is an I, its origin at the start of the baseline; undefined if the face has none. */
export function glyphOf({ font }: Face, character: string): { contours: Polyline[]; advance: number } | undefined {
  const code = character.codePointAt(0) ?? 0
  if (!font.hasGlyphForCodePoint(code)) return undefined
  const glyph = font.glyphForCodePoint(code)
  const scale = CAPITAL / capitalHeight(font)
  return { contours: outlineOf(font, glyph.id, scale), advance: glyph.advanceWidth * scale }
}

/** The outline of another form of a character that a feature of the face shows; undefined if there is none. */
export function glyphByFeature({ font }: Face, character: string, feature: string): Polyline[] | undefined {
  if (!font.availableFeatures.includes(feature)) return undefined
  const [plain, other] = [font.layout(character), font.layout(character, [feature])].map((run) => run.glyphs[0].id)
  return other === plain ? undefined : outlineOf(font, other, CAPITAL / capitalHeight(font))
}

function outlineOf(font: Font, id: number, scale: number): Polyline[] {
  const contours = contoursOfGlyph(font, id).map((contour) => flatten(contour, 0.001 / scale))
  return contours.map((c) => c.map(({ x, y }) => ({ x: x * scale, y: y * scale })))
}

const heights = new WeakMap<Font, number>()
function capitalHeight(font: Font): number {
  let height = heights.get(font)
  if (height === undefined) heights.set(font, (height = font.glyphForCodePoint(0x49).bbox.maxY))
  return height
}
