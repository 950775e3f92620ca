import type { Keeping } from './keeping.js'

/** How many signs of a submittal have which verdict; signs without a report under `none`, those not checked any more under `cancelled`. */
export async function verdictsOf({ store }: Keeping, submittal: string): Promise<Record<string, number>> {
  const rows = await store.db
    .selectFrom('signs')
    .select((e) => ['verdict', 'state', e.fn.countAll<number>().as('count')])
    .where('submittal', '=', submittal)
    .groupBy(['verdict', 'state'])
    .execute()
  const counts: Record<string, number> = {}
  const add = (name: string, count: number) => (counts[name] = (counts[name] ?? 0) + count)
  for (const { verdict, state, count } of rows) {
    add(verdict ?? 'none', Number(count))
    if (state === 'cancelled') add('cancelled', Number(count))
  }
  return counts
}
