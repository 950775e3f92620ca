import { cellWords, tidyCells } from '../../braille/cells.js'
import type { Translator } from '../../braille/translator.js'
import { frameOf } from '../../measure/frame.js'
import { raisedLettering } from '../../measure/lettering.js'
import { lyingOf } from '../../measure/lie.js'
import { BLANK, cellsOf, tryPair, type Pair } from '../../measure/pairing.js'
import type { Finding } from '../../report/finding-schema.js'
import { isKnown, type BrailleBlock } from '../../sign/sign.js'
import { breaksOf, cellsFor, sharedOut } from './braille-cells.js'
import { redrawn, type Redrawn } from './draw-dots.js'
import { RoundOutlines } from './marks.js'
import { NotCorrectable, type Rewrite } from './outcome.js'
import { roomFor } from './room.js'
import { setBlock, type Way } from './set-block.js'
import { offenders, type Sheet } from './sheet.js'
import { SIZE_QUANTITIES, sizesFor } from './sizes.js'
import { wishFor } from './surroundings.js'

/** Braille put right: respaced, written anew from the lettering, moved clear of what it keeps away from. */

export const WORDING = [
  'braille.wording',
  'braille.contracted',
  'braille.uncontracted',
  'braille.capitals',
  'braille.capitalsKept',
]
export const SPACING: string[] = [...SIZE_QUANTITIES, 'braille.variation', 'braille.wordGap']
export const PLACING = [
  'braille.position',
  'braille.characterClearance',
  'braille.borderClearance',
  'braille.textGap',
  'braille.alignment',
]

const NOT_DRAWN = 'The braille is not drawn as round dots, so that no dot of it can be moved.'
const UNREAD = 'The braille was not read well enough to be set anew.'
const LIES =
  'The braille lies otherwise than the letters: which way the sign is to be read is a decision of its design.'
const NO_PAIR = 'Which characters the braille repeats is not known.'
const SEVERAL = 'Several blocks of braille say one text, and its words cannot be shared out among them as before.'
export const NO_ROOM =
  'There is no room for the braille on the panel that keeps it clear of the characters, of borders and of the edge: the design has to change.'

/** How far inside of limits a place is looked for, the best first: a limit that is just kept is crossed by any spread. Millimetres. */
const INSIDE = [0.5, 0.01]

/** What a rewrite is meant to make of the braille: the cells of each block. */
export interface BrailleRewrite extends Rewrite {
  cells: string[]
}

/**
 * @param failed the rows to be put right
 * @param named whether the new dots are named as braille
 */
export function brailleRewrite(
  sheet: Sheet,
  failed: readonly Finding[],
  translator: Translator,
  named: boolean,
): BrailleRewrite | NotCorrectable {
  const { sign, written } = sheet
  const outlines = new RoundOutlines(written.drawing)
  const set = placesAnew(sheet, failed, translator)
  if (set instanceof NotCorrectable) return set
  const cells = sign.braille.map((block) => cellsOf(block) ?? '')
  const blocks: Redrawn[] = []
  for (const [n, { dots, diameter, cells: own }] of set) {
    const block = sign.braille[n]
    const old = outlines.ofBlock(block)
    if (!old) return new NotCorrectable(NOT_DRAWN)
    blocks.push({ old, dots, diameter, measured: isKnown(block.dotBaseDiameter) ? block.dotBaseDiameter.value : 0 })
    cells[n] = own
  }
  const rewrite = redrawn(written, blocks, named)
  return rewrite instanceof NotCorrectable ? rewrite : { ...rewrite, cells: cells.map(tidyCells) }
}

/** Where the dots of each block that breaks a row are to be, by the number of the block. */
export function placesAnew(
  sheet: Sheet,
  failed: readonly Finding[],
  translator: Translator,
): Map<number, SetAnew> | NotCorrectable {
  const { braille } = sheet.sign
  const found = tryPair(sheet.sign, translator)
  const pairs = Array.isArray(found) ? found : []
  const places = new Map<number, SetAnew>()
  for (const [n, block] of braille.entries()) {
    const own = failed.filter((row) => offenders(row, 'braille', braille.length).includes(n))
    if (own.length === 0) continue
    const repeated = pairs.find((pair) => pair.blocks.some((one) => one.n === n))
    const set = setAnew(block, own, repeated, sheet, translator)
    if (set instanceof NotCorrectable) return set
    places.set(n, set)
  }
  return places.size > 0 ? places : new NotCorrectable(UNREAD)
}

/** A block as it is to be. */
export interface SetAnew {
  dots: { x: number; y: number }[]
  diameter: number
  cells: string
}

function setAnew(
  block: BrailleBlock,
  failed: readonly Finding[],
  repeated: Pair | undefined,
  { sign, report }: Sheet,
  translator: Translator,
): SetAnew | NotCorrectable {
  const text = repeated?.lettering ?? raisedLettering(sign).map(({ lettering }) => lettering)
  if (lyingOf(block, text) !== 'alike') return new NotCorrectable(LIES)
  const sizes = sizesFor(block, failed)
  if (sizes instanceof NotCorrectable) return sizes
  const lines = linesFor(block, failed, repeated, (pair) => cellsFor(pair, report, sign, translator), sizes)
  if (lines instanceof NotCorrectable) return lines
  const frame = frameOf(sign)
  const asked = alignmentAsked(failed)
  for (const inside of INSIDE) {
    const wish = wishFor(block, text, { sign, report, frame }, { radius: sizes.diameter / 2, inside })
    for (const cells of lines) {
      const dots = setBlock(block, text, frame, { sizes, cells, ...(asked && { asked }) })
      if (!dots) return new NotCorrectable(UNREAD)
      const shift = roomFor(dots, wish)
      if (!shift) continue
      const there = dots.map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y }))
      return { dots: there, diameter: sizes.diameter, cells: cells.join(BLANK) }
    }
  }
  return new NotCorrectable(NO_ROOM)
}

const WAYS: readonly Way[] = ['flush-left', 'centred', 'flush-right']

/** How a row asks the braille to stand under its text, where it does not. */
function alignmentAsked(failed: readonly Finding[]): Way | undefined {
  const allowed = failed.find(({ quantity }) => quantity === 'braille.alignment')?.limit.allowed ?? []
  return WAYS.find((one) => allowed.includes(one))
}

/** Ways to break the cells of a block into lines, the best first. */
function linesFor(
  block: BrailleBlock,
  failed: readonly Finding[],
  repeated: Pair | undefined,
  wanted: (pair: Pair) => string[] | NotCorrectable,
  sizes: Parameters<typeof breaksOf>[2],
): string[][] | NotCorrectable {
  const lines = block.lines.map(({ cells }) => (isKnown(cells) ? cells.value : undefined))
  if (lines.includes(undefined)) return new NotCorrectable(UNREAD)
  const known = lines.filter((line) => line !== undefined)
  if (!failed.some(({ quantity }) => WORDING.includes(quantity))) {
    if (repeated?.blocks.length !== 1) return [known]
    return [known, ...breaksOf(cellWords(known.join(BLANK)), repeated, sizes)]
  }
  if (!repeated) return new NotCorrectable(NO_PAIR)
  const words = wanted(repeated)
  if (words instanceof NotCorrectable) return words
  if (repeated.blocks.length === 1) return breaksOf(words, repeated, sizes)
  const counts = repeated.blocks.map(({ block: one }) => wordsIn(one))
  const shares = sharedOut(words, counts)
  const own = shares?.[repeated.blocks.findIndex((one) => one.block === block)]
  if (own === undefined) return new NotCorrectable(SEVERAL)
  return breaksOf(own.split(BLANK), { ...repeated, blocks: repeated.blocks.filter((b) => b.block === block) }, sizes)
}

const wordsIn = (block: BrailleBlock): number =>
  tidyCells(cellsOf(block) ?? '')
    .split(BLANK)
    .filter(Boolean).length
