import type { NamedFile } from '../../report/set/archive.js'
import type { Keeping } from '../../submittals/keeping.js'
import { parsed } from './rows.js'

/** What a sign was received as: its drawing as it came, and its description as it was read. */
export async function receivedFiles({ store }: Keeping, sign: string): Promise<NamedFile[]> {
  const row = await store.db
    .selectFrom('signs')
    .select(['mark', 'drawing', 'description', 'files'])
    .where('id', '=', sign)
    .executeTakeFirst()
  if (!row) return []
  const files: NamedFile[] = []
  const drawing = row.drawing === null ? undefined : await store.files.read(row.drawing)
  if (drawing) {
    const name = parsed<string[]>(row.files).find((file) => file.toLowerCase().endsWith('.svg')) ?? `${row.mark}.svg`
    files.push({ name, bytes: new Uint8Array(drawing) })
  }
  if (row.description !== null)
    files.push({ name: 'description.json', bytes: new TextEncoder().encode(row.description) })
  return files
}
