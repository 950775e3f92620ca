import type { Length } from '../../sign/length.js'
import { readDecimal, type DecimalMark } from './amount.js'
import { LONGEST_VALUE, shown, type Cell } from './grid.js'
import { UNIT_WORDS, type HeadingUnit } from './heading.js'

/** A length in a cell: millimetres, inches as decimals or fractions, feet and inches; with a unit of its own or that of its column. */

/** How the numbers of one file are written. */
export interface Writing {
  mark: DecimalMark
  delimiter: string | null
}

export type Read<T> = { value: T } | { fault: string }

const INCHES_PER_FOOT = 12
const MILLIMETRES_PER_CENTIMETRE = 10

const AMOUNT = String.raw`\d+\s+\d+\s*\/\s*\d+|\d+-\d+\s*\/\s*\d+|\d+\s*\/\s*\d+|[\d.,]*\d`
const FEET = new RegExp(String.raw`^(\d+)\s*(?:'|ft\.?|feet|foot)\s*-?\s*(?:(${AMOUNT})\s*(?:"|in\.?|inch|inches)?)?$`)
const ONE_UNIT = new RegExp(String.raw`^(${AMOUNT})\s*("|[a-z]+\.?)?$`)
/** “Above finished floor” after a height says nothing that its heading has not said (common practice, no source). */
const ABOVE_FLOOR = /\s*a\.?f\.?f\.?$/

/** The length, with its unit; a bare number takes the unit of its column. */
export function readLengthCell(cell: Cell, unit: HeadingUnit, writing: Writing): Read<Length> {
  if (cell instanceof Date) return { fault: IS_DATE }
  if (typeof cell === 'number') return withUnit(cell, unit)
  const text = plain(shown(cell)).replace(ABOVE_FLOOR, '')
  const feet = FEET.exec(text)
  if (feet) return inFeet(Number(feet[1]), feet[2], writing)
  const [, written, unitWord] = ONE_UNIT.exec(text) ?? []
  if (written === undefined) return { fault: 'is not one length, such as “15.9 mm”, “5/8 in” or “4\'-0"”' }
  const own = unitWord === undefined ? unit : unitNamed(unitWord)
  if (own === undefined) return { fault: `has a unit that is not known: “${unitWord}”` }
  const amount = readAmount(written, writing)
  return 'fault' in amount ? amount : withUnit(amount.value, own)
}

/** Why a date stands where a fraction was typed. */
export const IS_DATE =
  'holds a date: spreadsheets take “5/8” or “1-2” for one. Format the cell as text and type it again'

/** The text in lower case, with one kind of quotation mark and hyphen, and fractions written out: 1¼ becomes 1 1/4. */
export const plain = (text: string): string =>
  // Before normalising, which makes a double prime two single ones.
  text
    .replace(/[“”″]|''/gu, '"')
    .replace(/[‘’′]/gu, "'")
    .replace(/[¼-¾⅐-⅞]/gu, ' $&')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\u2044/gu, '/')
    .replace(/[‐-―−]/gu, '-')
    .replace(/\s+/gu, ' ')
    .trim()

/** The unit that a text ends with, if it has one of its own. */
export function ownUnit(text: string): HeadingUnit {
  if (FEET.test(text)) return 'in'
  const word = ONE_UNIT.exec(text)?.[2]
  return word === undefined ? null : (unitNamed(word) ?? null)
}

const unitNamed = (word: string): HeadingUnit | undefined => {
  const name = word === '"' ? 'in' : word.replace(/\.$/, '')
  return Object.hasOwn(UNIT_WORDS, name) ? UNIT_WORDS[name] : undefined
}

function readAmount(written: string, { mark, delimiter }: Writing): Read<number> {
  const fraction = /^(?:(\d+)(?:\s+|-))?(\d+)\s*\/\s*(\d+)$/.exec(written)
  if (fraction) {
    const [whole, over, under] = [Number(fraction[1] ?? 0), Number(fraction[2]), Number(fraction[3])]
    return under === 0 ? { fault: 'is a fraction with nothing below it' } : { value: whole + over / under }
  }
  const value = readDecimal(written, mark, delimiter)
  if (value === null) return { fault: 'is no number' }
  if (value === 'ambiguous')
    return { fault: 'can be read in two ways: its comma or point may divide decimals or thousands' }
  return { value }
}

function inFeet(feet: number, written: string | undefined, writing: Writing): Read<Length> {
  const inches = written === undefined ? { value: 0 } : readAmount(written, writing)
  return 'fault' in inches ? inches : { value: { value: feet * INCHES_PER_FOOT + inches.value, unit: 'in' } }
}

function withUnit(value: number, unit: HeadingUnit): Read<Length> {
  if (unit === null)
    return { fault: 'is a length without a unit: write it as “15.9 mm” or “5/8 in”, or put the unit into the heading' }
  if (unit === 'cm') return { value: { value: value * MILLIMETRES_PER_CENTIMETRE, unit: 'mm' } }
  return { value: { value, unit } }
}

/** The decimal numbers in a cell, to tell how the file writes them. */
export const decimalsIn = (cell: Cell): string[] =>
  typeof cell === 'string' && cell.length <= LONGEST_VALUE ? (cell.match(/\d*[.,][\d.,]*\d/gu) ?? []) : []
