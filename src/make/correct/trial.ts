import { tidyCells } from '../../braille/cells.js'
import { rewritten } from '../../drawing/rewrite.js'
import { cellsOf } from '../../measure/pairing.js'
import type { Report } from '../../report/schema.js'
import { Refusal } from '../../refusal.js'
import type { Sign } from '../../sign/sign.js'
import type { Rewrite } from './outcome.js'
import { sheetOf, type Examine, type Sheet } from './sheet.js'
import { showsOnly } from './unchanged.js'

/** A rewrite tried on the drawing: taken only when the service's own check of the result bears it out. */

export interface Trial {
  sheet: Sheet
  /** Requirements that failed before and do not any more. */
  mended: string[]
  /** Requirements that passed before and do not any more. */
  broken: string[]
}

export interface Trier {
  examine: Examine
  scale: number | undefined
}

/** Undefined when the text cannot be read any more, or shows something else than what was meant. */
export function tried(before: Sheet, rewrite: Rewrite, { examine, scale }: Trier): Trial | undefined {
  const sheet = reread(encoded(rewritten(before.written.text, rewrite.edits)), scale, examine)
  if (!sheet || !showsOnly(rewrite, before.written.drawing, sheet.written.drawing)) return undefined
  return { sheet, ...compared(before.report, sheet.report) }
}

/** Undefined when the drawing cannot be judged any more. */
function reread(bytes: Uint8Array, scale: number | undefined, examine: Examine): Sheet | undefined {
  try {
    return sheetOf(bytes, scale, examine)
  } catch (error) {
    if (error instanceof Refusal) return undefined
    throw error
  }
}

/** A text as bytes. A declared encoding is not that of the bytes any more: a byte order mark outranks it (XML 1.0, appendix F). */
export const encoded = (text: string): Uint8Array =>
  new TextEncoder().encode(/^\s*<\?xml[^>]*encoding/u.test(text) ? `\ufeff${text}` : text)

export function compared(before: Report, after: Report): Pick<Trial, 'mended' | 'broken'> {
  const verdicts = new Map(after.findings.map(({ requirement, verdict }) => [requirement, verdict]))
  const mended: string[] = []
  const broken: string[] = []
  for (const { requirement, verdict, force } of before.findings) {
    const now = verdicts.get(requirement)
    if (verdict === 'fail' && now !== 'fail') mended.push(requirement)
    if (force === 'shall' && verdict === 'pass' && now !== 'pass' && now !== 'not-applicable') broken.push(requirement)
  }
  return { mended, broken }
}

/** Whether the braille of a sign reads as it should, block by block in any order. */
export function reads(sign: Sign, cells: readonly string[]): boolean {
  const found = sign.braille.map((block) => tidyCells(cellsOf(block) ?? '')).sort()
  const wanted = [...cells].sort()
  return found.length === wanted.length && found.every((one, i) => one === wanted[i])
}
