import type { FastifyInstance } from 'fastify'
import { actorOf } from '../../service/actor.js'
import { submittalOf } from '../../service/submittals/route.js'
import { ownSubmittal } from '../../submittals/create.js'
import { provedHistory } from '../../submittals/history.js'
import type { Keeping } from '../../submittals/keeping.js'
import { cancelSubmittal, deleteSubmittal, listSubmittals, numberedSigns } from '../../submittals/submittals.js'
import { verdictsOf } from '../../submittals/verdicts.js'
import { sendView } from '../layout.js'
import { pageIn } from '../pager.js'
import { queryOf } from '../query.js'
import { saidNotice } from '../said.js'
import { deletePage } from './delete-page.js'
import { HISTORY_PAGE, historyPage } from './history-page.js'
import { listPage } from './list-page.js'
import { filterIn } from './sign-table.js'
import { submittalPage } from './submittal-page.js'

/** Pages about whole sets. */

const SETS_A_PAGE = 50
const SIGNS_A_PAGE = 100

export function submittalPages(app: FastifyInstance, keeping: Keeping) {
  app.get('/submittals', async (request, reply) => {
    const query = queryOf(request)
    const before = query.get('before') ?? undefined
    const page = await listSubmittals(keeping, actorOf(request), SETS_A_PAGE, before)
    return sendView(request, reply, listPage(page, before === undefined, saidNotice(query)))
  })

  app.get('/submittals/:submittal', async (request, reply) => {
    const query = queryOf(request)
    const row = await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal)
    const filter = filterIn(query)
    const page = pageIn(query)
    const verdicts = await verdictsOf(keeping, row.id)
    const { rows, total } = await numberedSigns(keeping, row.id, SIGNS_A_PAGE, page, filter)
    const listed = { submittal: row.id, rows, part: { page, size: SIGNS_A_PAGE, total }, filter }
    return sendView(request, reply, submittalPage({ row, verdicts, listed, said: saidNotice(query) }))
  })

  app.get('/submittals/:submittal/history', async (request, reply) => {
    const row = await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal)
    const proof = await provedHistory(keeping.store.db, row)
    const part = { page: pageIn(queryOf(request)), size: HISTORY_PAGE, total: proof.events.length }
    return sendView(request, reply, historyPage(row, proof, part))
  })

  app.post('/submittals/:submittal/cancel', async (request, reply) => {
    const { id } = await cancelSubmittal(keeping, actorOf(request), submittalOf(request).submittal)
    return reply.redirect(`/submittals/${id}?said=cancelled`, 303)
  })

  app.get('/submittals/:submittal/delete', async (request, reply) =>
    sendView(request, reply, deletePage(await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal))),
  )

  app.post('/submittals/:submittal/delete', async (request, reply) => {
    const { submittal } = submittalOf(request)
    await deleteSubmittal(keeping, actorOf(request), submittal)
    request.log.info({ submittal, actor: actorOf(request).name }, 'a submittal was deleted')
    return reply.redirect('/submittals?said=deleted', 303)
  })
}
