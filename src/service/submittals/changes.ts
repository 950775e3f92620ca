import type { FastifyInstance, FastifyRequest } from 'fastify'
import { z } from 'zod'
import { InstallationDescription } from '../../sign/installation-description.js'
import { MeasuredDescription } from '../../sign/measured-description.js'
import { MEASURABLE } from '../../sign/quantities.js'
import type { Unit } from '../../sign/length.js'
import {
  addMeasurements,
  addNote,
  addWaiver,
  setInstallation,
  withdrawWaiver,
  type NewWaiver,
} from '../../submittals/changes.js'
import { within, type Keeping } from '../../submittals/keeping.js'
import { keptReport, keptSign } from '../../submittals/kept-sign.js'
import type { Report } from '../../report/schema.js'
import { actorOf } from '../actor.js'
import { unsupported } from '../errors.js'
import { LongJson } from '../json.js'
import type { Operation } from '../operation.js'
import type { ProblemType } from '../problem-table.js'
import { invalid } from '../read-request.js'
import { jsonContent, once } from './once.js'
import { route, SignParams, signOf, type Described } from './route.js'
import { parsed, waiverResource } from './rows.js'
import { today } from './today.js'
import { Change, NoteRequest, MeasurementsRequest, InstallationRequest, WaiverRequest } from './change-requests.js'
import { NoteResource, WaiverResource } from './resources.js'

/** What is added to a sign after its upload: readings, facts of its place, waivers, notes. */

const BODY_PROBLEMS: ProblemType[] = ['malformed-json', 'invalid-description', 'too-large', 'unsupported-media-type']

export function changeRoutes(app: FastifyInstance, keeping: Keeping) {
  const at = '/v1/submittals/:submittal/signs/:sign'

  const measurements = described(
    'addMeasurements',
    'Add readings of an instrument',
    'Readings of a quantity take the place of those given before, in the description too. The sign is checked again.',
    MeasurementsRequest,
    MEASURED_EXAMPLE,
    Change,
    202,
    ['not-now'],
  )
  app.post(`${at}/measurements`, route({ ...measurements, once: true }, SignParams), async (request, reply) => {
    const actor = actorOf(request)
    const given = bodyOf(MeasurementsRequest, request)
    const { measured, author = actor.name } = Array.isArray(given) ? { measured: given } : given
    return once(keeping, request, reply, jsonContent(request), (keep) =>
      addMeasurements(keeping, actor, signOf(request), measured.map(withUnit), author, (transaction, sign) =>
        keep(transaction, { status: 202, body: { sign: sign.id, revision: sign.revision, state: sign.state } }),
      ),
    )
  })

  const installation = described(
    'setInstallation',
    'Say where the sign hangs',
    'Takes the place of what was said of its place before, in the description too. The sign is checked again.',
    InstallationRequest,
    INSTALLATION_EXAMPLE,
    Change,
    202,
    ['not-now'],
  )
  app.put(`${at}/installation`, route(installation, SignParams), async (request, reply) => {
    const { units, ...facts } = bodyOf(InstallationRequest, request)
    const whole = withUnits(facts, units ?? 'mm')
    const sign = await setInstallation(keeping, actorOf(request), signOf(request), whole)
    return reply.code(202).send({ sign: sign.id, revision: sign.revision, state: sign.state })
  })

  const waiver = described(
    'addWaiver',
    'Let a finding stand',
    'Names a finding by its fingerprint, with the reason and the authority that allows it. The finding and its verdict stay as they are.',
    WaiverRequest,
    WAIVER_EXAMPLE,
    WaiverResource,
    201,
  )
  app.post(`${at}/waivers`, route({ ...waiver, once: true }, SignParams), async (request, reply) => {
    const actor = actorOf(request)
    const { author, expires, ...given } = bodyOf(WaiverRequest, request)
    const made: NewWaiver = { ...given, author: author ?? actor.name, expires: expires ?? null }
    return once(keeping, request, reply, jsonContent(request), (keep) =>
      addWaiver(keeping, actor, signOf(request), made, async (transaction, id) =>
        keep(transaction, { status: 201, body: await madeWaiver(within(keeping, transaction), request, id) }),
      ),
    )
  })

  const withdraw: Described = {
    id: 'withdrawWaiver',
    summary: 'Withdraw a waiver',
    description: 'It no longer holds; the history keeps it.',
    status: 204,
  }
  const WaiverParams = SignParams.extend({ waiver: z.string().describe('Id of the waiver.') })
  app.delete(`${at}/waivers/:waiver`, route(withdraw, WaiverParams), async (request, reply) => {
    const { waiver } = request.params as z.infer<typeof WaiverParams>
    await withdrawWaiver(keeping, actorOf(request), signOf(request), waiver)
    return reply.code(204).send()
  })

  const note = described(
    'addNote',
    'Add a note',
    'A remark for whoever reads the evidence. It changes no verdict.',
    NoteRequest,
    NOTE_EXAMPLE,
    NoteResource,
    201,
  )
  app.post(`${at}/notes`, route({ ...note, once: true }, SignParams), async (request, reply) => {
    const actor = actorOf(request)
    const { text, author = actor.name } = bodyOf(NoteRequest, request)
    return once(keeping, request, reply, jsonContent(request), (keep) =>
      addNote(keeping, actor, signOf(request), text, author, async (transaction, id) => {
        const { submittal, sign } = signOf(request)
        const { notes } = await keptSign(within(keeping, transaction), actor, submittal, sign)
        const at = notes.find((one) => one.id === id)?.at
        return keep(transaction, { status: 201, body: { id, text, author, at } })
      }),
    )
  })
}

async function madeWaiver(keeping: Keeping, request: FastifyRequest, id: string): Promise<WaiverResource> {
  const { submittal, sign } = signOf(request)
  const rows = await keptSign(keeping, actorOf(request), submittal, sign)
  const report = rows.sign.report === null ? undefined : await keptReport(keeping, sign)
  const findings = report ? parsed<Report>(report.body.toString('utf8')).findings : []
  const row = rows.waivers.find((one) => one.id === id)
  if (!row) throw new Error('a waiver that was just kept is not there')
  return waiverResource(row, findings, today())
}

const MEASURED_EXAMPLE = [
  {
    quantity: 'braille.dotHeight',
    values: [0.71, 0.74, 0.69],
    unit: 'mm',
    expandedUncertainty: 0.02,
    instrument: 'dial gauge',
  },
]
const INSTALLATION_EXAMPLE = { units: 'in', panelBottomHeight: 51, side: 'latch' }
const WAIVER_EXAMPLE = {
  fingerprint: '0123456789abcdef01234567',
  reason: 'The mullion leaves no wall at the latch.',
  author: 'R. Ferrante',
  authority: 'Variance 2026-118',
  expires: '2027-06-30',
}
const NOTE_EXAMPLE = { text: 'Seen on the second visit.', author: 'R. Ferrante' }

function described(
  id: string,
  summary: string,
  description: string,
  schema: z.ZodType,
  example: unknown,
  answer: z.ZodType,
  status: number,
  more: ProblemType[] = [],
): Described {
  const requests: Operation['requests'] = {
    'application/json': { schema, examples: { example: { summary, value: () => example } } },
  }
  return { id, summary, description, requests, answer, status, problems: [...BODY_PROBLEMS, ...more] }
}

/** @throws {Refusal} `invalid-description` with pointers @throws {ServiceProblem} for what is no JSON */
export function bodyOf<T extends z.ZodType>(schema: T, request: FastifyRequest): z.infer<T> {
  const { body } = request
  if (body === undefined || Buffer.isBuffer(body) || request.isMultipart())
    throw unsupported(request, 'application/json')
  const parsed = schema.safeParse(body instanceof LongJson ? body.read() : body)
  if (parsed.success) return parsed.data
  throw invalid(parsed.error, schema, '')
}

/** A bare length is in millimetres here: the description beside it may mean inches. */
const withUnit = (measured: MeasuredDescription): MeasuredDescription =>
  measured.unit === undefined && MEASURABLE[measured.quantity] === 'length' ? { ...measured, unit: 'mm' } : measured

/** The same facts with a unit at every bare length, as the description beside them may mean another. */
export function withUnits(facts: InstallationDescription, unit: Unit): InstallationDescription {
  const put = (value: unknown, key: string): unknown => {
    if (typeof value === 'number') return key === 'lrv' ? value : { value, unit }
    if (Array.isArray(value)) return value.map((one) => put(one, key))
    if (typeof value !== 'object' || value === null || 'unit' in value) return value
    return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, put(member, name)]))
  }
  return put(facts, '') as InstallationDescription
}
