/** Lists inside a sentence: all of them where they are few, then a count. Names that have commas themselves need another `mark`. */

const MOST_LISTED = 8

export const listed = (names: readonly string[], mark = ', '): string =>
  names.length <= MOST_LISTED
    ? names.join(mark)
    : `${names.slice(0, MOST_LISTED).join(mark)} and ${names.length - MOST_LISTED} more`

/** “a”, “a and b”, “a; b; and c”: things that have commas themselves. */
export const apart = (things: readonly string[]): string =>
  things.length <= 2 ? things.join(' and ') : `${things.slice(0, -1).join('; ')}; and ${things.at(-1) ?? ''}`

/** Groups in the order in which their first one came. */
export function grouped<T>(things: readonly T[], keyOf: (thing: T) => string | null): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const thing of things) {
    const key = keyOf(thing)
    if (key === null) continue
    const group = groups.get(key)
    if (group) group.push(thing)
    else groups.set(key, [thing])
  }
  return groups
}
