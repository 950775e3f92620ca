/** References as CSS writes them: `url(#name)`, with or without quotes. */

const REFERENCE = /^\s*url\(\s*(?:"([^"]*)"|'([^']*)'|([^)'"]*?))\s*\)\s*(.*?)\s*$/s

/** Longer texts are not looked into. */
const LONGEST = 1000

export interface Reference {
  /** What stands in the brackets: `#name` in this file, anything else elsewhere. */
  target: string
  /** What is written after it, to fall back on. */
  rest: string
}

export function parseReference(written: string): Reference | undefined {
  if (written.length > LONGEST || !/^\s*url\(/.test(written)) return undefined
  const found = REFERENCE.exec(written)
  return found ? { target: (found[1] ?? found[2] ?? found[3]).trim(), rest: found[4] } : undefined
}
