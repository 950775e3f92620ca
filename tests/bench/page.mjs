// docs/performance.md: what the last whole run of the bench found.
import { readFileSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'

const PAGE = new URL('../../docs/performance.md', import.meta.url)
const UNDER_LOAD = '## Under load'
/** Profiles of load, in the order of the page. */
export const PROFILES = ['steady', 'burst', 'mixed', 'soak']

const HEAD = `# How fast a check is

Written by \`npm run bench\`, or by \`npm run bench -- --only\` some sections, whose figures are then replaced. Every figure in a table is a ratio of two things that were timed in turns in one run, by the time of the processor they
took: the median, and what the middle half of the rounds lies between. Times of a machine stand here only under *Start and rest* and *Under
load*, where the goals are such times. \`npm run bench -- --quick\`, which \`.ci/run\` calls, holds some of the ratios against those in
\`tests/bench/guards.json\` and fails where one is twice as bad.`

const LOAD = `Written by \`npm run bench -- --load all\`, or with one profile, whose lines are then replaced. The service runs as \`npm start\` runs it; the clients share the machine with it, so that the times
say as much about them. *steady*: descriptions at 70 % of what was answered in a second before. *burst*: 400 connections that ask without
a pause, each fourth request a drawing. *mixed*: descriptions at 20 % and two drawings a second, while another key posts the
hostile files of \`tests/hostile\` one after the other, four at a time and without a pause. *soak*: descriptions at 30 % and four drawings a second for as long as the table
says. Latencies are those of answers that are no refusal.`

const number = (value) => (value >= 10 ? value.toFixed(1) : value.toFixed(2))

const machine = () =>
  `A machine with ${availableParallelism()} processor cores (${process.arch}), Node ${process.version}.`

/** The page as it is: each part from its heading on. */
const partsNow = () => readFileSync(PAGE, 'utf8').split(/^(?=## )/mu)

/** Puts what was found of some sections, or of all, in the place of what the page said of them. */
export function writePerformance(results) {
  const [, ...parts] = partsNow()
  const made = new Map(results.map((section) => [headingOf(section), partOf(section)]))
  const kept = parts.map((part) => {
    const heading = part.slice(0, part.indexOf('\n'))
    const now = made.get(heading) ?? part
    made.delete(heading)
    return now.trimEnd()
  })
  const load = kept.findIndex((part) => part.startsWith(UNDER_LOAD))
  kept.splice(load < 0 ? kept.length : load, 0, ...made.values())
  writeFileSync(PAGE, `${[HEAD, machine(), ...kept].join('\n\n')}\n`)
}

/**
 * Puts what was found of some profiles in the place of what the page said of them.
 * @param results by profile: what was looked at, what was found, the goal if there is one, and whether it is met
 */
export function writeUnderLoad(results) {
  const [before, now = ''] = readFileSync(PAGE, 'utf8').split(`\n${UNDER_LOAD}`)
  const measured = new Set(results.map(({ profile }) => profile))
  const profileOf = (line) => line.split('|')[1]?.trim()
  const kept = now.split('\n').filter((line) => PROFILES.includes(profileOf(line)) && !measured.has(profileOf(line)))
  const rows = results.map(({ profile, what, found, goal, isMet }) => {
    const reached = isMet === undefined ? '' : isMet ? 'met' : 'not met'
    return `| ${profile} | ${what} | ${found} | ${goal} | ${reached} |`
  })
  const all = PROFILES.flatMap((profile) => [...kept, ...rows].filter((line) => profileOf(line) === profile))
  const table = ['| profile | what | found | goal | |', '| --- | --- | --- | --- | --- |', ...all].join('\n')
  writeFileSync(PAGE, `${before}\n${UNDER_LOAD}\n\n${LOAD}\n\n${machine()}\n\n${table}\n`)
}

const headingOf = ({ title }) => `## ${title}`

/** A section: its title, what is said of it, its rows, and what else was found. */
function partOf(section) {
  const { text, rows, facts = [] } = section
  const said = facts.map((fact) => `- ${fact}`).join('\n')
  return [headingOf(section), text, said, rows.length > 0 ? tableOf(rows) : '']
    .filter((part) => part !== '')
    .join('\n\n')
}

function tableOf(rows) {
  const lines = rows.map(({ what, ratio: { median, low, high }, goal }) => {
    const said = goal.replace('<=', 'at most').replace('>=', 'at least')
    return `| ${what} | ${number(median)} | ${number(low)} to ${number(high)} | ${said} | ${reached(median, goal)} |`
  })
  return ['| what | ratio | middle half | goal | |', '| --- | --- | --- | --- | --- |', ...lines].join('\n')
}

/** Whether a goal is met, judged by the figure that is not rounded. */
export function reached(value, goal) {
  const [sign, limit] = goal.split(' ')
  if (limit === undefined) return ''
  return (sign === '<=' ? value <= Number(limit) : value >= Number(limit)) ? 'met' : 'not met'
}
