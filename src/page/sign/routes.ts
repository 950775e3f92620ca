import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { numbered } from '../../report/numbering.js'
import { actorOf } from '../../service/actor.js'
import { NoteRequest } from '../../service/submittals/change-requests.js'
import { unsupported } from '../../service/errors.js'
import { signOf } from '../../service/submittals/route.js'
import { faultsOf } from '../../sign/faults.js'
import { addMeasurements, addNote, addWaiver, setInstallation, withdrawWaiver } from '../../submittals/changes.js'
import type { Keeping } from '../../submittals/keeping.js'
import { NotKept } from '../../submittals/keeping.js'
import { formFailure } from '../failure.js'
import type { FormError } from '../form.js'
import { sendView } from '../layout.js'
import { queryOf } from '../query.js'
import { saidNotice, type Said } from '../said.js'
import { NOTHING } from '../../report/html-tag.js'
import { gather, type ShownSign } from './gather.js'
import { readMeasured } from './measured-values.js'
import { readFacts } from './place-facts.js'
import { knownFacts } from './place-form.js'
import { signPage } from './sign-page.js'
import { oneLine, readWaiver, type Refilled } from './waive-form.js'

/** The page of one sign, and the forms on it. A form that cannot be taken is shown again as it was filled in. */

const AT = '/submittals/:submittal/signs/:sign'

export function signPages(app: FastifyInstance, keeping: Keeping) {
  app.get(AT, async (request, reply) => {
    const query = queryOf(request)
    const shown = await gather(keeping, request, revisionIn(query))
    return sendView(request, reply, signPage(shown, saidNotice(query)))
  })

  const form = (name: Refilled['form'], path: string, take: Take) =>
    app.post(`${AT}/${path}`, async (request, reply) => {
      const values = request.body
      // An empty control takes a fact away: what is no form must not be taken for an empty one.
      if (!(values instanceof URLSearchParams)) throw unsupported(request, 'application/x-www-form-urlencoded')
      try {
        const done = await take(request, values)
        if ('said' in done) return await back(request, reply, done.said, done.anchor)
        return await again(keeping, request, reply, { form: name, values, errors: done.errors })
      } catch (error) {
        const { status, errors } = await formFailure(error, request, () => WHOLE[name])
        return again(keeping, request, reply, { form: name, values, errors }, status)
      }
    })

  form('measure', 'measurements', async (request, values) => {
    const read = readMeasured(values)
    if ('errors' in read) return read
    const actor = actorOf(request)
    await addMeasurements(keeping, actor, signOf(request), read.measured, read.author ?? actor.name)
    return { said: 'measured' }
  })

  form('place', 'installation', async (request, values) => {
    const { facts, bare } = knownFacts(await gather(keeping, request))
    const read = readFacts(values, facts, bare)
    if ('errors' in read) return read
    await setInstallation(keeping, actorOf(request), signOf(request), read.installation)
    return { said: 'placed' }
  })

  form('waive', 'waivers', async (request, values) => {
    const number = numberOf(await gather(keeping, request), values.get('fingerprint'))
    const read = readWaiver(values, number)
    if ('errors' in read) return read
    const actor = actorOf(request)
    const { author, expires, ...given } = read.waiver
    const waiver = { ...given, author: author ?? actor.name, expires: expires ?? null }
    await addWaiver(keeping, actor, signOf(request), waiver)
    return { said: 'waived', anchor: `finding-${number}` }
  })

  form('note', 'notes', async (request, values) => {
    const actor = actorOf(request)
    const author = oneLine(values.get('author') ?? '')
    const note = { text: oneLine(values.get('text') ?? ''), ...(author !== '' && { author }) }
    if (note.text === '') return { errors: [{ id: 'note-text', text: 'Write the note.' }] }
    const parsed = NoteRequest.safeParse(note)
    if (!parsed.success)
      return {
        errors: faultsOf(parsed.error, NoteRequest).map(({ pointer = '', detail }) => ({
          id: `note-${pointer.slice(1)}`,
          text: detail,
        })),
      }
    await addNote(keeping, actor, signOf(request), parsed.data.text, parsed.data.author ?? actor.name)
    return { said: 'noted', anchor: 'laid-over' }
  })

  app.post(`${AT}/waivers/:waiver/withdraw`, async (request, reply) => {
    const { waiver } = request.params as { waiver: string }
    await withdrawWaiver(keeping, actorOf(request), signOf(request), waiver)
    return back(request, reply, 'withdrawn')
  })
}

/** What came of a form. */
type Take = (
  request: FastifyRequest,
  values: URLSearchParams,
) => Promise<{ said: Said; anchor?: string } | { errors: FormError[] }>

/** Where something is wrong that belongs to no one control. */
const WHOLE: Record<Refilled['form'], string> = {
  measure: 'measure',
  place: 'place',
  waive: 'wrong',
  note: 'note',
}

function revisionIn(query: URLSearchParams): number | undefined {
  const report = query.get('report')
  if (report === null) return undefined
  // No more digits than every store can hold.
  if (!/^\d{1,9}$/u.test(report)) throw new NotKept()
  return Number(report)
}

/** @throws {NotKept} when the latest report has no such finding */
function numberOf({ sign: { report } }: ShownSign, fingerprint: string | null): number {
  const { failing, undecided } = report ? numbered(report) : { failing: [], undecided: [] }
  const found = [...failing, ...undecided].find(({ finding }) => finding.fingerprint === fingerprint)
  if (!found) throw new NotKept()
  return found.number
}

function back(request: FastifyRequest, reply: FastifyReply, said: Said, anchor?: string) {
  const { submittal, sign } = signOf(request)
  const to = anchor === undefined ? '' : `#${anchor}`
  return reply.redirect(`/submittals/${submittal}/signs/${sign}?said=${said}${to}`, 303)
}

async function again(keeping: Keeping, request: FastifyRequest, reply: FastifyReply, refilled: Refilled, status = 422) {
  const shown = await gather(keeping, request)
  return sendView(request, reply, signPage(shown, NOTHING, refilled), status)
}
