import type { FastifyInstance, FastifyReply } from 'fastify'
import { z } from 'zod'
import { Report } from '../../report/schema.js'
import { removeSign } from '../../submittals/changes.js'
import { ownSubmittal } from '../../submittals/create.js'
import { NotKept, type Keeping } from '../../submittals/keeping.js'
import { keptReport, keptReports, keptSign, ownSign } from '../../submittals/kept-sign.js'
import { listSigns } from '../../submittals/submittals.js'
import { actorOf } from '../actor.js'
import { ServiceProblem } from '../problems.js'
import { SignList, SignResource } from './resources.js'
import { queryOf, route, SignParams, signOf, SubmittalParams, submittalOf } from './route.js'
import { besideSign, briefReport, parsed, signFields, withMember } from './rows.js'
import { today } from './today.js'

/** The signs of a submittal and the reports that were made of them. */

const SIGNS_DEFAULT = 50
const SIGNS_MOST = 100
const SIGNS_MOST_BRIEF = 1000
const LONGEST_TEXT = 200

/** A number that every store can hold. */
const PLACE = /^\d{1,9}$/u

const SignsQuery = z.strictObject({
  limit: z.coerce
    .number()
    .int()
    .positive()
    .max(SIGNS_MOST_BRIEF)
    .optional()
    .describe(`At most ${SIGNS_MOST} with whole reports.`),
  cursor: z.string().regex(PLACE, 'is no cursor of this list').optional().describe('`next` of the page before.'),
  report: z.enum(['whole', 'brief']).optional().describe('`brief`: what each report comes to, without its findings.'),
  verdict: z
    .enum(['pass', 'fail', 'undetermined', 'not-applicable', 'none'])
    .optional()
    .describe('`none`: without a report.'),
  state: z.enum(['queued', 'done', 'cancelled']).optional(),
  text: z.string().max(LONGEST_TEXT).optional().describe('Part of a mark, a location or a door.'),
})

const ReportParams = SignParams.extend({ revision: z.string().describe('A revision of the sign.') })

export function signRoutes(app: FastifyInstance, keeping: Keeping) {
  const list = {
    id: 'listSigns',
    summary: 'The signs of a submittal',
    description: 'In the order of the upload, a page at a time, each with its latest report.',
    answer: SignList,
  }
  app.get('/v1/submittals/:submittal/signs', route(list, SubmittalParams, SignsQuery), async (request, reply) => {
    const { limit, cursor, report, ...filter } = queryOf(SignsQuery, request)
    const { id } = await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal)
    const whole = report !== 'brief'
    if (whole && (limit ?? 0) > SIGNS_MOST) throw tooMany(limit ?? 0)
    const { rows, next } = await listSigns(keeping, id, limit ?? SIGNS_DEFAULT, cursor, filter)
    const reports = await keptReports(keeping, whole ? rows.filter((row) => row.report !== null).map((r) => r.id) : [])
    const signs = rows.map((row) =>
      withMember(signFields(row), 'report', whole ? (reports.get(row.id) ?? 'null') : JSON.stringify(briefReport(row))),
    )
    return json(reply, `{"signs":[${signs.join(',')}],"next":${JSON.stringify(next)}}`)
  })

  const one = {
    id: 'getSign',
    summary: 'One sign',
    description: 'Its latest report, and all that was added to it: readings, facts of its place, waivers, notes.',
    answer: SignResource,
  }
  app.get('/v1/submittals/:submittal/signs/:sign', route(one, SignParams), async (request, reply) => {
    const at = signOf(request)
    const rows = await keptSign(keeping, actorOf(request), at.submittal, at.sign)
    const report = rows.sign.report === null ? undefined : await keptReport(keeping, at.sign)
    const text = report?.body.toString('utf8') ?? 'null'
    const findings = report ? parsed<Report>(text).findings : []
    const beside = besideSign(rows, findings, today())
    return json(reply, withMember({ ...signFields(rows.sign), ...beside }, 'report', text))
  })

  const remove = {
    id: 'removeSign',
    summary: 'Take a sign out',
    description: 'The sign and its reports are deleted; the history still says that it was there.',
    status: 204,
  }
  app.delete('/v1/submittals/:submittal/signs/:sign', route(remove, SignParams), async (request, reply) => {
    await removeSign(keeping, actorOf(request), signOf(request))
    return reply.code(204).send()
  })

  const earlier = {
    id: 'getSignReport',
    summary: 'A report that was made of a sign',
    description: 'As it was made, never changed since.',
    answer: Report,
  }
  app.get(
    '/v1/submittals/:submittal/signs/:sign/reports/:revision',
    route(earlier, ReportParams),
    async (request, reply) => {
      const at = signOf(request)
      const { revision } = request.params as z.infer<typeof ReportParams>
      await ownSign(keeping, actorOf(request), at.submittal, at.sign)
      const report = PLACE.test(revision) ? await keptReport(keeping, at.sign, Number(revision)) : undefined
      if (!report) throw new NotKept()
      return json(reply, report.body)
    },
  )
}

const json = (reply: FastifyReply, body: string | Buffer) => reply.type('application/json; charset=utf-8').send(body)

function tooMany(limit: number): ServiceProblem {
  const detail = `With whole reports a page has at most ${SIGNS_MOST} signs; ask for report=brief to have more.`
  return new ServiceProblem('invalid-parameters', detail, [{ detail: `is ${limit}`, parameter: 'limit' }])
}
