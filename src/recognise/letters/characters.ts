/**
 * The characters that are read, and which of them have one shape: these are told apart by their size and place on the line
 * or by their neighbours, if at all.
 */
export const CHARACTERS = [
  ...'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
  ...'abcdefghijklmnopqrstuvwxyz',
  ...'0123456789',
  ...`.,:;!?'"-–—/&()+#%@*°=|`,
]

/** Other forms of a character that are read as it: curly quotes. */
export const OTHER_FORMS: Record<string, string> = { '’': "'", '‘': "'", '“': '"', '”': '"' }

/** What a shape that fills its box may be; only its proportion, size and place tell. */
export const BAR = 'bar'

const ALIKE = ['Oo0°', 'Cc', 'Ss', 'Vv', 'Ww', 'Xx', 'Zz', `,'`, '-–—', 'Il|']
const FAMILY = new Map(ALIKE.flatMap((alike) => [...alike].map((c) => [c, alike[0]])))

/** The first of all characters with about the same shape. */
export const shapeOf = (character: string): string => FAMILY.get(character) ?? character

export const isLetter = (c: string): boolean => /^[A-Za-z]$/.test(c)
export const isCapital = (c: string): boolean => /^[A-Z]$/.test(c)
export const isSmall = (c: string): boolean => /^[a-z]$/.test(c)
export const isDigit = (c: string): boolean => /^[0-9]$/.test(c)
