/**
 * Numbers as people write them. A point or a comma may divide the decimals or the thousands; which, is decided by cells that can
 * be read one way only, then by the semicolons of a file, and never by habit where both are possible.
 */

/** `mixed`: the file has both; null: it has neither. */
export type DecimalMark = '.' | ',' | 'mixed' | null

/** What a number says about the decimal mark of its file. */
export function decimalMarkIn(written: string): '.' | ',' | null {
  const [mark, other] = [lastMark(written), firstMark(written)]
  if (!mark || !other) return null
  if (mark !== other) return mark
  const parts = written.split(mark)
  if (parts.length > 2) return null
  return canBeThousands(written, mark) ? null : mark
}

/** The decimal mark of a file from all its numbers; what divides its cells decides where they do not. */
export function decimalMark(written: readonly string[], delimiter: string | null): DecimalMark {
  const marks = new Set(written.flatMap((number) => decimalMarkIn(number) ?? []))
  if (marks.size > 1) return 'mixed'
  const [only] = marks
  return only ?? (delimiter === ';' ? ',' : null)
}

/** The number, `ambiguous` when it can be read in two ways and nothing decides, or null when it is none. */
export function readDecimal(written: string, mark: DecimalMark, delimiter: string | null): number | 'ambiguous' | null {
  if (/^\d+$/.test(written)) return Number(written)
  const own = decimalMarkIn(written)
  if (own) return asNumber(written, own)
  const used = lastMark(written)
  if (!used) return null
  if (written.split(used).length > 2) return canBeThousands(written, used) ? Number(written.replaceAll(used, '')) : null
  if (mark === used) return asNumber(written, used)
  if (mark === 'mixed') return 'ambiguous'
  if (mark === null) return used === '.' ? asNumber(written, used) : 'ambiguous'
  // The file divides decimals by the other mark, so that this one divides thousands; semicolons speak for commas only.
  return mark === '.' && delimiter === ';' ? 'ambiguous' : Number(written.replaceAll(used, ''))
}

const lastMark = (written: string): '.' | ',' | null => {
  const at = Math.max(written.lastIndexOf('.'), written.lastIndexOf(','))
  return at < 0 ? null : written[at] === '.' ? '.' : ','
}
const firstMark = (written: string): string | null => /[.,]/.exec(written)?.[0] ?? null

const canBeThousands = (written: string, mark: string): boolean =>
  (mark === '.' ? /^[1-9]\d{0,2}(\.\d{3})+$/ : /^[1-9]\d{0,2}(,\d{3})+$/).test(written)

/** Digits with one decimal mark, thousands divided by the other one. */
function asNumber(written: string, mark: '.' | ','): number | null {
  const other = mark === '.' ? ',' : '.'
  const [whole = '', decimals = '', ...more] = written.split(mark)
  if (more.length > 0 || decimals.includes(other)) return null
  if (whole.includes(other) && !canBeThousands(whole, other)) return null
  const digits = `${whole.replaceAll(other, '')}.${decimals}`
  return /^\d*\.\d*$/.test(digits) && /\d/.test(digits) ? Number(digits) : null
}
