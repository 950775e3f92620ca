import { Resvg } from '@resvg/resvg-js'
import { readFileSync } from 'node:fs'
import { createTranslator } from '../../../src/braille/engine.js'
import { examine, type CheckInput } from '../../../src/check.js'
import type { Box } from '../../../src/geometry/box.js'
import { correct } from '../../../src/make/correct/correct.js'
import type { CorrectionContent } from '../../../src/make/correct/schema.js'
import type { Report } from '../../../src/report/schema.js'

/** Drawings put right as the service does it, and their pictures as another reader of SVG paints them. */

const translator = createTranslator()

const OPTIONS: CheckInput['options'] = {
  use: 'permanent-room',
  decisionRule: 'simple',
  unitSystem: 'printed',
  language: 'en',
}

export const bytesOf = (svg: string): Uint8Array => new TextEncoder().encode(svg)

export const checkedAgainst = (drawing: Uint8Array, standards = ['us-ada-2010']): Report =>
  examine({ drawing, standards, options: OPTIONS }, translator).report

export function corrected(
  drawing: Uint8Array,
  standards = ['us-ada-2010'],
  options: Partial<CheckInput['options']> = {},
): CorrectionContent & { checks: number } {
  const input: CheckInput = { drawing, standards, options: { ...OPTIONS, ...options } }
  let checks = 0
  const again = (changed: Uint8Array) => {
    checks++
    return examine({ ...input, drawing: changed }, translator)
  }
  return { ...correct(input, again, translator), checks }
}

export const fileOf = (name: string): Uint8Array => {
  for (const folder of ['./svg/', '../../drawings/svg/'])
    try {
      return readFileSync(new URL(`${folder}${name}.svg`, import.meta.url))
    } catch {
      continue
    }
  throw new Error(`no drawing ${name}`)
}

export const failedRows = ({ findings }: Report): string[] =>
  findings.filter(({ verdict, force }) => verdict === 'fail' && force === 'shall').map(({ requirement }) => requirement)

const PIXELS_ACROSS = 1600
/** Steps of eight bits by which a pixel on an edge may differ. */
const SAME_PIXEL = 40

/** The pixels in which two drawings differ as resvg paints them, in millimetres of a page of a known width. */
export function differences(before: string, after: string, width: number): { x: number; y: number }[] {
  const paint = (svg: string) =>
    new Resvg(svg, {
      font: { loadSystemFonts: false },
      background: '#fff',
      fitTo: { mode: 'width', value: PIXELS_ACROSS },
    }).render()
  const [a, b] = [paint(before), paint(after)]
  if (a.width !== b.width || a.height !== b.height) throw new Error('the pages differ in size')
  const [first, second] = [a.pixels, b.pixels]
  const scale = width / a.width
  const found: { x: number; y: number }[] = []
  for (let i = 0; i < first.length; i += 4) {
    const apart = Math.max(...[0, 1, 2].map((c) => Math.abs(first[i + c] - second[i + c])))
    const pixel = i / 4
    if (apart > SAME_PIXEL) found.push({ x: (pixel % a.width) * scale, y: Math.floor(pixel / a.width) * scale })
  }
  return found
}

/** Whether a point lies in one of some boxes, or a hair beside it. */
export const isWithin = ({ x, y }: { x: number; y: number }, boxes: readonly Box[]): boolean =>
  boxes.some(
    (b) => x >= b.x - BESIDE && y >= b.y - BESIDE && x <= b.x + b.width + BESIDE && y <= b.y + b.height + BESIDE,
  )

/** Millimetres. */
const BESIDE = 0.4

/** The boxes of all braille of a report, and of its lettering. */
export const boxesOf = ({ reading }: Report, what: 'braille' | 'lettering'): Box[] =>
  what === 'braille'
    ? reading.braille.flatMap(({ lines }) => lines.flatMap(({ box }) => box ?? []))
    : reading.lettering.flatMap(({ box }) => box ?? [])
