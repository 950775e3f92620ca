import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { DEFAULT_STANDARDS } from '../../check-options.js'
import { addSigns, createSubmittal, ownSubmittal } from '../../submittals/create.js'
import type { Keeping } from '../../submittals/keeping.js'
import { listSubmittals } from '../../submittals/submittals.js'
import { actorOf } from '../../service/actor.js'
import { askerOf } from '../../service/admission/asker.js'
import type { Pool } from '../../service/pool.js'
import { LIMITS } from '../../service/settings.js'
import { NAMELESS, pinned, receive } from '../../service/submittals/create.js'
import { submittalOf } from '../../service/submittals/route.js'
import { readFilesAndTexts } from '../../service/submittals/upload-request.js'
import { formFailure } from '../failure.js'
import type { FormError } from '../form.js'
import { sendView } from '../layout.js'
import { addPage } from './add-page.js'
import { uploadPage, type Typed } from './upload-page.js'

/** Handing in: the first page, a new set, further files for one that is there. */

const RECENT = 5
const FIELDS = ['name', 'standards', 'use']
/** Parts of the form besides its files: every standard that is ticked is one. */
const MOST_TEXTS = 60

const UNTOUCHED: Typed = { name: '', standards: new Set(DEFAULT_STANDARDS), use: '' }

export function uploadRoutes(app: FastifyInstance, keeping: Keeping, pool: Pool) {
  app.get('/', async (request, reply) => sendUpload(keeping, request, reply, UNTOUCHED, []))

  app.post('/submittals', { bodyLimit: LIMITS.upload }, async (request, reply) => {
    let typed = UNTOUCHED
    try {
      const { files, texts } = await readFilesAndTexts(request, FIELDS, MOST_TEXTS)
      typed = typedIn(texts)
      const missing = whatIsMissing(files.length, typed)
      if (missing.length > 0) return await sendUpload(keeping, request, reply, typed, missing, 422)
      const name = typed.name.trim()
      const sent = {
        files,
        standards: [...typed.standards],
        ...(name !== '' && { name }),
        ...(typed.use !== '' && { options: { use: typed.use } }),
      }
      const { received, fields } = await receive(sent, pool, askerOf(request))
      const standards = pinned(fields.standards ?? DEFAULT_STANDARDS)
      const given = { ...received, name: fields.name ?? NAMELESS, standards, options: fields.options ?? {} }
      const id = await createSubmittal(keeping, actorOf(request), given)
      return await reply.redirect(`/submittals/${id}`, 303)
    } catch (error) {
      const { status, errors } = await formFailure(error, request, controlAt)
      return sendUpload(keeping, request, reply, typed, errors, status)
    }
  })

  app.get('/submittals/:submittal/add', async (request, reply) => {
    const row = await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal)
    return sendView(request, reply, addPage(row, []))
  })

  app.post('/submittals/:submittal/signs', { bodyLimit: LIMITS.upload }, async (request, reply) => {
    const row = await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal)
    try {
      const { files } = await readFilesAndTexts(request, [], 0)
      if (files.length === 0) return await sendView(request, reply, addPage(row, [NO_FILES]), 422)
      const { received } = await receive({ files }, pool, askerOf(request))
      await addSigns(keeping, actorOf(request), row.id, received)
      return await reply.redirect(`/submittals/${row.id}?said=added`, 303)
    } catch (error) {
      const { status, errors } = await formFailure(error, request, () => 'files')
      return sendView(request, reply, addPage(row, errors), status)
    }
  })
}

const NO_FILES: FormError = { id: 'files', text: 'Choose at least one file.' }

function whatIsMissing(files: number, { standards }: Typed): FormError[] {
  return [
    ...(files === 0 ? [NO_FILES] : []),
    ...(standards.size === 0 ? [{ id: 'standards', text: 'Choose at least one standard.' }] : []),
  ]
}

const typedIn = (texts: Map<string, string[]>): Typed => ({
  name: texts.get('name')?.[0] ?? '',
  standards: new Set(texts.get('standards')),
  use: texts.get('use')?.[0] ?? '',
})

function controlAt(pointer: string): string {
  if (pointer.startsWith('/name')) return 'name'
  if (pointer.startsWith('/standards')) return 'standards'
  return pointer.startsWith('/options') ? 'use' : 'files'
}

async function sendUpload(
  keeping: Keeping,
  request: FastifyRequest,
  reply: FastifyReply,
  typed: Typed,
  errors: readonly FormError[],
  status = 200,
) {
  const recent = request.actor ? (await listSubmittals(keeping, request.actor, RECENT)).rows : undefined
  const title = errors.length > 0 ? 'Error: Check a set of tactile signs' : 'Check a set of tactile signs'
  return sendView(request, reply, { title, main: uploadPage(typed, errors, recent), here: 'upload' }, status)
}
