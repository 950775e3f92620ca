import type { Fact } from '../../sign/sign.js'
import type { Decision } from './decide.js'
import type { Spacing } from './words.js'

/** The text of a line, known only when every character and every space is. */
export function textOf(characters: readonly Decision[], { spaces }: Spacing): Fact<string> {
  const strange = characters.flatMap((c, i) => (c.readings.length === 0 ? [i + 1] : []))
  if (strange.length > 0) return unreadable(`${theCharacters(strange)} not recognised`)
  const open = characters.findIndex((c) => c.readings.length > 1)
  if (open >= 0)
    return unreadable(
      `the ${ordinal(open + 1)} character may be ${characters[open].readings.map((r) => `“${r}”`).join(' or ')}`,
    )
  const doubtful = spaces.findIndex((s) => s === undefined)
  if (doubtful >= 0)
    return unreadable(
      `whether a space stands before the ${ordinal(doubtful + 2)} character cannot be told from the gap`,
    )
  const value = characters.map((c, i) => (i > 0 && spaces[i - 1] ? ' ' : '') + c.readings[0]).join('')
  return { value, basis: 'drawn', method: 'read from the shapes of the outlines' }
}

const unreadable = (why: string) => ({ unknown: 'unreadable' as const, why })

function theCharacters(places: readonly number[]): string {
  const named = places.map(ordinal)
  if (named.length === 1) return `the ${named[0]} character is`
  if (named.length > MOST_NAMED) return `${named.length} characters are`
  return `the ${named.slice(0, -1).join(', ')} and the ${named[named.length - 1]} character are`
}

const MOST_NAMED = 4

function ordinal(n: number): string {
  const tens = n % 100
  if (tens >= 11 && tens <= 13) return `${n}th`
  return `${n}${{ 1: 'st', 2: 'nd', 3: 'rd' }[n % 10] ?? 'th'}`
}
