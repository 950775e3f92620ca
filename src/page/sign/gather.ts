import type { FastifyRequest } from 'fastify'
import { actorOf } from '../../service/actor.js'
import { signOf } from '../../service/submittals/route.js'
import { today } from '../../service/submittals/today.js'
import type { Report } from '../../report/schema.js'
import type { SetSign } from '../../report/set/evidence.js'
import { ownSubmittal } from '../../submittals/create.js'
import { evidenceRows } from '../../submittals/evidence-rows.js'
import { NotKept, type Keeping } from '../../submittals/keeping.js'
import { keptReport, keptSign, type KeptSignRows } from '../../submittals/kept-sign.js'
import { setEvidenceOf } from '../../submittals/set-evidence.js'
import type { SubmittalRow } from '../../submittals/store/tables.js'

/** All that the page of one sign shows. */
export interface ShownSign {
  submittal: SubmittalRow
  kept: KeptSignRows
  /** With its latest report and what was laid over it. */
  sign: SetSign
  /** An earlier report that is shown instead, as it was made. */
  earlier?: { revision: number; report: Report; drawing: string }
}

/** @param revision of an earlier report @throws {NotKept} */
export async function gather(keeping: Keeping, request: FastifyRequest, revision?: number): Promise<ShownSign> {
  const at = signOf(request)
  const actor = actorOf(request)
  const submittal = await ownSubmittal(keeping, actor, at.submittal)
  const kept = await keptSign(keeping, actor, at.submittal, at.sign)
  const rows = await evidenceRows(keeping, submittal, { sign: at.sign })
  const [sign] = setEvidenceOf(rows, today()).signs
  if (!sign) throw new NotKept()
  if (revision === undefined || revision === kept.sign.report_revision) return { submittal, kept, sign }
  const found = await keptReport(keeping, at.sign, revision)
  if (!found) throw new NotKept()
  const report = JSON.parse(found.body.toString('utf8')) as Report
  return { submittal, kept, sign, earlier: { revision, report, drawing: found.picture.toString('utf8') } }
}
