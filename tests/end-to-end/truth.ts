import { readFileSync, readdirSync } from 'node:fs'

/** What a drawing in tests/drawings holds by design; see tests/drawings/README.md. */
export interface Truth {
  name: string
  braille_lines?: { unicode: string; text: string }[]
  dots?: { x: number; y: number; d: number; line: number; cell: number; dot: number; role: string }[]
  dots_state?: string
  measured?: Record<string, number>
  violates?: string[]
  violates_also_acceptable?: string[]
  violates_optional?: boolean
  expectProblem?: string
  css_scale?: number
  raised_lines?: { text: string; cap_height: number; stroke: number; letter_gap: number }[]
  text_live?: boolean
  text_to_braille_mm?: number
  colours?: { contrast_ratio: number }
  panel?: { w: number; h: number }
}

const folder = new URL('../drawings/', import.meta.url)

export const truths: Truth[] = readdirSync(new URL('truth/', folder))
  .sort()
  .map((file) => JSON.parse(readFileSync(new URL(`truth/${file}`, folder), 'utf8')) as Truth)

export const drawingOf = (name: string): Uint8Array => readFileSync(new URL(`svg/${name}.svg`, folder))
