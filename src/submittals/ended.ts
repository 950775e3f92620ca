import { createHash } from 'node:crypto'
import { canonicalJson } from '../standards/load.js'
import type { Happening } from './history.js'
import { within, type Keeping } from './keeping.js'
import { progressOf } from './progress.js'
import { keepSetFindings } from './set-facts.js'
import type { InTransaction, SubmittalRow } from './store/tables.js'
import { verdictsOf } from './verdicts.js'
import type { SubmittalNews } from './webhooks/events.js'
import { tell } from './webhooks/tell.js'

/** What is done, in the same transaction, when nothing of a submittal waits any more. */

/** Every sign has been checked: the set is compared, and whoever asked is told. @returns what the history says of it */
export async function whenChecked(
  keeping: Keeping,
  transaction: InTransaction,
  submittal: SubmittalRow,
): Promise<Happening['data']> {
  const found = await keepSetFindings(transaction, submittal)
  const data = await newsOf(keeping, transaction, { ...submittal, state: 'done', open: 0 })
  await tell(transaction, keeping.queue, submittal.organisation, 'submittal.checked', data)
  return {
    signs: data.signs.total,
    verdicts: data.verdicts,
    setFindings: found.length,
    setFindingsDigest: digestOf(found),
  }
}

/** @param submittal as it is after it was cancelled */
export async function whenCancelled(
  keeping: Keeping,
  transaction: InTransaction,
  submittal: SubmittalRow,
): Promise<void> {
  const data = await newsOf(keeping, transaction, submittal)
  await tell(transaction, keeping.queue, submittal.organisation, 'submittal.cancelled', data)
}

async function newsOf(keeping: Keeping, transaction: InTransaction, row: SubmittalRow): Promise<SubmittalNews> {
  const progress = progressOf(row, await verdictsOf(within(keeping, transaction), row.id))
  const address = `/v1/submittals/${row.id}`
  const state = row.state === 'cancelled' ? 'cancelled' : 'done'
  return { submittal: row.id, name: row.name, ...progress, state, address }
}

/** SHA-256 of the canonical JSON, hexadecimal: what was found is in the history without its length. */
const digestOf = (found: readonly unknown[]): string => createHash('sha256').update(canonicalJson(found)).digest('hex')
