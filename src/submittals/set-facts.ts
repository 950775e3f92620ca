import type { CheckInput, CheckOptions } from '../check.js'
import type { Report } from '../report/schema.js'
import type { SetFinding } from '../report/set/evidence.js'
import type { SignDescription } from '../sign/description.js'
import { comparedSign, type ComparedSign } from './set-findings/compared-sign.js'
import { setFindings } from './set-findings/set-findings.js'
import type { InTransaction, SubmittalRow } from './store/tables.js'
import type { ListedDoor } from './upload.js'

/** What a set is compared by is kept beside each report, so that a set is compared without reading thousands of reports. */

/** All but the names of a sign, which are columns of their own. */
export const factsOf = ({ sign, options }: CheckInput, report: Report): ComparedSign =>
  comparedSign({
    mark: '',
    location: null,
    door: null,
    description: sign ?? null,
    useAssumed: options.useAssumed ?? false,
    report,
  })

/** Compares the signs of the submittal and keeps what was found. Signs without a report are compared by what was said of them. */
export async function keepSetFindings(
  transaction: InTransaction,
  { id, doors }: Pick<SubmittalRow, 'id' | 'doors'>,
): Promise<SetFinding[]> {
  const rows = await transaction
    .selectFrom('signs')
    .select(['mark', 'location', 'door', 'options', 'facts'])
    .select((e) => e.case().when('facts', 'is', null).then(e.ref('description')).else(null).end().as('said'))
    .where('submittal', '=', id)
    .orderBy('position')
    .execute()
  const signs = rows.map(({ mark, location, door, options, facts, said }): ComparedSign => {
    if (facts !== null) return { ...parsed<ComparedSign>(facts), mark, location, door }
    const useAssumed = parsed<Partial<CheckOptions>>(options).useAssumed ?? false
    const description = said === null ? null : parsed<SignDescription>(said)
    return comparedSign({ mark, location, door, description, useAssumed, report: null })
  })
  const found = setFindings(signs, parsed<ListedDoor[]>(doors))
  await transaction
    .updateTable('submittals')
    .set({ set_findings: JSON.stringify(found) })
    .where('id', '=', id)
    .execute()
  return found
}

/** What we wrote ourselves, as it was written. */
const parsed = <T>(json: string): T => JSON.parse(json) as T
