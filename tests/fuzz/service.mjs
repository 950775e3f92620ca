// Bytes as a request: the first chooses where it goes, the second the form of the answer, the rest is the body. No answer may be a
// fault of the service: every status of 500 and above but 503 is a finding, and so is an answer that is not of the type it says.
import { createTranslator } from '../../dist/braille/engine.js'
import { buildService } from '../../dist/service/service.js'
import { DEFAULT_SETTINGS } from '../../dist/service/settings.js'

/**
 * Milliseconds, below what the engine takes for a hang: the clock of a task stops it first. Threads that are stopped and replaced all the
 * time, on a machine that others use too, would leave little time for anything else.
 */
const LONGEST = 20_000
const NEVER = 600_000

const app = await buildService(
  {
    ...DEFAULT_SETTINGS,
    logLevel: 'silent',
    threads: 1,
    timeLimit: LONGEST,
    pageTimeLimit: LONGEST,
    planTimeLimit: LONGEST,
    uploadTimeLimit: LONGEST,
    // What is turned away as busy shows nothing.
    longestWait: NEVER,
    longestShortWait: NEVER,
    loopDelayLimit: NEVER,
  },
  { translator: createTranslator() },
)

export const close = () => app.close()

const JSON_BODY = 'application/json'
const SVG = 'image/svg+xml'
const BOUNDARY = 'fuzz'
const FORM = `multipart/form-data; boundary=${BOUNDARY}`

/** Where a body may go. A form is sent as it stands, or as one file of it. */
const WAYS = [
  { url: '/v1/checks', type: JSON_BODY },
  { url: '/v1/checks?use=permanent-room', type: SVG },
  { url: '/v1/checks', type: 'text/x-gcode' },
  { url: '/v1/checks', type: FORM },
  { url: '/v1/checks', type: FORM, part: 'name="drawing"; filename="f.svg"' },
  { url: '/v1/checks', type: FORM, part: 'name="sign"' },
  { url: '/v1/readings', type: SVG },
  { url: '/v1/readings', type: JSON_BODY },
  { url: '/v1/corrections', type: SVG },
  { url: '/v1/corrections', type: JSON_BODY },
  { url: '/v1/dot-plans', type: SVG },
  { url: '/v1/dot-plans', type: JSON_BODY },
  { url: '/v1/drawings', type: JSON_BODY },
  { url: '/v1/translations', type: JSON_BODY },
  { url: '/v1/submittals', type: FORM },
  { url: '/v1/submittals', type: FORM, part: 'name="files"; filename="f.csv"' },
  { url: '/v1/checks?', query: true, type: SVG },
  { url: '/v1/dot-plans?', query: true, type: JSON_BODY },
  { url: '/v1/standards/common?', query: true },
  { url: '/', query: true },
]

const ACCEPTS = [
  JSON_BODY,
  'text/html',
  SVG,
  'text/csv',
  'application/sarif+json',
  'application/pdf',
  'text/x-gcode',
  'text/html, */*;q=0.1',
]

export const fuzz = async (bytes) => {
  const way = WAYS[(bytes[0] ?? 0) % WAYS.length]
  const accept = ACCEPTS[(bytes[1] ?? 0) % ACCEPTS.length]
  const { statusCode, headers, rawPayload, body } = await app.inject(requestOf(way, bytes.subarray(2), accept))
  if (statusCode >= 500 && statusCode !== 503) throw new Error(`${statusCode} of ${way.url}: ${body}`)
  const type = headers['content-type'] ?? ''
  if (/^application\/(?:problem\+)?json/u.test(type)) {
    const answer = JSON.parse(body)
    if (statusCode >= 400 && (answer.status !== statusCode || !answer.title || !answer.detail))
      throw new Error(`a problem that says too little: ${body}`)
  }
  if (rawPayload.length === 0 && statusCode === 200) throw new Error(`an empty answer of ${way.url}`)
  if (statusCode === 202) await app.inject({ method: 'DELETE', url: headers.location })
}

function requestOf({ url, type, part, query }, bytes, accept) {
  const address = query ? `${url}${encodeURI(bytes.toString('latin1'))}` : url
  if (!type || query)
    return { method: type ? 'POST' : 'GET', url: address, headers: { accept, ...(type && { 'content-type': type }) } }
  const payload = part ? inForm(part, bytes) : bytes
  return { method: 'POST', url: address, headers: { accept, 'content-type': type }, payload }
}

const inForm = (part, bytes) =>
  Buffer.concat([
    Buffer.from(`--${BOUNDARY}\r\ncontent-disposition: form-data; ${part}\r\n\r\n`),
    bytes,
    Buffer.from(`\r\n--${BOUNDARY}--\r\n`),
  ])
