import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { FastifyInstance } from 'fastify'
import type { Settings } from '../../../src/service/settings.js'
import type { Keeping } from '../../../src/submittals/keeping.js'
import { createKey, type NewKey } from '../../../src/submittals/keys/keys.js'
import { organisationNamed } from '../../../src/submittals/keys/organisations.js'
import type { Scope } from '../../../src/submittals/keys/scopes.js'
import { openSession } from '../../../src/submittals/keys/sessions.js'
import { TableQueue } from '../../../src/submittals/queue/table-queue.js'
import { openStore } from '../../../src/submittals/store/connect.js'
import { listening } from '../submittals/kept.js'

/** A service that asks for keys, and the keys to it, made beside it in the same store as the command makes them. */
export interface Guarded {
  app: FastifyInstance
  keeping: Keeping
  /** A new key, of the organisation “Kiln & Wheel” unless another is named. */
  key(scopes: Scope[], also?: Partial<NewKey> & { organisation?: string }): Promise<string>
  /** A new session, as a cookie. */
  session(key: string): Promise<string>
  close(): Promise<void>
}

/** The compiled thread, with time for a machine that others use too. */
const EVIDENCE: Settings['evidence'] = {
  worker: new URL('../../../dist/service/submittals/evidence-worker.js', import.meta.url),
  timeLimit: 120_000,
  heapLimit: 1024,
  queueLimit: 8,
}

export const KEYED: Scope[] = ['check', 'read', 'write', 'admin']

export async function guarded(settings: Partial<Settings> = {}): Promise<Guarded> {
  const folder = mkdtempSync(join(tmpdir(), 'guarded-'))
  const app = await listening({ auth: 'keys', place: { folder }, evidence: EVIDENCE, ...settings })
  const store = await openStore({ folder }, () => undefined, true)
  const keeping: Keeping = { store, queue: new TableQueue(store.db), awaken: () => undefined }
  return {
    app,
    keeping,
    async key(scopes, { organisation = 'Kiln & Wheel', ...also } = {}) {
      const { id } = await organisationNamed(store.db, organisation)
      const { token } = await createKey(store.db, id, {
        label: 'Inspector',
        expires: null,
        rate: null,
        ...also,
        scopes,
      })
      return token
    },
    session: async (key) => `fingertrue-session=${await openSession(keeping, key)}`,
    async close() {
      await app.close()
      await store.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
