// docs/performance.md: what the last whole run of the bench found.
import { readFileSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'

const PAGE = new URL('../../docs/performance.md', import.meta.url)
const UNDER_LOAD = '## Under load'

const HEAD = `# How fast a check is

Written by \`npm run bench\`. Every figure is a ratio of two things that were timed in turns in one run of one process, by the time of
the processor they took: the median, and what the middle half of the rounds lies between. No time stands here by itself, for that
says more about the machine than about the service.`

const MEANING = `The drawings are signs of invented rooms that \`tests/bench/drawings.mjs\` makes: raised letters as outlines, contracted braille, a
border. A check is all of it, from the bytes of the drawing to the report: reading, recognising, measuring, judging. *svgo parse and
write* reads the same file and writes it again, with no other work; *svgo with its default plugins* makes it smaller as well; *resvg
tree* reads it and resolves its styles. The peers know nothing of signs: they show what reading such a file costs at the least.

A plan of dots is the order in which a machine sets them: its time is held against *n* log *n* from the smallest plan on, its way against
going through the dots column by column, and against a length that no way can be shorter than.

Making a drawing, or putting one right, takes checks of its own; it is held against one check of that drawing.

The time per dot is that of drawings of so many dots, over that of a drawing of a thousand: 1 is linear growth. The last line is the
number of descriptions checked over HTTP in a second, over that of a route that reads and validates the same body and answers nothing.`

const LOAD = `Written by \`npm run bench -- --load all\`. The service runs as \`npm start\` runs it; the clients share the machine with it, so that the times
say as much about them. *steady*: descriptions at 70 % of what was answered in a second before. *burst*: 400 connections that ask without
a pause, each fourth request a drawing. *mixed*: descriptions at 20 % and two drawings a second, while another key posts the
hostile files of \`tests/hostile\` one after the other, four at a time and without a pause. *soak*: descriptions at 30 % and four drawings a second for as long as the table
says. Latencies are those of answers that are no refusal.`

const number = (value) => (value >= 10 ? value.toFixed(1) : value.toFixed(2))

const machine = () =>
  `A machine with ${availableParallelism()} processor cores (${process.arch}), Node ${process.version}.`

/** What the page says of load, which is measured by itself. */
function underLoadNow() {
  const text = readFileSync(PAGE, 'utf8')
  const at = text.indexOf(UNDER_LOAD)
  return at < 0 ? '' : `\n${text.slice(at)}`
}

/** Writes what the bench found, and leaves what is said of load. */
export const writePerformance = (results) => writeFileSync(PAGE, performancePage(results) + underLoadNow())

/**
 * @param busy how many processes wanted a core, on average of the minute before anything was measured
 * @param results by profile: what was looked at, what was found, the goal if there is one, and whether it is met
 */
export function writeUnderLoad(results, busy) {
  const shared = `Before the run ${busy.toFixed(1)} other processes wanted a core, on average of a minute.`
  const rows = results.map(({ profile, what, found, goal, isMet }) => {
    const reached = isMet === undefined ? '' : isMet ? 'met' : 'not met'
    return `| ${profile} | ${what} | ${found} | ${goal} | ${reached} |`
  })
  const table = ['| profile | what | found | goal | |', '| --- | --- | --- | --- | --- |', ...rows].join('\n')
  const before = readFileSync(PAGE, 'utf8').split(`\n${UNDER_LOAD}`)[0]
  writeFileSync(PAGE, `${before}\n${UNDER_LOAD}\n\n${LOAD}\n\n${machine()} ${shared}\n\n${table}\n`)
}

/** @param results each with what was held against what, its ratio and the goal, if it has one */
function performancePage(results) {
  const rows = results.map(({ what, ratio, goal }) => {
    const { median, low, high } = ratio
    return `| ${what} | ${number(median)} | ${number(low)} to ${number(high)} | ${goal.replace('<=', 'at most').replace('>=', 'at least')} |`
  })
  const table = ['| what | ratio | middle half | goal |', '| --- | --- | --- | --- |', ...rows].join('\n')
  return `${HEAD}\n\n${machine()}\n\n${table}\n\n${MEANING}\n`
}
