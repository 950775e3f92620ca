/** Drawings that were made to hurt, all invented here: what each is, and what has to come of it. */

export interface Attack {
  make: () => string | Uint8Array
  /** A report, or the type of the problem. */
  then: 'report' | 'malformed-drawing' | 'entities-not-accepted' | 'too-complex' | 'too-large' | 'no-tactile-elements'
}

export const NAMESPACES = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"'

/** A page of 200 mm by 100 mm whose user unit is a millimetre. */
export const page = (content: string, before = ''): string =>
  `${before}<svg ${NAMESPACES} width="200mm" height="100mm" viewBox="0 0 200 100">${content}</svg>`

export const repeat = (count: number, make: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => make(i)).join('')

/** A word, so that there is something to report on. */
export const WORD = '<text x="10" y="30" font-family="Arial" font-size="20">ROOM</text>'

export const bytesOf = ({ make }: Attack): Uint8Array => {
  const made = make()
  return typeof made === 'string' ? new TextEncoder().encode(made) : new Uint8Array(made)
}
