import { setTimeout } from 'node:timers/promises'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import type { Settings } from '../../src/service/settings.js'
import type { ProblemType } from '../../src/service/problem-table.js'
import { LIMITS } from '../../src/service/settings.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'

/** One request for each problem that the OpenAPI document promises, by operation. The values are invented. */

type App = Pick<FastifyInstance, 'server' | 'drain' | 'inject'>

interface Answered {
  status: number
  body: unknown
}

/** `plain` is the service as it is; `stuck` has a worker that never ends and no queue. */
export interface Apps {
  plain: App
  stuck: App
}

export interface Replay {
  operation: string
  type: ProblemType
  send: (apps: Apps) => PromiseLike<Answered>
}

type Call = (app: App) => PromiseLike<Answered>

const replay = (operation: string, type: ProblemType, call: Call, on: keyof Apps = 'plain'): Replay => ({
  operation,
  type,
  send: (apps) => call(apps[on]),
})

export const STUCK: Partial<Settings> = {
  worker: new URL('./stuck-worker.mjs', import.meta.url),
  timeLimit: 200,
  pageTimeLimit: 200,
  planTimeLimit: 200,
  uploadTimeLimit: 200,
  queueLimit: 0,
  longestShortWait: 0,
}

const SVG = 'image/svg+xml'
const svg = (attributes: string, content: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${content}</svg>`

/** Asks again while the thread that was stopped before is being replaced: there is no queue to wait in. */
const whenFree =
  (call: Call): Call =>
  async (app) => {
    for (;;) {
      const answer = await call(app)
      if (answer.status !== 503) return answer
      await setTimeout(50)
    }
  }

const drawing =
  (path: string, body: string, query = {}): Call =>
  (app) =>
    request(app.server).post(path).query(query).set('content-type', SVG).send(body)

const json =
  (path: string, body: unknown): Call =>
  (app) =>
    request(app.server)
      .post(path)
      .set('content-type', 'application/json')
      .send(typeof body === 'string' ? body : JSON.stringify(body))

/** What checks and readings have in common. */
const dots = (places: [number, number][]) => places.map(([x, y]) => `<circle cx="${x}" cy="${y}" r=".8"/>`).join('')
/** “in” in uncontracted braille, twice over, and its letters in live text. */
const plate = (x: number) =>
  `<g id="plate-${x}" transform="translate(${x})"><path fill="#ddd" d="M1 1h60v50h-60z"/><text x="9" y="30" font-size="22">IN</text>` +
  `${dots([
    [12.4, 40],
    [10, 42.4],
    [16.9, 40],
    [19.3, 40],
    [19.3, 42.4],
    [16.9, 44.8],
  ])}</g>`
const TWO_PANELS = `<svg xmlns="http://www.w3.org/2000/svg" width="140mm" height="60mm" viewBox="0 0 140 60">${plate(0)}${plate(70)}</svg>`

const program =
  (path: string, body: string): Call =>
  (app) =>
    request(app.server).post(path).set('content-type', 'text/x-gcode').send(body)

/** A plan of dots, which always goes to a thread. */
const ofPlans = (path: string): Replay[] => [
  replay('createDotPlan', 'malformed-json', json(path, '{')),
  replay('createDotPlan', 'malformed-drawing', drawing(path, '<svg')),
  replay(
    'createDotPlan',
    'entities-not-accepted',
    drawing(path, `<!DOCTYPE svg [<!ENTITY a SYSTEM "b">]>${svg('', '&a;')}`),
  ),
  replay('createDotPlan', 'not-acceptable', (app) =>
    request(app.server).post(path).set('accept', 'image/png').send({}),
  ),
  replay('createDotPlan', 'too-large', json(path, ' '.repeat(LIMITS.json + 1))),
  replay('createDotPlan', 'unsupported-media-type', program(path, 'G21')),
  replay('createDotPlan', 'invalid-description', json(path, { points: [[1, 1]], head: { lift: 0.1 } })),
  replay('createDotPlan', 'invalid-parameters', drawing(path, svg('', ''), { variant: 'wet' })),
  replay(
    'createDotPlan',
    'scale-unknown',
    drawing(path, svg('width="100%" height="100%" viewBox="0 0 9 9"', '<circle cx="1" cy="1" r="1"/>')),
  ),
  replay('createDotPlan', 'no-tactile-elements', drawing(path, svg('width="9mm" height="9mm"', ''))),
  replay('createDotPlan', 'several-signs', json(path, { drawing: TWO_PANELS })),
  replay('createDotPlan', 'too-complex', whenFree(drawing(path, 'loop')), 'stuck'),
  replay(
    'createDotPlan',
    'busy',
    async (app) => {
      const both = await Promise.all([drawing(path, 'loop')(app), drawing(path, 'loop')(app)])
      return both.find(({ status }) => status === 503) ?? both[0]
    },
    'stuck',
  ),
]

/** An order for a drawing, which always goes to a thread. */
const ofDrawings = (path: string): Replay[] => {
  const order = (text: string, standards = ['us-ada-2010']) =>
    json(path, { standards, sign: { use: 'permanent-room', lettering: [{ text }] } })
  return [
    replay('createDrawing', 'malformed-json', json(path, '{')),
    replay('createDrawing', 'not-acceptable', (app) =>
      request(app.server).post(path).set('accept', 'text/html').send({}),
    ),
    replay('createDrawing', 'too-large', json(path, ' '.repeat(LIMITS.formField + 1))),
    replay('createDrawing', 'unsupported-media-type', drawing(path, svg('', ''))),
    replay('createDrawing', 'invalid-description', json(path, { sign: {} })),
    replay('createDrawing', 'unknown-standard', order('Kiln', ['none'])),
    replay('createDrawing', 'untranslatable-text', order('☃')),
    replay('createDrawing', 'cannot-satisfy', order('Kiln', ['us-ada-2010', 'au-ncc-2022'])),
    replay('createDrawing', 'too-complex', whenFree(order('loop')), 'stuck'),
    replay(
      'createDrawing',
      'busy',
      async (app) => {
        const both = await Promise.all([order('loop')(app), order('loop')(app)])
        return both.find(({ status }) => status === 503) ?? both[0]
      },
      'stuck',
    ),
  ]
}

const ofSigns = (operation: string, path: string): Replay[] => [
  replay(operation, 'malformed-json', json(path, '{')),
  replay(operation, 'malformed-request', (app) => request(app.server).post(path).field('unknown', 'x')),
  replay(operation, 'malformed-drawing', drawing(path, '<svg')),
  replay(operation, 'malformed-program', program(path, 'G2 X1 Y1 I1')),
  replay(operation, 'entities-not-accepted', drawing(path, `<!DOCTYPE svg [<!ENTITY a SYSTEM "b">]>${svg('', '&a;')}`)),
  replay(operation, 'not-acceptable', (app) => request(app.server).post(path).set('accept', 'image/png').send({})),
  replay(operation, 'too-large', json(path, ' '.repeat(LIMITS.json + 1))),
  replay(operation, 'unsupported-media-type', (app) =>
    request(app.server).post(path).set('content-type', 'text/csv').send('a'),
  ),
  replay(operation, 'invalid-description', json(path, { sign: {} })),
  replay(operation, 'invalid-parameters', drawing(path, svg('', ''), { use: 'shed' })),
  replay(
    operation,
    'scale-unknown',
    drawing(path, svg('width="100%" height="100%" viewBox="0 0 9 9"', '<text>A</text>')),
  ),
  replay(operation, 'no-tactile-elements', drawing(path, svg('width="9mm" height="9mm"', ''))),
  replay(operation, 'several-signs', json(path, { drawing: TWO_PANELS })),
  replay(operation, 'too-complex', whenFree(drawing(path, 'loop')), 'stuck'),
  replay(
    operation,
    'busy',
    async (app) => {
      const both = await Promise.all([drawing(path, 'loop')(app), drawing(path, 'loop')(app)])
      return both.find(({ status }) => status === 503) ?? both[0]
    },
    'stuck',
  ),
]

export const REPLAYS: Replay[] = [
  ...ofSigns('createCheck', '/v1/checks'),
  replay('createCheck', 'unknown-standard', json('/v1/checks', { standards: ['none'], sign: POTTERY_ROOM })),
  ...ofSigns('createReading', '/v1/readings'),
  ...ofSigns('createCorrection', '/v1/corrections').filter(({ type }) => type !== 'malformed-program'),
  replay('createCorrection', 'unknown-standard', drawing('/v1/corrections', svg('', ''), { standards: 'none' })),
  replay('createReading', 'unknown-standard', drawing('/v1/readings', svg('', ''), { standards: 'none' })),
  ...ofPlans('/v1/dot-plans'),
  ...ofDrawings('/v1/drawings'),
  replay('createTranslation', 'malformed-json', json('/v1/translations', '{')),
  replay('createTranslation', 'not-acceptable', (app) =>
    request(app.server).post('/v1/translations').set('accept', 'text/html').send({ text: 'a' }),
  ),
  replay('createTranslation', 'too-large', json('/v1/translations', ' '.repeat(LIMITS.json + 1))),
  replay('createTranslation', 'unsupported-media-type', drawing('/v1/translations', svg('', ''))),
  replay('createTranslation', 'invalid-description', json('/v1/translations', {})),
  replay('createTranslation', 'unknown-standard', json('/v1/translations', { text: 'a', standards: ['none'] })),
  replay('createTranslation', 'untranslatable-text', json('/v1/translations', { text: '☃' })),
  replay(
    'createTranslation',
    'busy',
    async (app) => {
      // Without sockets, for these may deliver them one by one.
      const ask = () => app.inject({ method: 'POST', url: '/v1/translations', payload: { text: 'kiln' } })
      const [, second] = await Promise.all([ask(), ask()])
      return { status: second.statusCode, body: second.json<unknown>() }
    },
    'stuck',
  ),
  replay('listStandards', 'not-acceptable', (app) =>
    request(app.server).get('/v1/standards').set('accept', 'text/csv'),
  ),
  replay('getStandard', 'not-found', (app) => request(app.server).get('/v1/standards/none')),
  replay('getStandard', 'not-acceptable', (app) =>
    request(app.server).get('/v1/standards/us-ada-2010').set('accept', 'text/csv'),
  ),
  replay('getStandardChanges', 'not-found', (app) => request(app.server).get('/v1/standards/none/changes')),
  replay('getStandardChanges', 'not-acceptable', (app) =>
    request(app.server).get('/v1/standards/us-ada-2010/changes').set('accept', 'text/csv'),
  ),
  replay('getCommonWindows', 'not-acceptable', (app) =>
    request(app.server).get('/v1/standards/common?ids=us-ada-2010').set('accept', 'text/csv'),
  ),
  replay('getCommonWindows', 'invalid-parameters', (app) => request(app.server).get('/v1/standards/common')),
  replay('getCommonWindows', 'unknown-standard', (app) => request(app.server).get('/v1/standards/common?ids=none')),
]
