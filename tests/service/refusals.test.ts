import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { LIMITS } from '../../src/service/settings.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { runningService, THEATER, type ProblemAnswer } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const post = (path = '/v1/checks') => request(app.server).post(path)
const raw = (type: string, body: string | Buffer, path?: string) => post(path).set('content-type', type).send(body)

/** The problem document, after making sure that it is one (RFC 9457: media type, status in the body, type, instance). */
function problemOf(response: request.Response): ProblemAnswer {
  expect(response.headers['content-type']).toMatch(/^application\/problem\+json/)
  const problem = response.body as ProblemAnswer & { title: string; instance: string }
  expect(problem.status).toBe(response.status)
  expect(problem.title).not.toBe('')
  expect(problem.instance).toBe(`urn:uuid:${response.headers['x-request-id']}`)
  return { ...problem, type: problem.type.replace('/docs/problems/', '') }
}

describe('JSON that cannot be read', () => {
  it('is answered with the line and the column', async () => {
    const problem = problemOf(await raw('application/json', '{\n "sign": nil\n}'))
    expect([problem.status, problem.type]).toEqual([400, 'malformed-json'])
    expect(problem.errors?.[0]).toMatchObject({ line: 2, column: 11 })
  })

  // RFC 8259: none of these is a JSON text.
  it.each(['', '{', '{"sign": {', 'NaN', "{'a':1}", '[1,]', '\u0000'])('%j', async (body) => {
    expect(problemOf(await raw('application/json', body)).type).toBe('malformed-json')
  })

  it.each(['{"__proto__":{"polluted":1}}', '{"sign":{"constructor":{"prototype":{"polluted":1}}}}'])(
    '%s reaches for a prototype',
    async (body) => {
      expect(problemOf(await raw('application/json', body)).type).toBe('malformed-json')
      expect(({} as { polluted?: number }).polluted).toBeUndefined()
    },
  )

  it('may be nested fifty thousand deep without harm', async () => {
    const deep = `{"sign":${'{"a":'.repeat(50_000)}1${'}'.repeat(50_000)}}`
    expect(problemOf(await raw('application/json', deep)).status).toBe(422)
  })
})

describe('a description that does not fit', () => {
  const errorsOf = async (body: object) => {
    const problem = problemOf(await post().send(body))
    expect([problem.status, problem.type]).toEqual([422, 'invalid-description'])
    return problem.errors ?? []
  }

  it('is answered with every error and its pointer into the body', async () => {
    const errors = await errorsOf({
      sign: { ...POTTERY_ROOM, brail: [], panel: { width: -1 }, braille: [{ dotSpacing: '2.4' }] },
      standard: 'us-ada-2010',
    })
    expect(errors.map(({ pointer }) => pointer).sort()).toEqual(
      ['/sign/braille/0/dotSpacing', '/sign/brail', '/sign/panel/width', '/standard'].sort(),
    )
    expect(errors.find(({ pointer }) => pointer === '/standard')?.detail).toContain('“standards”')
  })

  it.each([
    [{}, '/sign'],
    [{ sign: null }, '/sign'],
    [{ sign: { use: 'permanent-room' } }, '/sign'],
    [{ sign: { use: 'permanent-room', lettering: [] } }, '/sign'],
    [{ sign: POTTERY_ROOM, standards: [] }, '/standards'],
    [{ sign: POTTERY_ROOM, options: { scale: 0 } }, '/options/scale'],
    [{ sign: POTTERY_ROOM, options: { decisionRule: 'kind' } }, '/options/decisionRule'],
    [{ drawing: 7 }, '/drawing'],
  ])('%j', async (body, pointer) => {
    expect((await errorsOf(body)).map((error) => error.pointer)).toEqual([pointer])
  })

  it('is told when it is no object at all', async () => {
    for (const body of ['[]', '7', 'null', '"sign"'])
      expect(problemOf(await raw('application/json', body)).type).toBe('invalid-description')
  })
})

describe('a drawing that cannot be used', () => {
  it.each([
    ['malformed-drawing', 400, '<svg xmlns="http://www.w3.org/2000/svg"\n width="10mm"><g></svg>'],
    ['malformed-drawing', 400, ''],
    ['malformed-drawing', 400, '\u0089PNG\r\n\u001a\n'],
    ['malformed-drawing', 400, '{"sign":{}}'],
    [
      'entities-not-accepted',
      400,
      '<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/hostname">]><svg xmlns="http://www.w3.org/2000/svg"><text>&a;</text></svg>',
    ],
    [
      'scale-unknown',
      422,
      '<svg xmlns="http://www.w3.org/2000/svg" width="100%" height="100%" viewBox="0 0 9 9"><text>A</text></svg>',
    ],
    [
      'no-tactile-elements',
      422,
      '<svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm"><path d="M0 0h5v5z"/></svg>',
    ],
  ])('%s, status %i', async (type, status, body) => {
    const problem = problemOf(await raw('image/svg+xml', body))
    expect([problem.type, problem.status]).toEqual([type, status])
  })

  it('keeps its refusal through a form and through JSON', async () => {
    const broken = '<svg xmlns="http://www.w3.org/2000/svg"><g></svg>'
    const form = problemOf(await post().attach('drawing', Buffer.from(broken), 'a.svg'))
    const json = problemOf(await post().send({ drawing: broken }))
    expect([form.type, json.type]).toEqual(['malformed-drawing', 'malformed-drawing'])
    expect(form.errors?.[0]?.line).toBeGreaterThan(0)
  })
})

describe('query parameters', () => {
  const errorsOf = async (query: object) => {
    const problem = problemOf(await post().query(query).set('content-type', 'image/svg+xml').send(THEATER))
    expect([problem.status, problem.type]).toEqual([422, 'invalid-parameters'])
    return problem.errors?.map(({ parameter }) => parameter)
  }

  it.each([
    [{ standard: 'us-ada-2010' }, ['standard']],
    [{ use: 'shed' }, ['use']],
    [{ use: ['gift', 'parking'] }, ['use']],
    [{ scale: 'big' }, ['scale']],
    [{ scale: '-1' }, ['scale']],
    [{ scale: '1e999' }, ['scale']],
    [{ 'part.dots': 'roof' }, ['part.dots']],
    [{ part: '{"dots":"roof"}' }, ['part.dots']],
    [{ part: '[]', unitSystem: 'ells' }, ['unitSystem']],
  ])('%j', async (query, parameters) => {
    expect(await errorsOf(query)).toEqual(parameters)
  })

  it('say in plain words that a number is none', async () => {
    const asked = post().query({ scale: 'big' }).set('content-type', 'image/svg+xml').send(THEATER)
    expect(problemOf(await asked).errors?.[0]?.detail).toBe('“scale” is not a number.')
  })

  it('belong to a bare drawing only', async () => {
    const problem = problemOf(await post().query({ standards: 'us-ada-2010' }).send({ sign: POTTERY_ROOM }))
    expect([problem.type, problem.errors?.[0]?.parameter]).toEqual(['invalid-parameters', 'standards'])
  })

  it('name a standard that is not known by the parameter, for there is no body to point into', async () => {
    const asked = post().query({ standards: 'us-ada-1776' }).set('content-type', 'image/svg+xml').send(THEATER)
    const problem = problemOf(await asked)
    expect([problem.status, problem.type, problem.errors?.[0]?.parameter]).toEqual([
      422,
      'unknown-standard',
      'standards',
    ])
  })

  it('name it so in a form too', async () => {
    const problem = problemOf(await post().attach('drawing', THEATER, 'a.svg').field('standards', 'us-ada-1776'))
    expect([problem.status, problem.type, problem.errors?.[0]?.parameter]).toEqual([
      422,
      'unknown-standard',
      'standards',
    ])
  })

  it('with broken JSON are malformed', async () => {
    const problem = problemOf(await post().query({ part: '{' }).set('content-type', 'image/svg+xml').send(THEATER))
    expect(problem.type).toBe('malformed-json')
  })
})

describe('standards', () => {
  it.each(['us-ada-1776', 'us-ada-2010@999', '../../etc/passwd', '__proto__', 'constructor'])(
    '%s is not known',
    async (id) => {
      const problem = problemOf(await post().send({ sign: POTTERY_ROOM, standards: [id] }))
      expect([problem.status, problem.type, problem.errors?.[0]?.pointer]).toEqual([
        422,
        'unknown-standard',
        '/standards/0',
      ])
    },
  )
})

describe('a description on its own', () => {
  it('is told to stand under “sign”', async () => {
    const problem = problemOf(await post().send(POTTERY_ROOM))
    expect([problem.status, problem.type]).toEqual([422, 'invalid-description'])
    expect(problem.detail).toContain('{"sign": …}')
    expect(problem.errors?.[0]?.pointer).toBe('/sign')
  })
})

describe('bodies', () => {
  it.each(['text/csv', 'text/plain', 'application/xml', 'application/octet-stream', 'nonsense'])(
    'of type %s are not read',
    async (type) => {
      expect(problemOf(await raw(type, 'a,b')).type).toBe('unsupported-media-type')
    },
  )

  it('that are compressed are not read', async () => {
    const response = await post().set('content-encoding', 'gzip').set('content-type', 'application/json').send('{}')
    expect(problemOf(response).type).toBe('unsupported-media-type')
  })

  it('without a type are not read, and none at all is told too', async () => {
    expect(problemOf(await post()).status).toBe(415)
  })

  it('that are too large are told by limit and size', async () => {
    const drawing = problemOf(await raw('image/svg+xml', Buffer.alloc(LIMITS.drawing + 1, 32)))
    expect([drawing.status, drawing.type, drawing.limit, drawing.actual]).toEqual([
      413,
      'too-large',
      LIMITS.drawing,
      LIMITS.drawing + 1,
    ])
    const json = problemOf(await raw('application/json', Buffer.alloc(LIMITS.json + 1, 32)))
    expect([json.type, json.limit]).toEqual(['too-large', LIMITS.json])
    const form = problemOf(await post().attach('drawing', Buffer.alloc(LIMITS.drawing + 1, 32), 'a.svg'))
    expect([form.type, form.limit]).toEqual(['too-large', LIMITS.drawing])
  })
})

describe('forms', () => {
  it('with a part that is not known are told which', async () => {
    const problem = problemOf(await post().field('drawin', 'x'))
    expect([problem.status, problem.type]).toEqual([400, 'malformed-request'])
    expect(problem.detail).toContain('“drawing”')
  })

  it('with nothing to check are invalid', async () => {
    expect(problemOf(await post().field('standards', 'us-ada-2010')).type).toBe('invalid-description')
    expect(problemOf(await post().field('sign', '{"use":"gift"}')).type).toBe('invalid-description')
  })

  it('with a part twice, a broken part or a key too many are refused', async () => {
    expect(problemOf(await post().field('sign', '{}').field('sign', '{}')).type).toBe('malformed-request')
    expect(problemOf(await post().field('sign', '{')).type).toBe('malformed-json')
    const sign = problemOf(await post().field('sign', '{"use":"gift","brail":[]}'))
    expect(sign.errors?.[0]?.pointer).toBe('/sign/brail')
    const options = problemOf(await post().attach('drawing', THEATER, 'a.svg').field('options', '{"scal":1}'))
    expect(options.errors?.[0]?.pointer).toBe('/options/scal')
  })

  it('with more parts than there can be are too large', async () => {
    let form = post()
    for (let i = 0; i < 2 * LIMITS.formParts; i++) form = form.field(i === 0 ? 'sign' : 'options', '{}')
    expect([400, 413]).toContain(problemOf(await form).status)
  })

  it('that are no form at all are malformed', async () => {
    expect(problemOf(await raw('multipart/form-data', 'x')).status).toBeLessThan(500)
    expect(problemOf(await raw('multipart/form-data; boundary=x', '--x\r\n')).status).toBeLessThan(500)
  })
})

describe('addresses and methods', () => {
  it('that are not known are 404, with a problem', async () => {
    expect(problemOf(await request(app.server).get('/v1/nowhere')).type).toBe('not-found')
    expect(problemOf(await request(app.server).get('/%zz')).status).toBe(400)
  })

  it('of the wrong method are 405 with the right ones', async () => {
    const response = await request(app.server).get('/v1/checks')
    expect(problemOf(response).type).toBe('method-not-allowed')
    expect(response.headers.allow).toBe('POST')
  })

  it('do not answer in a form that is not had', async () => {
    expect(problemOf(await post().set('accept', 'image/png').send({ sign: POTTERY_ROOM })).type).toBe('not-acceptable')
    expect(problemOf(await request(app.server).get('/v1/standards').set('accept', 'text/csv')).type).toBe(
      'not-acceptable',
    )
  })

  it('choose by the weights of RFC 9110', async () => {
    const answer = (accept: string) => post().set('accept', accept).send({ sign: POTTERY_ROOM })
    expect((await answer('text/html;q=0.5, application/json')).headers['content-type']).toMatch(/json/)
    expect((await answer('application/json;q=0.1, text/*')).headers['content-type']).toMatch(/html/)
    expect((await answer('*/*')).headers['content-type']).toMatch(/json/)
  })
})
