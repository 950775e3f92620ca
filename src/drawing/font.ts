import { parseLength, type LengthContext } from './length.js'
import { parseNumber } from './numbers.js'

/** Font properties of live text: CSS Fonts 4, 2. */

/** CSS Fonts 4, 2.5: the key words as multiples of `medium`, which is 16 px. */
const SIZE_KEYWORDS: Readonly<Record<string, number>> = {
  'xx-small': 9 / 16,
  'x-small': 10 / 16,
  small: 13 / 16,
  medium: 1,
  large: 18 / 16,
  'x-large': 24 / 16,
  'xx-large': 32 / 16,
}
const MEDIUM = 16
/** CSS 2.2, 15.7: a usual step between neighbouring sizes. */
const STEP = 1.2

const NORMAL = 400
const BOLD = 700

/** A size in user units, `lengths` being those of the parent; undefined when it is absent or not understood. */
export function parseFontSize(text: string | undefined, lengths: LengthContext): number | undefined {
  const written = text?.trim().toLowerCase()
  if (written === undefined || written === 'inherit') return undefined
  if (Object.hasOwn(SIZE_KEYWORDS, written)) return SIZE_KEYWORDS[written] * MEDIUM
  if (written === 'larger') return lengths.fontSize * STEP
  if (written === 'smaller') return lengths.fontSize / STEP
  const percent = /^([^%]{1,30})%$/.exec(written)
  const size = percent
    ? ((parseNumber(percent[1]) ?? NaN) / 100) * lengths.fontSize
    : parseLength(written, 'y', lengths)
  return size !== undefined && Number.isFinite(size) && size >= 0 ? size : undefined
}

/** 1 to 1000; `bolder` and `lighter` by the table of CSS Fonts 4, 2.4.1. */
export function parseFontWeight(text: string | undefined, parent: number): number {
  switch (text?.trim().toLowerCase()) {
    case 'normal':
    case 'initial':
      return NORMAL
    case 'bold':
      return BOLD
    case 'bolder':
      return parent < 350 ? NORMAL : parent < 550 ? BOLD : Math.max(parent, 900)
    case 'lighter':
      return parent < 550 ? Math.min(parent, 100) : parent < 750 ? NORMAL : BOLD
    default: {
      const weight = text === undefined ? undefined : parseNumber(text)
      return weight !== undefined && weight >= 1 && weight <= 1000 ? weight : parent
    }
  }
}

export interface FontShorthand {
  style: string
  weight: string
  size: string
  family: string
}

/** `[style || variant || weight || stretch] size[/line-height] family`; undefined when it is anything else. */
export function parseFontShorthand(text: string): FontShorthand | undefined {
  const words = text.trim().slice(0, 1000).split(/\s+/)
  let style = 'normal'
  let weight = 'normal'
  const isSize = (word: string) => {
    const size = word.split('/')[0]
    return /^[+.]?\d.*[a-z%]$/i.test(size) || Object.hasOwn(SIZE_KEYWORDS, size) || /^(larger|smaller)$/.test(size)
  }
  const at = words.findIndex(isSize)
  if (at < 0 || at > 4) return undefined
  for (const word of words.slice(0, at)) {
    if (/^(italic|oblique)$/i.test(word)) style = word.toLowerCase()
    else if (/^(bold|bolder|lighter|\d{1,4})$/i.test(word)) weight = word
  }
  // A line height may stand apart from its slash.
  const rest = words
    .slice(at + 1)
    .join(' ')
    .replace(/^\/\s*\S+\s*/, '')
  return rest === '' ? undefined : { style, weight, size: words[at].split('/')[0], family: rest }
}

/** The families of a list in order, without quotes. */
export const parseFamilies = (text: string): string[] =>
  (text.slice(0, 2000).match(/"[^"]*"|'[^']*'|[^,"']+/g) ?? [])
    .map((name) =>
      name
        .trim()
        .replace(/^(["'])(.*)\1$/, '$2')
        .trim(),
    )
    .filter((name) => name !== '')
