// npm run bench [-- --quick] [-- --only SECTION,…] [-- --stages] [-- --load PROFILE]: how fast it all is, as ratios against peers in this
// same run. Prints a table and writes docs/performance.md. With --only: those sections of it (sections.mjs), which are replaced on the page. With --quick:
// fewer rounds of what is guarded, no page, and an exit status that says whether a ratio is far from the one in guards.json; with
// --keep as well: what was found becomes what is guarded. With --stages: where the time of a check goes. With --load: how the service
// is under load (load.mjs).
import { createTranslator } from '../../dist/braille/engine.js'
import { signs } from './drawings.mjs'
import { guardLines, keepGuards } from './guards.mjs'
import { underLoad } from './load.mjs'
import { headLine, lineOf } from './measure.mjs'
import { writePerformance } from './page.mjs'
import { GUARDED, SECTIONS } from './sections.mjs'
import { stagesOf } from './stages.mjs'

const has = (name) => process.argv.includes(name)
const said = (name) => (has(name) ? process.argv[process.argv.indexOf(name) + 1] : undefined)
if (has('--load')) {
  await underLoad(said('--load'), Number(said('--minutes') ?? 30))
  process.exit()
}

const quick = has('--quick')
const translator = createTranslator()
const bench = {
  quick,
  translator,
  drawings: signs(translator),
  options: { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
  standards: ['us-ada-2010'],
  turns: quick ? { rounds: 11, warmup: 25 } : { rounds: 41, warmup: 25 },
  /** For what takes many checks. */
  few: quick ? { rounds: 5, warmup: 2 } : { rounds: 15, warmup: 5 },
  /** Large drawings take long enough for a few turns to tell. */
  turnsFor: (svg) => (svg.length > 100_000 ? { rounds: quick ? 3 : 9, warmup: 2 } : bench.turns),
}

if (has('--stages')) {
  for (const [name, svg] of Object.entries(bench.drawings))
    console.log((await stagesOf(name, svg, bench, bench.turnsFor(svg))).join('\n') + '\n')
  process.exit()
}

const names = said('--only')?.split(',') ?? (quick ? GUARDED : Object.keys(SECTIONS))
const unknown = names.filter((name) => !(name in SECTIONS))
if (unknown.length > 0)
  throw new Error(`There is no section ${unknown.join(', ')}; there are ${Object.keys(SECTIONS).join(', ')}.`)

const results = []
console.log(headLine())
for (const name of names) {
  const found = await SECTIONS[name](bench)
  console.log(found.rows.map(lineOf).join('\n'))
  results.push(found)
}

const rows = results.flatMap((found) => found.rows)
if (quick) {
  if (has('--keep')) keepGuards(rows)
  const { lines, isHeld } = guardLines(rows)
  console.log(lines.join('\n'))
  process.exitCode = isHeld ? 0 : 1
} else writePerformance(results)
