import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Font } from 'fontkit'
import { fontkit } from '../libraries.js'
import type { TypefaceStyle } from '../sign/sign.js'
import { keyOf, type OutlineFace, type WantedFace } from './faces.js'

/**
 * The typefaces that ship with this program, as files of installed packages: each is read once, and the input only ever
 * chooses among them.
 */

const require = createRequire(import.meta.url)

interface ShippedFile {
  weight: number
  slant?: 'italic' | 'oblique'
  file: string
}

interface ShippedFamily {
  name: string
  /** As its makers class it. */
  style: TypefaceStyle
  files: ShippedFile[]
}

export const NORMAL_WEIGHT = 400
export const BOLD_WEIGHT = 700
/** The weight that stands between the normal and the bold ones when a face is chosen. */
const MEDIUM_WEIGHT = 500

function dejavu(name: string, style: TypefaceStyle, slant: 'oblique' | 'italic'): ShippedFamily {
  const stem = `dejavu-fonts-ttf/ttf/${name.replaceAll(' ', '')}`
  const slanted = slant === 'oblique' ? 'Oblique' : 'Italic'
  return {
    name,
    style,
    files: [
      { weight: NORMAL_WEIGHT, file: `${stem}.ttf` },
      { weight: BOLD_WEIGHT, file: `${stem}-Bold.ttf` },
      { weight: NORMAL_WEIGHT, slant, file: `${stem}-${slanted}.ttf` },
      { weight: BOLD_WEIGHT, slant, file: `${stem}-Bold${slanted}.ttf` },
    ],
  }
}

type Weights = readonly (readonly [number, string])[]

const REGULAR_AND_BOLD: Weights = [
  [NORMAL_WEIGHT, 'Regular'],
  [BOLD_WEIGHT, 'Bold'],
]
const UP_TO_BOLD: Weights = [
  [NORMAL_WEIGHT, 'Regular'],
  [MEDIUM_WEIGHT, 'Medium'],
  [600, 'SemiBold'],
  [BOLD_WEIGHT, 'Bold'],
]
const OPEN_SANS_WEIGHTS: Weights = [
  [300, 'Light'],
  [NORMAL_WEIGHT, 'Regular'],
  [MEDIUM_WEIGHT, 'Medium'],
  [600, 'SemiBold'],
  [BOLD_WEIGHT, 'Bold'],
  [800, 'ExtraBold'],
]

/** A family as the open collection packs it: a folder for each weight and slant. */
function packed(name: string, style: TypefaceStyle, weights: Weights): ShippedFamily {
  const folder = `@expo-google-fonts/${name.toLowerCase().replaceAll(' ', '-')}`
  const file = (face: string) => `${folder}/${face}/${name.replaceAll(' ', '')}_${face}.ttf`
  const files = weights.flatMap(([weight, word]): ShippedFile[] => [
    { weight, file: file(`${weight}${word}`) },
    { weight, slant: 'italic', file: file(`${weight}${word}_Italic`) },
  ])
  return { name, style, files }
}

const SHIPPED: ReadonlyMap<string, ShippedFamily> = new Map(
  [
    dejavu('DejaVu Sans', 'sans-serif', 'oblique'),
    dejavu('DejaVu Sans Condensed', 'sans-serif', 'oblique'),
    dejavu('DejaVu Sans Mono', 'sans-serif', 'oblique'),
    dejavu('DejaVu Serif', 'serif', 'italic'),
    dejavu('DejaVu Serif Condensed', 'serif', 'italic'),
    packed('Open Sans', 'sans-serif', OPEN_SANS_WEIGHTS),
    packed('Arimo', 'sans-serif', UP_TO_BOLD),
    packed('Tinos', 'serif', REGULAR_AND_BOLD),
    packed('Cousine', 'sans-serif', REGULAR_AND_BOLD),
  ].map((family) => [keyOf(family.name), family]),
)

/** The names of the families that ship. */
export const SHIPPED_FAMILIES: readonly string[] = [...SHIPPED.values()].map(({ name }) => name)

/** The weight that is used for a wanted one, from those there are: CSS Fonts Level 4, 5.2, step 4.3. */
export function matchWeight(wanted: number, available: readonly number[]): number {
  const down = available.filter((w) => w < wanted).sort((a, b) => b - a)
  const up = available.filter((w) => w > wanted).sort((a, b) => a - b)
  if (available.includes(wanted)) return wanted
  if (wanted < NORMAL_WEIGHT) return [...down, ...up][0]
  if (wanted > MEDIUM_WEIGHT) return [...up, ...down][0]
  const near = up.filter((w) => w <= MEDIUM_WEIGHT)
  return [...near, ...down, ...up][0]
}

const fonts = new Map<string, Font>()

function shippedFont(file: string): Font {
  let font = fonts.get(file)
  if (!font) {
    const read = fontkit().create(readFileSync(require.resolve(file)))
    if (!('glyphForCodePoint' in read)) throw new Error(`${file} is no single font`)
    font = read
    fonts.set(file, font)
  }
  return font
}

function faceOf(family: ShippedFamily, wanted: WantedFace): OutlineFace | undefined {
  const fitting = family.files.filter((f) => (f.slant !== undefined) === (wanted.slant !== undefined))
  const weight = matchWeight(
    wanted.weight,
    fitting.map((f) => f.weight),
  )
  if (wanted.exact && weight !== wanted.weight) return undefined
  const chosen = fitting.find((f) => f.weight === weight) ?? fitting[0]
  const font = shippedFont(chosen.file)
  return { kind: 'outlines', family: family.name, name: font.fullName, font, style: chosen.slant ?? family.style }
}

/** The face of a family that ships; undefined for any other. */
export function shippedFace(wanted: WantedFace): OutlineFace | undefined {
  const family = SHIPPED.get(wanted.key)
  return family && faceOf(family, wanted)
}
