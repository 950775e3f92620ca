/** How well characters are read, counted: for the accuracy page. */
export interface Confusion {
  characters: number
  right: number
  /** Said to be unreadable, or left open between several readings. */
  unreadable: number
  /** Another character was read. */
  wrong: number
  /** What was taken for what, the most frequent first. */
  confused: { truth: string; read: string; count: number }[]
  /** Which characters were left unread, the most frequent first. */
  unread: { truth: string; count: number }[]
}

/** @param pairs what stands there, and what was read; undefined when nothing was said. */
export function confusion(pairs: readonly { truth: string; read: string | undefined }[]): Confusion {
  const confused = new Map<string, { truth: string; read: string; count: number }>()
  const unread = new Map<string, number>()
  let right = 0
  for (const { truth, read } of pairs) {
    if (read === truth) right++
    else if (read === undefined) unread.set(truth, (unread.get(truth) ?? 0) + 1)
    else {
      const key = `${truth} ${read}`
      confused.set(key, { truth, read, count: (confused.get(key)?.count ?? 0) + 1 })
    }
  }
  const left = [...unread].map(([truth, count]) => ({ truth, count }))
  const unreadable = left.reduce((sum, u) => sum + u.count, 0)
  return {
    characters: pairs.length,
    right,
    unreadable,
    wrong: pairs.length - right - unreadable,
    confused: [...confused.values()].sort(byCount),
    unread: left.sort(byCount),
  }
}

const byCount = (a: { truth: string; count: number }, b: { truth: string; count: number }): number =>
  b.count - a.count || (a.truth < b.truth ? -1 : 1)
