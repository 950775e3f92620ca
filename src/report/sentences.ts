/** Small grammar for the sentences of a report. */

/** "a, b or c". */
export function choices(list: string[]): string {
  if (list.length < 2) return list.join('')
  return `${list.slice(0, -1).join(', ')} or ${list[list.length - 1]}`
}

/** A sentence to stand after a colon; names and abbreviations keep their capital. */
export const lowerFirst = (text: string): string =>
  /^[A-Z][a-z ]/.test(text) ? text[0].toLowerCase() + text.slice(1) : text

const ENDED = /[.!?…]["'’”)]?$/
/** What is a sentence already, as most of our own texts are. */
const WHOLE = /^[A-Z][^]*[.!?]$/

/** One sentence: a capital first and a full stop last. */
export function sentence(text: string): string {
  if (WHOLE.test(text)) return text
  const trimmed = text.trim()
  if (trimmed === '') return ''
  const first = trimmed[0].toUpperCase() + trimmed.slice(1)
  return ENDED.test(first) ? first : `${first}.`
}
