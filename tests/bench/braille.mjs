// Texts into contracted braille, by our translator in this process and by the system's lou_translate.
import { spawnSync } from 'node:child_process'
import { createTranslator } from '../../dist/braille/engine.js'
import { row, spreadOf } from './measure.mjs'

const TEXT = `The same list of texts, each of which is new, is put into contracted braille by the translator of the service, a build of liblouis in
JavaScript with the rules for capitals, numbers and refusals around it, and by the system's own \`lou_translate\`, which reads the list in one
process. Of both, the time for a list of one text is taken off, so that loading the tables does not count. What was translated before is
remembered, and takes next to nothing.`

const WORDS =
  'kiln glaze bisque wheel drying tool slip mould packing reading quiet staff stair sample plaster locker'.split(' ')
const ROOMS = 'room lab store studio bench office kitchen shop nook hall'.split(' ')
const texts = (round, count) =>
  Array.from({ length: count }, (_, i) => {
    const n = round * count + i
    return `${WORDS[n % WORDS.length]} ${ROOMS[Math.floor(n / WORDS.length) % ROOMS.length]} ${n}`
  })

const SECONDS_TO_MICROSECONDS = 1e6
/** Microseconds of the processor that the shell says its children took: its second line of `times`, minutes and seconds. */
function byLouis(list) {
  const script = 'lou_translate --forward unicode.dis,en-ueb-g2.ctb > /dev/null && times'
  const { status, stdout } = spawnSync('sh', ['-c', script], { input: `${list.join('\n')}\n`, encoding: 'utf8' })
  if (status !== 0) return undefined
  const [, children = ''] = stdout.trim().split('\n').slice(-2)
  const seconds = [...children.matchAll(/(\d+)m([\d.]+)s/gu)].map(([, m, s]) => Number(m) * 60 + Number(s))
  return seconds.reduce((a, b) => a + b, 0) * SECONDS_TO_MICROSECONDS
}

function byUs(translator, list) {
  const started = process.cpuUsage()
  for (const text of list) translator.toCells(text, 'ueb-contracted')
  const { user, system } = process.cpuUsage(started)
  return user + system
}

export async function brailleSection({ quick }) {
  const title = 'Braille'
  if (byLouis(['room']) === undefined)
    return {
      title,
      text: `${TEXT}\n\nNot measured in this run: \`lou_translate\` is not installed on the machine.`,
      rows: [],
    }
  const translator = createTranslator()
  const count = quick ? 1000 : 4000
  const rounds = quick ? 3 : 7
  // A list is never translated twice: the first ones warm the translator up.
  for (let round = 0; round < 2; round++) byUs(translator, texts(round, count))
  const found = []
  for (let round = 2; round < rounds + 2; round++) {
    const list = texts(round, count)
    const ours = byUs(translator, list) / count
    const theirs = (byLouis(list) - byLouis(list.slice(0, 1))) / count
    found.push({ ours, theirs })
  }
  const known = byUs(translator, texts(rounds + 1, count)) / count
  const us = (key) => `${spreadOf(found.map((t) => t[key])).median.toFixed(1)} µs`
  const rows = [
    row(
      'a text into braille / lou_translate',
      spreadOf(found.map((t) => t.ours / t.theirs)),
      '',
      `${us('ours')} / ${us('theirs')}`,
    ),
    row(
      'a text that is remembered / a new one',
      known / spreadOf(found.map((t) => t.ours)).median,
      '',
      `${known.toFixed(1)} µs`,
    ),
  ]
  return { title, text: TEXT, rows }
}
