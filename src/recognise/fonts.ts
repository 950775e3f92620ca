import { readFileSync, readdirSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import * as fontkit from 'fontkit'
import type { Font } from 'fontkit'
import { z } from 'zod'
import type { TypefaceStyle } from '../sign/sign.js'

/**
 * Typefaces that can be measured. Shipped faces (DejaVu, Open Sans) give real outlines; for faces of the open metrics
 * collection `@capsizecss/metrics` only the height of capitals and the category are known; of any other face, nothing.
 * This is the one place of the core that reads files: data of installed packages, once each, never named by the input.
 */

const require = createRequire(import.meta.url)

/** A face whose outlines are here. */
export interface OutlineFace {
  kind: 'outlines'
  family: string
  /** Family and face, for messages: `DejaVu Sans Bold`. */
  name: string
  font: Font
  style: TypefaceStyle
}

/** A face of which only the height of capitals is here. */
export interface MetricsFace {
  kind: 'metrics'
  family: string
  name: string
  /** Height of capitals as a share of the em. */
  capHeight: number
  /** Undefined when the category does not decide it. */
  style?: TypefaceStyle
}

export interface UnknownFace {
  kind: 'unknown'
  family?: string
  why: string
}

export type ResolvedFace = OutlineFace | MetricsFace | UnknownFace

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

const NORMAL_WEIGHT = 400
const BOLD_WEIGHT = 700
const HEAVIEST_WEIGHT = 900

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

const OPEN_SANS_WEIGHTS: [number, string][] = [
  [300, 'Light'],
  [NORMAL_WEIGHT, 'Regular'],
  [500, 'Medium'],
  [600, 'SemiBold'],
  [BOLD_WEIGHT, 'Bold'],
  [800, 'ExtraBold'],
]

function openSans(): ShippedFamily {
  const file = (face: string) => `@expo-google-fonts/open-sans/${face}/OpenSans_${face}.ttf`
  const files = OPEN_SANS_WEIGHTS.flatMap(([weight, word]): ShippedFile[] => [
    { weight, file: file(`${weight}${word}`) },
    { weight, slant: 'italic', file: file(`${weight}${word}_Italic`) },
  ])
  return { name: 'Open Sans', style: 'sans-serif', files }
}

/** Families are compared by their letters and digits alone, in lower case: CSS names and PostScript names meet there. */
const keyOf = (family: string): string => family.toLowerCase().replace(/[^a-z0-9]/g, '')

const SHIPPED: ReadonlyMap<string, ShippedFamily> = new Map(
  [
    dejavu('DejaVu Sans', 'sans-serif', 'oblique'),
    dejavu('DejaVu Sans Condensed', 'sans-serif', 'oblique'),
    dejavu('DejaVu Sans Mono', 'sans-serif', 'oblique'),
    dejavu('DejaVu Serif', 'serif', 'italic'),
    dejavu('DejaVu Serif Condensed', 'serif', 'italic'),
    openSans(),
  ].map((family) => [keyOf(family.name), family]),
)

const GENERIC: ReadonlySet<string> = new Set(
  ['serif', 'sans-serif', 'monospace', 'cursive', 'fantasy', 'system-ui', 'ui-serif', 'ui-sans-serif'].map(keyOf),
)

/** What a PostScript name adds to its family, as in `DejaVuSans-BoldOblique`. Weights as in CSS Fonts Level 4, 2.2. */
const FACE_WORDS: ReadonlyMap<string, number> = new Map([
  ['thin', 100],
  ['extralight', 200],
  ['light', 300],
  ['book', NORMAL_WEIGHT],
  ['regular', NORMAL_WEIGHT],
  ['roman', NORMAL_WEIGHT],
  ['medium', 500],
  ['semibold', 600],
  ['demibold', 600],
  ['bold', BOLD_WEIGHT],
  ['extrabold', 800],
  ['black', HEAVIEST_WEIGHT],
])

interface Wanted {
  key: string
  weight: number
  slant?: 'italic' | 'oblique'
}

/** The family, and what a PostScript name says of the face; the latter wins over the style of the text. */
function wantedFace(family: string, weight: number, fontStyle: string): Wanted {
  const slant = fontStyle.startsWith('oblique') ? 'oblique' : fontStyle.startsWith('italic') ? 'italic' : undefined
  const named = /^(.+)-([a-z]+?)?(italic|oblique)?(?:mt)?$/i.exec(family)
  const word = named?.[2]?.toLowerCase()
  if (!named || (word !== undefined && !FACE_WORDS.has(word))) return { key: keyOf(family), weight, slant }
  const said = named[3]?.toLowerCase()
  return {
    key: keyOf(named[1]),
    weight: word === undefined ? weight : (FACE_WORDS.get(word) ?? weight),
    slant: said === 'italic' || said === 'oblique' ? said : slant,
  }
}

/** The weight that is used for a wanted one, from those there are: CSS Fonts Level 4, 5.2, step 4.3. */
export function matchWeight(wanted: number, available: readonly number[]): number {
  const down = available.filter((w) => w < wanted).sort((a, b) => b - a)
  const up = available.filter((w) => w > wanted).sort((a, b) => a - b)
  if (available.includes(wanted)) return wanted
  if (wanted < NORMAL_WEIGHT) return [...down, ...up][0]
  if (wanted > 500) return [...up, ...down][0]
  const near = up.filter((w) => w <= 500)
  return [...near, ...down, ...up][0]
}

const fonts = new Map<string, Font>()

function shippedFont(file: string): Font {
  let font = fonts.get(file)
  if (!font) {
    const read = fontkit.create(readFileSync(require.resolve(file)))
    if (!('glyphForCodePoint' in read)) throw new Error(`${file} is no single font`)
    font = read
    fonts.set(file, font)
  }
  return font
}

function outlineFace(family: ShippedFamily, wanted: Wanted): OutlineFace {
  const fitting = family.files.filter((f) => (f.slant !== undefined) === (wanted.slant !== undefined))
  const weight = matchWeight(
    wanted.weight,
    fitting.map((f) => f.weight),
  )
  const chosen = fitting.find((f) => f.weight === weight) ?? fitting[0]
  const font = shippedFont(chosen.file)
  return { kind: 'outlines', family: family.name, name: font.fullName, font, style: chosen.slant ?? family.style }
}

const Metrics = z.object({
  familyName: z.string(),
  fullName: z.string(),
  category: z.string().optional(),
  capHeight: z.number(),
  unitsPerEm: z.number().positive(),
})

/** Folders of the metrics collection by the key of their family; the input only ever chooses among these. */
let folders: ReadonlyMap<string, string> | undefined

function folderOf(key: string): string | undefined {
  if (!folders) {
    const root = join(dirname(require.resolve('@capsizecss/metrics/package.json')), 'entireMetricsCollection')
    folders = new Map(readdirSync(root).map((name) => [keyOf(name), join(root, name)]))
  }
  return folders.get(key) ?? folders.get(key.replace(/(ps)?mt$|ps$/, ''))
}

const listings = new Map<string, string[]>()

/** What a folder of the collection holds; there is one for each face. */
function filesIn(folder: string): string[] {
  let names = listings.get(folder)
  if (!names) listings.set(folder, (names = readdirSync(folder)))
  return names
}

const CATEGORY_STYLES: ReadonlyMap<string, TypefaceStyle> = new Map([
  ['sans-serif', 'sans-serif'],
  ['serif', 'serif'],
])

function metricsFace({ key, weight, slant }: Wanted): MetricsFace | undefined {
  const folder = folderOf(key)
  if (folder === undefined) return undefined
  const names = filesIn(folder)
  const upright = weight === NORMAL_WEIGHT ? 'regular' : `${weight}`
  const variant = slant ? `${weight === NORMAL_WEIGHT ? '' : weight}italic` : upright
  const file = names.includes(variant) ? join(folder, variant, 'index.cjs') : join(folder, 'index.cjs')
  const read = Metrics.safeParse(require(file))
  if (!read.success || read.data.capHeight <= 0) return undefined
  const { familyName, fullName, category, capHeight, unitsPerEm } = read.data
  const style = slant ?? CATEGORY_STYLES.get(category ?? '')
  return { kind: 'metrics', family: familyName, name: fullName, capHeight: capHeight / unitsPerEm, style }
}

/**
 * The face that a text is set in. Only the first family is looked at: what would replace it on another machine is not what
 * was designed. Never throws for an unknown family.
 * @param weight CSS weight, 1 to 1000
 * @param fontStyle CSS font-style: normal, italic, oblique
 */
export function resolveFace(families: readonly string[], weight: number, fontStyle: string): ResolvedFace {
  const family = families[0]?.trim()
  if (!family) return { kind: 'unknown', why: 'the text names no typeface' }
  const wanted = wantedFace(family, weight, fontStyle)
  if (GENERIC.has(keyOf(family)))
    return { kind: 'unknown', family, why: `“${family}” names a kind of typeface, not one typeface` }
  const shipped = SHIPPED.get(wanted.key)
  if (shipped) return outlineFace(shipped, wanted)
  return (
    metricsFace(wanted) ?? {
      kind: 'unknown',
      family,
      why: `the outlines of the typeface “${family}” are not known here`,
    }
  )
}
