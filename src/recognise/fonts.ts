import { readdirSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { z } from 'zod'
import type { TypefaceStyle } from '../sign/sign.js'
import { keyOf, type MetricsFace, type ResolvedFace, type SubstituteFace, type WantedFace } from './faces.js'
import { BOLD_WEIGHT, matchWeight, NORMAL_WEIGHT, shippedFace } from './shipped.js'

/**
 * Typefaces by name. Shipped ones (DejaVu, Open Sans, Arimo, Tinos, Cousine) give real outlines. Faces that have the advances of
 * a shipped one are set with it. Of faces of the open metrics collection `@capsizecss/metrics` the height of capitals and
 * the category are known; of any other face, nothing. This and `shipped.ts` are the places of the core that read files: data
 * of installed packages, once each, never named by the input.
 */

const require = createRequire(import.meta.url)

const HEAVIEST_WEIGHT = 900

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

/** A subset of an embedded font has six capitals before its name (ISO 32000-1, 9.6.4). */
const SUBSET_TAG = /^[A-Z]{6}\+/
/** `DejaVuSans-BoldOblique`, `Arial-BoldMT`, `Arial Bold`: after a blank only the plainest words, which are never a family's. */
const POSTSCRIPT_NAME = /^(.+)-([a-z]+?)??(italic|oblique)?(?:mt)?$/i
const FULL_NAME = /^(.+?) (regular|bold)? ?(italic|oblique)?$/i

/** The family, and what a PostScript name says of the face; the latter wins over the style of the text. */
function wantedFace(written: string, weight: number, fontStyle: string): WantedFace {
  const family = written.replace(SUBSET_TAG, '')
  const slant = fontStyle.startsWith('oblique') ? 'oblique' : fontStyle.startsWith('italic') ? 'italic' : undefined
  const named = POSTSCRIPT_NAME.exec(family) ?? FULL_NAME.exec(family)
  const word = named?.[2]?.toLowerCase()
  if (!named || (word !== undefined && !FACE_WORDS.has(word))) return { key: plainKey(family), weight, slant }
  const said = named[3]?.toLowerCase()
  return {
    key: plainKey(named[1]),
    weight: word === undefined ? weight : (FACE_WORDS.get(word) ?? weight),
    slant: said === 'italic' || said === 'oblique' ? said : slant,
    ...(word !== undefined && { exact: true }),
  }
}

/** Without what foundries add to PostScript names of families: `ArialMT`, `TimesNewRomanPSMT`. */
const plainKey = (family: string): string => keyOf(family).replace(/(ps)?mt$|ps$/, '')

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
  return folders.get(key)
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

function metricsFace({ key, weight, slant, exact }: WantedFace): MetricsFace | undefined {
  const folder = folderOf(key)
  if (folder === undefined) return undefined
  const names = filesIn(folder)
  const upright = weight === NORMAL_WEIGHT ? 'regular' : `${weight}`
  const variant = slant ? `${weight === NORMAL_WEIGHT ? '' : weight}italic` : upright
  if (exact && !names.includes(variant) && variant !== 'regular') return undefined
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
  return (
    shippedFace(wanted) ??
    substituteFace(wanted) ??
    metricsFace(wanted) ?? {
      kind: 'unknown',
      family,
      why: `the outlines of the typeface “${family}” are not known here`,
    }
  )
}

interface Compatible {
  name: string
  /** The shipped family with the same advances. */
  lender: string
  /** Drawn after the lender: the height of capitals is the lender's. */
  sameDesign?: boolean
}

/**
 * Families with the same advances as a shipped one: the makers of Arimo, Tinos and Cousine say so of Arial, Times New Roman and
 * Courier New (and so do the Liberation fonts, which took over their design with version 2); Helvetica, Times and Courier
 * have the advances of these by the aliases of fontconfig, `30-metric-aliases.conf`.
 */
const COMPATIBLE: ReadonlyMap<string, Compatible> = new Map(
  [
    { name: 'Arial', lender: 'Arimo' },
    { name: 'Helvetica', lender: 'Arimo' },
    { name: 'Liberation Sans', lender: 'Arimo', sameDesign: true },
    { name: 'Times New Roman', lender: 'Tinos' },
    { name: 'Times', lender: 'Tinos' },
    { name: 'Liberation Serif', lender: 'Tinos', sameDesign: true },
    { name: 'Courier New', lender: 'Cousine' },
    { name: 'Courier', lender: 'Cousine' },
    { name: 'Liberation Mono', lender: 'Cousine', sameDesign: true },
  ].map((family) => [keyOf(family.name), family]),
)

function substituteFace(wanted: WantedFace): SubstituteFace | undefined {
  const family = COMPATIBLE.get(wanted.key)
  if (!family) return undefined
  const weight = wanted.exact ? wanted.weight : matchWeight(wanted.weight, [NORMAL_WEIGHT, BOLD_WEIGHT])
  if (weight !== NORMAL_WEIGHT && weight !== BOLD_WEIGHT) return undefined
  const face = shippedFace({ ...wanted, key: keyOf(family.lender), weight })
  if (!face) return undefined
  const { font, name: lender } = face
  const metrics = metricsFace({ ...wanted, weight })
  const published = metrics && { share: metrics.capHeight, source: `the published metrics of ${metrics.name}` }
  const lent = { share: font.capHeight / font.unitsPerEm, source: `${lender}, whose design ${family.name} shares` }
  const style = metrics ? metrics.style : (wanted.slant ?? (family.sameDesign ? face.style : undefined))
  const { name } = family
  return {
    kind: 'substitute',
    family: name,
    name,
    font,
    lender,
    capHeight: family.sameDesign ? lent : published,
    style,
  }
}
