// Ratios that were kept, in guards.json, against which those of this run are held: a change that makes something slower shows, on any
// machine. No time is kept. Ratios of the best rounds are held, which differ least from run to run. What is found to be better stays as it is until it is kept by hand (--keep).
import { readFileSync, writeFileSync } from 'node:fs'

const FILE = new URL('./guards.json', import.meta.url)
const read = () => JSON.parse(readFileSync(FILE, 'utf8'))
const figures = (value) => value.toFixed(value < 10 ? 2 : 1)

/** Two digits are all that a ratio is worth. */
const rounded = (value) => Number(value.toPrecision(2))

/** @param rows of this run; those with a goal of at least something are better when they are larger */
export function keepGuards(rows) {
  const { margin } = read()
  const ratios = Object.fromEntries(
    rows.map(({ what, ratio, goal }) => [
      what,
      {
        ratio: rounded(ratio.best ?? ratio.median),
        better: goal.startsWith('>=') || /second/u.test(what) || /^JSON/u.test(what) ? 'larger' : 'smaller',
      },
    ]),
  )
  writeFileSync(FILE, `${JSON.stringify({ margin, ratios }, null, 2)}\n`)
}

/** @returns a line for each guard, and whether all hold */
export function guardLines(rows) {
  const { margin, ratios } = read()
  const found = new Map(rows.map((one) => [one.what, one.ratio.best ?? one.ratio.median]))
  const checked = Object.entries(ratios).map(([what, { ratio, better }]) => {
    const now = found.get(what)
    if (now === undefined) return { isHeld: true, line: `guard: ${what}: not measured in this run` }
    const limit = better === 'smaller' ? ratio * margin : ratio / margin
    const isHeld = better === 'smaller' ? now <= limit : now >= limit
    const word = better === 'smaller' ? 'above' : 'below'
    return {
      isHeld,
      line: `guard: ${what}: ${figures(now)}, kept ${figures(ratio)}, fails ${word} ${figures(limit)}: ${isHeld ? 'holds' : 'FAILS'}`,
    }
  })
  return { lines: checked.map(({ line }) => line), isHeld: checked.every(({ isHeld }) => isHeld) }
}
