import { newId, now } from '../store/ids.js'
import type { Database, OrganisationRow } from '../store/tables.js'

/** Organisations: whoever owns what is kept. They come into being with their first key. */

export const findOrganisation = (db: Database, name: string): Promise<OrganisationRow | undefined> =>
  db.selectFrom('organisations').selectAll().where('name', '=', name).executeTakeFirst()

/** The organisation of this name, which is made when there is none. */
export async function organisationNamed(db: Database, name: string): Promise<OrganisationRow> {
  await db
    .insertInto('organisations')
    .values({ id: newId('org'), name, created_at: now() })
    .onConflict((c) => c.column('name').doNothing())
    .execute()
  return db.selectFrom('organisations').selectAll().where('name', '=', name).executeTakeFirstOrThrow()
}

export const listOrganisations = (db: Database): Promise<OrganisationRow[]> =>
  db.selectFrom('organisations').selectAll().orderBy('name').execute()
