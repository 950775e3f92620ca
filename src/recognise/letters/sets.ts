import type { Fact } from '../../sign/sign.js'
import type { LetteringReading, ReadLine } from './read.js'

/** Lines are of one set when their capitals differ by no more than this share. */
const ONE_SIZE = 0.03

/** The lines of a reading in sets of one size, in reading order: each is one piece of lettering. */
export function setsOfLines({ lines }: Pick<LetteringReading, 'lines'>): ReadLine[][] {
  const sets: ReadLine[][] = []
  for (const line of lines) {
    const set = sets.find(([first]) => Math.abs(line.capital / first.capital - 1) <= ONE_SIZE)
    if (set) set.push(line)
    else sets.push([line])
  }
  return sets
}

/** What a set of lines says; unknown, with the first reason, when one of its lines is. */
export function textOfSet(lines: readonly ReadLine[]): Fact<string> {
  const unread = lines.flatMap(({ text }, i) => ('unknown' in text ? [{ text, i }] : []))
  if (unread.length > 0) {
    const [{ text, i }] = unread
    return lines.length > 1 ? { ...text, why: `in line ${i + 1}, ${text.why}` } : text
  }
  const value = lines.map(({ text }) => ('value' in text ? text.value : '')).join(' ')
  return { value, basis: 'drawn', method: 'read from the shapes of the outlines' }
}
