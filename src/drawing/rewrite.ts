import type { Written } from './source-text.js'

/** Changes of a drawing's text: characters from one offset up to another are replaced, all others stay as they are. */
export interface Edit {
  from: number
  to: number
  text: string
}

/** @throws {Error} when two changes overlap. */
export function rewritten(text: string, edits: readonly Edit[]): string {
  const sorted = [...edits].sort((a, b) => a.from - b.from || a.to - b.to)
  const pieces: string[] = []
  let at = 0
  for (const { from, to, text: by } of sorted) {
    if (from < at) throw new Error('two changes of one place of the drawing')
    pieces.push(text.slice(at, from), by)
    at = to
  }
  return [...pieces, text.slice(at)].join('')
}

/** Takes an element out, with the line that it stood on when it stood there alone. */
export function removal(text: string, { start, end }: Written): Edit {
  const before = /(?:\r?\n)?[ \t]*$/.exec(text.slice(Math.max(0, start - LONGEST_INDENT), start))?.[0] ?? ''
  const alone = before.includes('\n') && /^[ \t]*(?:\r?\n|$)/.test(text.slice(end, end + LONGEST_INDENT))
  return { from: alone ? start - before.length : start, to: end, text: '' }
}

const LONGEST_INDENT = 400

/**
 * Gives an attribute of an element another value, or the attribute itself where it has none.
 * @param value is written as it is, in the quotes that are there: it holds no mark of XML but what the old value held
 */
export function attributeSet(text: string, { name, start, inside }: Written, attribute: string, value: string): Edit {
  const tag = text.slice(start, inside)
  for (const { 0: whole, 1: found, 2: quoted, index } of tag.matchAll(ATTRIBUTE)) {
    if (found !== attribute) continue
    const from = start + index + whole.length - quoted.length
    return { from, to: from + quoted.length, text: `${quoted[0]}${value}${quoted[0]}` }
  }
  const from = start + 1 + name.length
  return { from, to: from, text: ` ${attribute}="${value}"` }
}

const ATTRIBUTE = /([^\s=<>"'/]+)\s*=\s*("[^"]*"|'[^']*')/g

/** The value of an attribute of an element, as it is written between its quotes. */
export function attributeOf(text: string, { start, inside }: Written, attribute: string): string | undefined {
  for (const { 1: found, 2: quoted } of text.slice(start, inside).matchAll(ATTRIBUTE))
    if (found === attribute) return quoted.slice(1, -1)
  return undefined
}

/** Before the end tag of an element that has one. */
export const beforeEnd = (text: string, { end }: Written): number => text.lastIndexOf('</', end - 1)
