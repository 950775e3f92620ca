import { readdirSync, readFileSync } from 'node:fs'
import type { Translator } from '../../src/braille/translator.js'
import { readSign, type CheckOptions } from '../../src/check.js'
import { readDrawing } from '../../src/drawing/read.js'
import { findBraille } from '../../src/recognise/findbraille.js'
import { labelParts } from '../../src/recognise/labelling.js'
import { Refusal } from '../../src/refusal.js'
import { isKnown, type BrailleBlock } from '../../src/sign/sign.js'

/**
 * Drawings that are no tactile signs: the icons of the package bootstrap-icons. None of them holds braille; some hold
 * letters or figures. What is claimed of them is counted.
 */

export interface Claims {
  icons: number
  /** What is read where something is read. */
  read: { name: string; text: string }[]
  /** Nothing tactile is found: the problem `no-tactile-elements`. */
  refused: number
  /** Nothing is read; something that could be characters, a pictogram or braille is left open. */
  open: number
}

const FOLDER = new URL('../../node_modules/bootstrap-icons/icons/', import.meta.url)
/** Every icon is drawn on a square of so many units. */
const UNITS = 16

const NAMES = readdirSync(FOLDER)
  .sort()
  .map((file) => file.replace(/\.svg$/, ''))
const bytesOf = (name: string) => readFileSync(new URL(`${name}.svg`, FOLDER))

const OPTIONS: CheckOptions = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }

/**
 * Looks at each icon as the first step of a check does that looks for braille.
 * @param size side of the icon, millimetres
 */
export function brailleOnIcons(size: number, translator: Translator): Pick<Claims, 'icons' | 'read'> {
  const read = NAMES.flatMap((name) => {
    const drawing = readDrawing(bytesOf(name), { scale: size / UNITS })
    const cells = cellsOf(findBraille(labelParts(drawing, {}), [], [], translator).blocks)
    return cells === '' ? [] : [{ name, text: cells }]
  })
  return { icons: NAMES.length, read }
}

const cellsOf = (blocks: readonly BrailleBlock[]): string =>
  blocks.flatMap(({ lines }) => lines.flatMap(({ cells }) => (isKnown(cells) ? [cells.value] : []))).join(' / ')

/** Reads every so many-th icon whole, and those once read wrong. @param size side of the icon, millimetres */
export function textOnIcons(every: number, size: number, translator: Translator): Claims {
  const names = NAMES.filter((name, i) => i % every === 0 || ONCE_WRONG.includes(name))
  const claims: Claims = { icons: names.length, read: [], refused: 0, open: 0 }
  const options = { ...OPTIONS, scale: size / UNITS }
  for (const name of names) {
    try {
      const { lettering } = readSign({ drawing: bytesOf(name), standards: [], options }, translator)
      const texts = lettering.flatMap(({ lines }) => lines.flatMap(({ text }) => (isKnown(text) ? [text.value] : [])))
      if (texts.length > 0) claims.read.push({ name, text: texts.join(' / ') })
      else claims.open++
    } catch (error) {
      if (!(error instanceof Refusal) || error.type !== 'no-tactile-elements') throw error
      claims.refused++
    }
  }
  return claims
}

/** An earlier version claimed a text on these that they do not show; they are read every time. */
export const ONCE_WRONG: readonly string[] = ['anthropic', 'card-list', 'window-dock']

/** What some icons show, judged by eye: those on which a text was claimed when all were read. */
export const SHOWN: Readonly<Record<string, string>> = {
  123: '123',
  'alphabet-uppercase': 'ABC',
  alphabet: 'abc',
  'badge-3d': '3D',
  'badge-4k': '4K',
  'badge-8k': '8K',
  'badge-ad': 'Ad',
  'badge-ar': 'AR',
  'badge-hd': 'HD',
  'badge-tm': 'TM',
  'badge-vr': 'VR',
  'calendar-date': '19',
  'calendar-day-fill': 'Fri',
  'calendar-day': 'Fri',
  'calendar-month': 'Aug',
  'calendar2-day-fill': 'Fri',
  'ev-station': 'EV',
  'sign-dead-end': 'DEAD / END',
  'sign-do-not-enter': 'DO NOT / ENTER',
  'sign-stop': 'STOP',
  'sign-yield': 'YIELD',
  'type-h1': 'H1',
  'type-h2': 'H2',
  'type-h3': 'H3',
  'type-h5': 'H5',
  'type-h6': 'H6',
  type: 'Aa',
}
