import { createHash } from 'node:crypto'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import { REPORT_STYLE_HASH } from '../../report/html-style.js'
import { SET_STYLE_HASH } from '../../report/set/html-style.js'
import { ownSubmittal } from '../../submittals/create.js'
import { evidenceRows, type SignChoice } from '../../submittals/evidence-rows.js'
import { provedHistory } from '../../submittals/history.js'
import { NotKept, type Keeping } from '../../submittals/keeping.js'
import { keptReport, ownSign } from '../../submittals/kept-sign.js'
import type { SubmittalRow } from '../../submittals/store/tables.js'
import { VERSION } from '../../version.js'
import { actorOf } from '../actor.js'
import { pagePolicy } from '../page.js'
import { Painter } from '../painter.js'
import { ServiceProblem } from '../problems.js'
import { LIMITS, type Settings } from '../settings.js'
import { SET_FORMS, SIGN_FORMS, type SetForm, type SignForm } from './evidence-types.js'
import { EvidencePool, type Sources } from './evidence-pool.js'
import type { EvidenceTask } from './evidence-worker.js'
import { historyText } from './history-resource.js'
import { receivedFiles } from './received-files.js'
import { queryOf, route, SignParams, signOf, SubmittalParams, submittalOf } from './route.js'
import { today } from './today.js'

/** Evidence of a submittal and of one of its signs, each form at an address of its own. */

const Query = z.strictObject({
  from: z.coerce.number().int().nonnegative().optional().describe('Signs that are left out at the beginning.'),
  count: z.coerce
    .number()
    .int()
    .positive()
    .max(LIMITS.evidenceSigns)
    .optional()
    .describe('Signs that follow; absent: all.'),
  undetermined: z
    .enum(['skipped', 'failure'])
    .optional()
    .describe('Of JUnit XML: what an undecided finding counts as; absent: skipped.'),
})

const TITLES: Record<SetForm, string> = {
  'report.html': 'The whole submittal as a page',
  'report.pdf': 'The whole submittal as tagged PDF',
  'report.csv': 'Every finding as a table',
  'schedule.csv': 'The schedule with verdicts as a table',
  'report.sarif': 'Every finding as SARIF 2.1.0',
  'report.xml': 'Every finding as JUnit XML',
  'report.bcf': 'Failing findings as BCF 3.0',
  'inspection.html': 'What is left for gauge and tape, as a page',
  'inspection.pdf': 'What is left for gauge and tape, as tagged PDF',
  'evidence.zip': 'Everything, with a manifest of digests',
}

export function evidenceRoutes(app: FastifyInstance, keeping: Keeping, { evidence }: Settings) {
  const onError = (err: Error): void => app.log.error({ err }, 'the thread that writes evidence failed')
  const pool = new EvidencePool(evidence, onError, app.watching.meters?.evidence)
  const painter = new Painter((err) => app.log.warn({ err }, 'a picture could not be made'))
  app.addHook('onClose', async () => {
    painter.close()
    await pool.close()
  })

  for (const form of Object.keys(SET_FORMS) as SetForm[]) {
    const described = {
      id: `getSet${nameOf(form)}`,
      summary: TITLES[form],
      description: 'As of the last event of the history; the same state gives the same bytes.',
      answer: { [mediaOf(SET_FORMS[form])]: { binary: true as const } },
      problems: ['too-large' as const, 'too-complex' as const, 'busy' as const],
    }
    app.get(`/v1/submittals/:submittal/${form}`, route(described, SubmittalParams, Query), async (request, reply) => {
      const { from, count, undetermined } = queryOf(Query, request)
      const row = await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal)
      const left = row.total - (from ?? 0)
      if (count === undefined && left > LIMITS.evidenceSigns) throw tooMany(left)
      const choice = { from: from ?? 0, count: count ?? LIMITS.evidenceSigns }
      const tag = (now: SubmittalRow) => tagOf(now, form, choice, undetermined)
      if (isKnown(request, reply, tag(row))) return reply.code(304).send()
      const task = await taskOf(row, choice, { set: form }, undetermined ?? 'skipped', request)
      const { submittal } = task.rows
      void reply.header('etag', tag(submittal))
      const stream = await pool.write(task, sourcesOf(submittal))
      if (!stream) throw new NotKept()
      return send(reply, form, SET_FORMS[form], SET_STYLE_HASH, `${fileName(row.name)}-${form}`).send(stream)
    })
  }

  for (const form of Object.keys(SIGN_FORMS) as SignForm[]) {
    const described = {
      id: `getSign${nameOf(form)}`,
      summary: form.startsWith('inspection') ? 'What is left for gauge and tape on one sign' : 'The report of one sign',
      description: 'With the waivers, notes and readings that were added to it.',
      answer: { [mediaOf(SIGN_FORMS[form])]: { binary: true as const } },
      problems: ['too-complex' as const, 'busy' as const],
    }
    app.get(`/v1/submittals/:submittal/signs/:sign/${form}`, route(described, SignParams), async (request, reply) => {
      const { submittal, sign } = signOf(request)
      const { mark } = await ownSign(keeping, actorOf(request), submittal, sign)
      const row = await ownSubmittal(keeping, actorOf(request), submittal)
      const tag = (now: SubmittalRow) => tagOf(now, form, { sign })
      if (isKnown(request, reply, tag(row))) return reply.code(304).send()
      const task = await taskOf(row, { sign }, { sign: form }, 'skipped', request)
      void reply.header('etag', tag(task.rows.submittal))
      const stream = await pool.write(task, sourcesOf(task.rows.submittal))
      if (!stream) throw new NotKept()
      const hash = form === 'report.html' ? REPORT_STYLE_HASH : SET_STYLE_HASH
      return send(reply, form, SIGN_FORMS[form], hash, `${fileName(mark)}-${form}`).send(stream)
    })
  }

  const drawing = {
    id: 'getSignDrawing',
    summary: 'The sign redrawn with its findings',
    description: 'As it was drawn with the latest report; never the drawing that was sent.',
    answer: { 'image/svg+xml': {} },
  }
  app.get('/v1/submittals/:submittal/signs/:sign/report.svg', route(drawing, SignParams), async (request, reply) => {
    const { submittal, sign } = signOf(request)
    const row = await ownSign(keeping, actorOf(request), submittal, sign)
    const kept = row.report_revision === null ? undefined : await keptReport(keeping, sign, row.report_revision)
    if (!kept) throw new NotKept()
    void reply.header('content-security-policy', "default-src 'none'; style-src 'unsafe-inline'; sandbox")
    return reply.type('image/svg+xml; charset=utf-8').send(kept.picture)
  })

  const taskOf = async (
    row: SubmittalRow,
    choice: SignChoice,
    form: EvidenceTask['form'],
    undetermined: EvidenceTask['undetermined'],
    request: FastifyRequest,
  ): Promise<EvidenceTask> => ({
    rows: await evidenceRows(keeping, row, choice),
    today: today(),
    form,
    base: `${request.protocol}://${request.host}`,
    undetermined,
  })

  const sourcesOf = (row: SubmittalRow): Sources => ({
    received: (sign) => receivedFiles(keeping, sign),
    picture: (svg) => painter.paint(svg),
    history: async () => {
      const pieces: Uint8Array[] = []
      const proved = await provedHistory(keeping.store.db, row)
      for await (const piece of historyText(row.id, proved)) pieces.push(Buffer.from(piece))
      return new Uint8Array(Buffer.concat(pieces))
    },
  })
}

/** Changes with everything that the form shows: the history, the day by which waivers end, the writer. */
function tagOf(row: SubmittalRow, ...more: unknown[]): string {
  const content = JSON.stringify([row.id, row.event_count, row.event_head, row.set_findings, today(), VERSION, ...more])
  return `"${createHash('sha256').update(content).digest('base64url')}"`
}

function isKnown(request: FastifyRequest, reply: FastifyReply, tag: string): boolean {
  void reply.header('etag', tag).header('cache-control', 'private, no-cache')
  const known = request.headers['if-none-match']?.split(',').map((item) => item.trim().replace(/^W\//u, ''))
  return known !== undefined && (known.includes(tag) || known.includes('*'))
}

/** A page or a PDF is shown; all else is a file to keep. */
function send(reply: FastifyReply, form: string, type: string, styleHash: string, name: string): FastifyReply {
  const isShown = /\.(html|pdf)$/u.test(form)
  if (form.endsWith('.html')) void reply.header('content-security-policy', pagePolicy(styleHash))
  const encoded = encodeURIComponent(name)
  return reply
    .type(type)
    .header('content-disposition', `${isShown ? 'inline' : 'attachment'}; filename*=UTF-8''${encoded}`)
}

const fileName = (text: string): string => text.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/gu, '') || 'submittal'

const mediaOf = (type: string): string => type.split(';', 1)[0] ?? type

const nameOf = (form: string): string =>
  form
    .split('.')
    .map((part) => part.charAt(0).toUpperCase() + part.slice(1))
    .join('')

function tooMany(actual: number): ServiceProblem {
  const limit = LIMITS.evidenceSigns
  const detail = `Evidence covers at most ${limit} signs at once; ask for the others with \`from\` and \`count\`.`
  return new ServiceProblem('too-large', detail, [], { limit, actual })
}
