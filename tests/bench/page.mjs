// docs/performance.md: what the last whole run of the bench found.
import { availableParallelism } from 'node:os'

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

const number = (value) => (value >= 10 ? value.toFixed(1) : value.toFixed(2))

/** @param results each with what was held against what, its ratio and the goal, if it has one */
export function performancePage(results) {
  const rows = results.map(({ what, ratio, goal }) => {
    const { median, low, high } = ratio
    return `| ${what} | ${number(median)} | ${number(low)} to ${number(high)} | ${goal.replace('<=', 'at most').replace('>=', 'at least')} |`
  })
  const machine = `A machine with ${availableParallelism()} processor cores (${process.arch}), Node ${process.version}.`
  const table = ['| what | ratio | middle half | goal |', '| --- | --- | --- | --- |', ...rows].join('\n')
  return `${HEAD}\n\n${machine}\n\n${table}\n\n${MEANING}\n`
}
