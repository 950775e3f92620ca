import { buildService } from '../../dist/service/service.js'
import { DEFAULT_SETTINGS } from '../../dist/service/settings.js'
import { ratioOf, row, timeInTurns } from './measure.mjs'

/** How long the page of a large set takes to make, against that of a set that fits on one page: a hundred signs are shown of each. */

const SMALL = 100
const LARGE = 2000

export async function setPageRows(translator, turns) {
  const app = await buildService({ ...DEFAULT_SETTINGS, logLevel: 'silent', role: 'api' }, { translator })
  const get = (url) => async () => {
    const { statusCode, body } = await app.inject(url)
    if (statusCode !== 200) throw new Error(`${url}: ${statusCode}`)
    return body
  }
  const small = await handIn(app, SMALL)
  const large = await handIn(app, LARGE)
  const times = await timeInTurns(
    {
      small: get(small),
      first: get(large),
      last: get(`${large}?page=${LARGE / SMALL}`),
      found: get(`${large}?text=${LARGE}`),
    },
    turns,
  )
  await app.close()
  const ms = ({ median }) => `${median.toFixed(1)} ms`
  const against = (what, key) =>
    row(
      `page of a set of ${LARGE} signs, ${what} / of ${SMALL}`,
      ratioOf(times[key], times.small),
      '<= 2',
      `${ms(times[key])} / ${ms(times.small)}`,
    )
  return [against('the first', 'first'), against('the last', 'last'), against('filtered to one', 'found')]
}

async function handIn(app, count) {
  const signs = Array.from({ length: count }, (_, i) => ({
    mark: `S-${i + 1}`,
    sign: { use: 'permanent-room', lettering: [{ text: 'ROOM' }] },
  }))
  const payload = { name: `${count} signs`, signs }
  const { statusCode, body } = await app.inject({ method: 'POST', url: '/v1/submittals', payload })
  if (statusCode !== 202) throw new Error(body)
  return `/submittals/${JSON.parse(body).id}`
}
