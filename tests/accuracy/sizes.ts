import type { Font } from 'fontkit'
import type { Translator } from '../../src/braille/translator.js'
import { readSign, type CheckOptions } from '../../src/check.js'
import { measurer } from '../../src/measure/measurer.js'
import { isKnown, type Fact, type Sign } from '../../src/sign/sign.js'
import { heldOutFaces, referenceFaces } from '../recognise/letters/faces.js'
import { seeded, type Random } from './random.js'
import { CONSTRUCTIONS, type Construction } from './signs/dots.js'
import { SHEETS, TURNS } from './signs/sheets.js'
import { makeSign, MEASURED, type MadeSign, type Make, type Measured, type Sizes } from './signs/sign.js'

/**
 * Signs of known size, read from their drawings: how far each measured size is from the size that the sign was made
 * with.
 */

export interface SizedSign {
  construction: Construction
  sheet: string
  turn: number
  decimals?: number
  /** Whether both lines of characters and of braille were read as they were made. */
  read: 'right' | 'open' | 'wrong'
  /** Measured less true, millimetres; undefined where nothing was measured. */
  errors: Record<Measured, number | undefined>
}

/** Faces whose I is a plain bar, so that its stroke is an exact number of the font file. */
const FACES = ['OpenSans_600SemiBold', 'Arimo_400Regular', 'DejaVuSans', 'Poppins_500Medium', 'Inter_500Medium']

/** Words of rooms, invented for their straight sides: see `Make.lines`. */
const WORDING: readonly (readonly [string, string])[] = [
  ['OFFICE', 'HALL'],
  ['MEDICINE', 'MILK'],
  ['CHOIR', 'MAIN HALL'],
  ['MOBILE', 'FILM'],
  ['PRINCE', 'PRINTER'],
  ['CHILDREN', 'LINEN'],
  ['DINING', 'BIKE HIRE'],
]

/** Bounds of the cell spacing, in dot spacings. */
export type Share = readonly [least: number, most: number]

/** From the narrowest to the widest that the limits of 2010 ADA Standards, Table 703.3.1, leave, rounded outwards. */
export const CELL_OVER_DOT: Share = [2.4, 3.3]

/** Millimetres: round about what the standards ask, and beyond it on both sides (invented). */
const sizesFrom = (random: Random, share = CELL_OVER_DOT): Sizes => {
  const characterHeight = random.between(15, 30)
  const dotSpacing = random.between(2.2, 2.7)
  return {
    dotBaseDiameter: random.between(1.3, 1.8),
    dotSpacing,
    cellSpacing: dotSpacing * random.between(...share),
    lineSpacing: random.between(9.8, 11),
    characterHeight,
    tracking: random.between(1, 3),
    baselineSpacing: characterHeight * random.between(1.3, 1.6),
    clearance: random.between(9, 13),
  }
}

const OPTIONS: CheckOptions = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }

/** Every construction of the dots in every sheet and turn, each with other sizes; faces and words take turns. */
export function sizedSigns(translator: Translator): SizedSign[] {
  const random = seeded(204)
  const fonts = openFonts()
  let count = 0
  return CONSTRUCTIONS.flatMap((construction) =>
    SHEETS.flatMap((sheet) =>
      TURNS.map((turn) => {
        const nth = count++
        const lines = WORDING[nth % WORDING.length]
        return measured(
          { font: fonts[nth % fonts.length], lines, sizes: sizesFrom(random), construction, sheet, turn },
          translator,
        )
      }),
    ),
  )
}

/** Signs in millimetres, their coordinates cut to so many digits behind the point. */
export function roundedSigns(decimals: number, translator: Translator): SizedSign[] {
  const random = seeded(204 + decimals)
  return openFonts().flatMap((font) =>
    WORDING.map((lines) =>
      measured(
        { font, lines, sizes: sizesFrom(random), construction: CONSTRUCTIONS[0], sheet: SHEETS[0], turn: 0, decimals },
        translator,
      ),
    ),
  )
}

/** Signs whose cells stand nearer or farther than that. */
export function oddSigns(share: Share, translator: Translator): SizedSign[] {
  const random = seeded(204)
  const fonts = openFonts()
  return TURNS.flatMap((turn) =>
    WORDING.map((lines, i) => {
      const sizes = sizesFrom(random, share)
      const font = fonts[i % fonts.length]
      return measured({ font, lines, sizes, construction: CONSTRUCTIONS[0], sheet: SHEETS[0], turn }, translator)
    }),
  )
}

function openFonts(): Font[] {
  const all = [...referenceFaces(), ...heldOutFaces()]
  return FACES.map((name) => {
    const face = all.find((f) => f.name === name)
    if (!face) throw new Error(name)
    return face.font
  })
}

function measured(make: Make, translator: Translator): SizedSign {
  const made = makeSign(make, translator)
  const sign = readSign({ drawing: Buffer.from(made.svg), standards: [], options: OPTIONS }, translator)
  const found = foundOn(sign, translator)
  const errors = Object.fromEntries(
    MEASURED.map((name) => [name, found[name] === undefined ? undefined : found[name] - made.truth[name]]),
  ) as SizedSign['errors']
  const { construction, sheet, turn, decimals } = make
  return { construction, sheet: sheet.name, turn, decimals, read: readingOf(sign, make, made), errors }
}

const known = <T>(fact: Fact<T> | undefined) => (isKnown(fact) ? fact : undefined)

function readingOf(sign: Sign, { lines }: Make, { cells }: MadeSign): SizedSign['read'] {
  const texts = sign.lettering.flatMap((l) => l.lines.map((line) => known(line.text)?.value))
  const braille = sign.braille.flatMap((b) => b.lines.map((line) => known(line.cells)?.value))
  if (texts.join('\n') === lines.join('\n') && braille.join('\n') === cells.join('\n')) return 'right'
  const all: readonly string[] = [...lines, ...cells]
  return [...texts, ...braille].every((said) => said === undefined || all.includes(said)) ? 'open' : 'wrong'
}

/** What the sign says of itself; nothing when there is more than one block or set, which none of these signs has. */
function foundOn(sign: Sign, translator: Translator): Partial<Record<Measured, number>> {
  if (sign.lettering.length !== 1 || sign.braille.length !== 1) return {}
  const [[letters], [block]] = [sign.lettering, sign.braille]
  const clearance = measurer(sign, translator)('braille.characterClearance', {}).observations[0]?.value
  const spacing = known(letters.characterSpacing)
  return {
    dotBaseDiameter: known(block.dotBaseDiameter)?.value,
    dotSpacing: known(block.dotSpacing)?.value,
    cellSpacing: known(block.cellSpacing)?.value,
    lineSpacing: known(block.lineSpacing)?.value,
    characterHeight: known(letters.characterHeight)?.value,
    strokeThickness: known(letters.strokeThickness)?.value,
    leastCharacterSpacing: spacing?.min ?? spacing?.value,
    greatestCharacterSpacing: spacing?.max ?? spacing?.value,
    baselineSpacing: known(letters.baselineSpacing)?.value,
    characterClearance: typeof clearance === 'number' ? clearance : undefined,
  }
}
