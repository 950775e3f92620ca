import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { findStandards, listStandards } from '../../src/standards/catalogue.js'
import { EARLIER } from '../../src/standards/revisions.js'

/**
 * A revision of a table is what it was when it was locked: reports name it by its digest. A table that changes gets a new revision, an entry
 * in its changes and a file of its earlier state (DEVELOPERS.md, Add a requirement).
 */

const LOCK = z
  .record(z.string(), z.string())
  .parse(JSON.parse(readFileSync(new URL('digests.json', import.meta.url), 'utf8')))

const tables = listStandards()

test('every table is locked that can be asked for, and no other', () => {
  const callable = [...EARLIER, ...tables].map(({ id, revision }) => `${id}@${revision}`)
  expect(Object.keys(LOCK).sort()).toEqual(callable.sort())
  for (const { id, revision } of tables)
    for (let earlier = 1; earlier < revision; earlier++) expect(callable).toContain(`${id}@${earlier}`)
})

describe.each(tables.map((table) => [table.id, table] as const))('%s', (id, { revision, digest, changes }) => {
  test('is as it was locked, or its revision was raised', () => {
    const why = `${id} differs from its revision ${revision}: raise the revision, write into changes what changed, and lock it`
    expect(LOCK[`${id}@${revision}`], why).toBe(digest)
  })

  test('says what each revision changed, in order', () => {
    expect(changes.map((change) => change.revision)).toEqual(Array.from({ length: revision }, (_, i) => i + 1))
    const dates = changes.map(({ date }) => date)
    expect(dates).toEqual([...dates].sort())
    for (const { requirements } of changes)
      for (const name of requirements) expect(name.startsWith(`${id}/`)).toBe(true)
  })

  test('is superseded by a standard that is here, if at all', () => {
    const [{ supersededBy }] = findStandards([id])
    if (supersededBy !== undefined) expect(tables.map((table) => table.id)).toContain(supersededBy)
  })
})

test.each(Object.entries(LOCK))('%s stays callable and is what it was', (pinned, digest) => {
  expect(findStandards([pinned])[0]?.digest).toBe(digest)
})
