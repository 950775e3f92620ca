import type { BrailleCode } from '../sign/sign.js'

/** Answers that are kept: the same few texts are asked for again and again, within one sign and from sign to sign. */

const MOST_REMEMBERED = 5000
const LONGEST_REMEMBERED = 200

/** A function of a text, with its last answers kept. Long texts and errors are not. */
export function remember<T>(answer: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>()
  return (text) => {
    const before = known.get(text)
    if (before !== undefined || known.has(text)) return before as T
    const value = answer(text)
    if (text.length > LONGEST_REMEMBERED) return value
    if (known.size >= MOST_REMEMBERED) for (const oldest of known.keys()) if (known.delete(oldest)) break
    known.set(text, value)
    return value
  }
}

/** The same for a function of a text and a code. */
export function rememberByCode<T>(
  answer: (text: string, code: BrailleCode) => T,
): (text: string, code: BrailleCode) => T {
  const byCode: Record<BrailleCode, (text: string) => T> = {
    'ueb-contracted': remember((text) => answer(text, 'ueb-contracted')),
    'ueb-uncontracted': remember((text) => answer(text, 'ueb-uncontracted')),
  }
  return (text, code) => byCode[code](text)
}
