// What the engine begins with: the committed corpus, and copies of examples and of drawings that tests are made of.
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { POTTERY_ROOM } from '../../dist/sign/examples.js'

const root = new URL('../../', import.meta.url)

/** Bytes: no input grows longer. Short ones are tried more often, and hold every construct as well as long ones. */
export const LONGEST = { drawing: 3000, description: 2000, schedule: 1500, program: 1500, service: 2000 }

/** Of the icons, one in so many. */
const ICONS_APART = 10

const filesIn = (folder, ending = '') =>
  readdirSync(new URL(folder, root))
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => readFileSync(new URL(folder + name, root)))

/** Choices of the description’s maker, by a fixed row of numbers (the constants are those of POSIX’s example of rand). */
function choices(seed) {
  let state = seed
  return Buffer.from(
    Array.from({ length: 600 }, (_, at) => {
      state = (state * 1103515245 + 12345) % 2 ** 31
      return at === 0 ? 0x80 : (state >> 16) & 0xff
    }),
  )
}

const SEEDS = {
  drawing: () => [
    ...filesIn('tests/drawings/svg/', '.svg'),
    ...filesIn('docs/examples/', '.svg'),
    ...filesIn('node_modules/bootstrap-icons/icons/', '.svg').filter((_, at) => at % ICONS_APART === 0),
  ],
  description: () => [
    ...filesIn('docs/examples/', '.json').map((sign) => Buffer.from(`{"sign":${sign.toString()}}`)),
    Buffer.from(JSON.stringify({ standards: ['us-ada-2010'], sign: POTTERY_ROOM })),
    ...Array.from({ length: 50 }, (_, at) => choices(at + 1)),
  ],
  schedule: () => filesIn('docs/examples/', '.csv'),
  program: () => [],
  service: () => [],
}

export const corpusOf = (reader) => filesIn(`tests/fuzz/corpus/${reader}/`)

export function seedsOf(reader) {
  const all = [...corpusOf(reader), ...SEEDS[reader]()]
  // The second byte of a request chooses the form, the first where it goes.
  if (reader === 'service')
    for (const [ways, kind] of Object.entries({
      '1 4 6 8 10 16': 'drawing',
      '0 7 9 11 12 13': 'description',
      2: 'program',
      15: 'schedule',
    }))
      for (const way of ways.split(' '))
        for (const [at, bytes] of corpusOf(kind).entries())
          all.push(Buffer.concat([Buffer.from([Number(way), at]), bytes]))
  return all.filter((bytes) => bytes.length <= LONGEST[reader])
}

export const pathOf = (name) => fileURLToPath(new URL(name, root))
