import { isKnown } from '../sign/sign.js'
import { SIGN_WORDS } from './familiar.js'
import type { OutlinedLine } from './outlinelines.js'

/**
 * Characters that are characters upside down or from behind too. Where nothing else on a drawing shows which end is up and which
 * side is the front, 16 and 91 are the same shapes. By the shapes of common faces; common practice, no source.
 */
const UPSIDE_DOWN = `0125689HIMNOSWXZlnopqdbsuxz-–—·.:|`
const FROM_BEHIND = `08AHIMOTUVWXYilovwx-–—.·:|'"!+*/°`
const BOTH = `038BCDEHIKOXclox-–—·:|+*`

/** Words, beside those that often stand on signs, that are another word upside down: no, mom, now. */
const MORE_WORDS: ReadonlySet<string> = new Set(['on', 'wow', 'mom', 'mow', 'now', 'mon'])

/** The other ways in which a drawing may hang. */
export interface OtherWay {
  turned: boolean
  behind: boolean
}

/** Whether lines hold a character that is none from behind: without one, their side cannot be told. */
export const isOneSided = (lines: readonly OutlinedLine[]): boolean =>
  charactersOf(lines).some((c) => !FROM_BEHIND.includes(c))

/** The other ways in which every character of the lines would be one; none for lines that are not read anyway. */
export function otherWays(lines: readonly OutlinedLine[]): OtherWay[] {
  if (lines.length === 0 || textsOf(lines).includes(undefined)) return []
  const all = charactersOf(lines)
  const ways: [OtherWay, string][] = [
    [{ turned: true, behind: false }, UPSIDE_DOWN],
    [{ turned: false, behind: true }, FROM_BEHIND],
    [{ turned: true, behind: true }, BOTH],
  ]
  return ways.flatMap(([way, characters]) => (all.every((c) => characters.includes(c)) ? [way] : []))
}

/** Whether a reading the other way round says something else that may well stand on a sign: figures, or well-known words. */
export const saysAnother = (lines: readonly OutlinedLine[], other: readonly OutlinedLine[]): boolean =>
  saysSomething(other) && textsOf(lines).join(' ') !== textsOf(other).join(' ')

/** Lines whose text is not told, because it reads another way round too. */
export const leftOpen = (lines: readonly OutlinedLine[]): OutlinedLine[] =>
  lines.map((line) => ({ ...line, eitherWay: true, read: { ...line.read, text: EITHER_WAY } }))

const EITHER_WAY = {
  unknown: 'unreadable',
  why: 'the characters say something upside down or from behind too, and nothing else shows which is meant',
} as const

const FIGURES = /^[\d.:–—-]*\d[\d.:–—-]*$/

function saysSomething(lines: readonly OutlinedLine[]): boolean {
  const words = textsOf(lines).flatMap((text) => text?.split(' ') ?? [undefined])
  return words.length > 0 && words.every((w) => w !== undefined && (FIGURES.test(w) || isWord(w.toLowerCase())))
}

const isWord = (word: string): boolean => SIGN_WORDS.has(word) || MORE_WORDS.has(word)

const textsOf = (lines: readonly OutlinedLine[]) =>
  lines.map(({ read: { text } }) => (isKnown(text) ? text.value : undefined))

const charactersOf = (lines: readonly OutlinedLine[]): string[] =>
  lines.flatMap(({ read }) => read.characters.flatMap(({ readings }) => readings.slice(0, 1)))
