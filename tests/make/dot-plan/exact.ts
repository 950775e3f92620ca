/** The least travel through a few dots, by trying every order; nothing of the planner is in it. */

type Dot = [x: number, y: number]

/**
 * @param entry from each dot, where the tip is let down
 * @param mustWait whether the first of two dots may only be laid after the second
 */
export function exactTravel(
  dots: readonly Dot[],
  entry: Dot = [0, 0],
  mustWait: (later: Dot, first: Dot) => boolean = () => false,
): number {
  const ways = dots.map(([x, y]) => dots.map(([u, v]) => Math.hypot(u + entry[0] - x, v + entry[1] - y)))
  const waits = dots.map((later, i) =>
    dots.flatMap((first, j) => (i !== j && mustWait(later, first) && !mustWait(first, later) ? [j] : [])),
  )
  let best = Infinity
  const go = (at: number, laid: number, count: number, travel: number) => {
    if (travel >= best) return
    if (count === dots.length) best = travel
    for (let next = 0; next < dots.length; next++) {
      if (laid & (1 << next) || waits[next].some((first) => !(laid & (1 << first)))) continue
      go(next, laid | (1 << next), count + 1, travel + (at < 0 ? 0 : ways[at][next]))
    }
  }
  go(-1, 0, 0, 0)
  return best
}
