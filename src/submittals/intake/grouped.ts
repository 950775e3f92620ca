/** Items by each of their keys, in the order in which they stand. */
export function grouped<T>(items: Iterable<T>, keysOf: (item: T) => string[]): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const item of items)
    for (const key of keysOf(item)) {
      const group = groups.get(key)
      if (group) group.push(item)
      else groups.set(key, [item])
    }
  return groups
}
