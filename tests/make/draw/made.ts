import { check } from '../../../src/check.js'
import { draw, type Drawn } from '../../../src/make/draw/draw.js'
import type { SignOrder } from '../../../src/make/draw/order.js'
import { Refusal } from '../../../src/refusal.js'
import type { Report } from '../../../src/report/schema.js'
import { findStandards } from '../../../src/standards/catalogue.js'
import { translator } from '../../braille/translator.js'

/** Drawings made and checked as a client would: the drawing and the sign go to the check together. */

export const SETS = [['us-ada-2010'], ['us-ca-2019'], ['au-aba', 'au-ncc-2022']]

export const room = (text: string, more: Partial<SignOrder> = {}): SignOrder => ({
  use: 'permanent-room',
  lettering: [{ text }],
  ...more,
})

export const made = (order: SignOrder, standards: string[]): Drawn =>
  draw(order, findStandards(standards), translator())

export const checked = ({ drawing, sign }: Pick<Drawn, 'drawing' | 'sign'>, standards: string[]): Report =>
  check(
    {
      drawing: new TextEncoder().encode(drawing),
      sign,
      standards,
      options: { use: sign.use, decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
    },
    translator(),
  )

/** What of the drawing stage does not pass, for people to read. */
export const notPassing = (report: Report): string[] =>
  report.findings
    .filter(({ stage, force }) => stage === 'drawing' && force === 'shall')
    .filter(({ verdict }) => verdict === 'fail' || verdict === 'undetermined')
    .map(({ requirement, message }) => `${requirement}: ${message}`)

export function refusalOf(run: () => unknown): Refusal {
  try {
    run()
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
  throw new Error('It was not refused.')
}

/** The circles of a drawing as they stand in its text. */
export const circlesIn = (drawing: string): { x: number; y: number; r: number }[] =>
  [...drawing.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/gu)].map(([, x, y, r]) => ({
    x: Number(x),
    y: Number(y),
    r: Number(r),
  }))
