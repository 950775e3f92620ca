// Drawings of three sizes, from bytes to report, against programs that read the same text and know nothing of signs.
import { Resvg } from '@resvg/resvg-js'
import { SaxesParser } from 'saxes'
import { optimize } from 'svgo'
import { check } from '../../dist/check.js'
import { ratioOf, row, timeInTurns } from './measure.mjs'

const TEXT = `The drawings are signs of invented rooms that \`tests/bench/drawings.mjs\` makes: raised letters as outlines, contracted braille, a
border. A check is all of it, from the bytes of the drawing to the report: reading, recognising, measuring, judging. *svgo parse and
write* reads the same file and writes it again, with no other work; *svgo with its default plugins* makes it smaller as well; *resvg
tree* reads it and resolves its styles, in native code; *saxes events* is the XML of the same text and nothing else, in the parser that a check
uses where XML is not plain. The peers know nothing of signs: they show what reading such a file costs at the least.`

const GOALS = { 'svgo parse and write': '<= 1', 'resvg tree': '<= 3' }
/** The size that the goals name. */
const OF_GOALS = '40 KB'
const ms = (t) => `${t.median.toFixed(2)} ms (${t.least.toFixed(2)} to ${t.most.toFixed(2)})`

export async function drawingSection(bench) {
  const rows = []
  for (const [name, svg] of Object.entries(bench.drawings)) rows.push(...(await against(name, svg, bench)))
  return { title: 'Drawings', text: TEXT, rows }
}

async function against(name, svg, { translator, standards, options, turnsFor, quick }) {
  const bytes = Buffer.from(svg)
  const isLarge = svg.length > 100_000
  const { check: ours, ...peers } = await timeInTurns(
    {
      check: () => check({ drawing: bytes, standards, options }, translator),
      'svgo parse and write': () => optimize(svg, { plugins: [] }),
      'resvg tree': () => new Resvg(svg, { font: { loadSystemFonts: false } }),
      'saxes events': () => events(svg),
    },
    turnsFor(svg),
  )
  // It takes half a minute for the largest: once is enough, and next to nothing warms it further.
  const whole = await timeInTurns(
    { 'svgo with its default plugins': () => optimize(svg) },
    quick ? { rounds: 0, warmup: 0 } : isLarge ? { rounds: 1, warmup: 0 } : { rounds: 15, warmup: 5 },
  )
  return Object.entries({ ...peers, ...whole })
    .filter(([, theirs]) => theirs.all.length > 0)
    .map(([peer, theirs]) => {
      // What was timed in other turns than ours is held against all of them.
      const ratio = ratioOf(ours, peer in peers ? theirs : { all: ours.all.map(() => theirs.median) })
      const goal = name === OF_GOALS ? (GOALS[peer] ?? '') : ''
      return row(`check of ${name} / ${peer}`, ratio, goal, `${ms(ours)} / ${ms(theirs)}`)
    })
}

/** Every tag, attribute and text of the document, counted so that nothing is left out. */
function events(svg) {
  let seen = 0
  const count = () => void seen++
  const parser = new SaxesParser({ xmlns: true })
  for (const event of ['opentag', 'closetag', 'attribute', 'text']) parser.on(event, count)
  parser.write(svg).close()
  return seen
}
