#!/usr/bin/env node
/**
 * A shop that takes orders for signs and asks before material is spent: a drawing that fails is sent back with what to change, one
 * that cannot be decided waits for a person, and only one that passes is ordered.
 *
 *   node docs/examples/storefront.mjs http://127.0.0.1:8080 3000
 *   curl -s http://127.0.0.1:3000/orders?use=permanent-room -H 'content-type: image/svg+xml' --data-binary @design.svg
 *
 * Where the service asks for API keys, put one with the scope check into FINGERTRUE_KEY. The shop is invented.
 */
import { createServer } from 'node:http'
import { createClient, ProblemError } from 'fingertrue/client'

const [baseUrl = 'http://127.0.0.1:8080', port = '0'] = process.argv.slice(2)
const key = process.env.FINGERTRUE_KEY
// A customer waits: ask again twice at most, and not after more than two seconds.
const client = createClient({ baseUrl, retry: { most: 2, longest: 2 }, ...(key && { key }) })

const STANDARDS = ['us-ada-2010']
const LARGEST_DRAWING = 5 * 1024 * 1024

/** What the shop says of a design, and the status of its answer. */
async function checkDesign(drawing, use) {
  try {
    const { data: report } = await client.POST('/v1/checks', {
      body: { drawing, standards: STANDARDS, options: { use } },
    })
    return decide(report)
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error
    if (error.status === 429 || error.status >= 500)
      return [503, { order: 'not taken', message: 'We cannot check designs at the moment. Please try again soon.' }]
    // The drawing cannot be read, has no scale, is no sign: the customer can do something about it.
    return [422, { order: 'refused', message: error.message, errors: error.problem?.errors ?? [] }]
  }
}

/** Before production only the drawing can be judged. “Not failed” is not “passed”: accept on pass alone. */
function decide({ id, stages, findings, questions }) {
  const drawn = findings.filter(({ stage, force }) => stage === 'drawing' && force === 'shall')
  const changes = drawn
    .filter(({ verdict }) => verdict === 'fail')
    .map(({ clause, title, message, remedy }) => ({ clause, title, message, change: remedy?.text ?? null }))
  if (stages.drawing === 'fail') return [422, { order: 'refused', report: id, changes }]
  const open = drawn
    .filter(({ verdict }) => verdict === 'undetermined')
    .map(({ clause, message }) => ({ clause, message }))
  if (stages.drawing === 'undetermined') return [202, { order: 'waits for a person', report: id, open, questions }]
  if (stages.drawing === 'pass') return [201, { order: 'taken', report: id }]
  return [
    422,
    { order: 'refused', report: id, message: 'No requirement applies to this: it is no sign that we can check.' },
  ]
}

async function bodyOf(request) {
  const chunks = []
  let size = 0
  for await (const chunk of request) {
    size += chunk.length
    if (size > LARGEST_DRAWING) return undefined
    chunks.push(chunk)
  }
  return Buffer.concat(chunks).toString('utf8')
}

const server = createServer(async (request, response) => {
  const { pathname, searchParams } = new URL(request.url, 'http://shop.invalid')
  const answer = (status, body) => {
    response.writeHead(status, { 'content-type': 'application/json' })
    response.end(`${JSON.stringify(body, null, 2)}\n`)
  }
  if (request.method !== 'POST' || pathname !== '/orders')
    return answer(404, { message: 'There are only orders here.' })
  const drawing = await bodyOf(request)
  if (drawing === undefined) return answer(413, { message: 'The drawing is too large.' })
  try {
    return answer(...(await checkDesign(drawing, searchParams.get('use') ?? 'permanent-room')))
  } catch (error) {
    console.error(error)
    return answer(503, { order: 'not taken', message: 'We cannot check designs at the moment. Please try again soon.' })
  }
})
server.listen(Number(port), '127.0.0.1', () => console.log(`Orders: http://127.0.0.1:${server.address().port}/orders`))
