import { once } from 'node:events'
import type { MessagePort } from 'node:worker_threads'
import type { NamedFile } from '../../report/set/archive.js'
import type { EvidenceRows } from '../../submittals/evidence-rows.js'
import { setEvidenceOf } from '../../submittals/set-evidence.js'
import { writeSet, writeSign, type Supply } from './evidence-forms.js'
import type { SetForm, SignForm } from './evidence-types.js'

/** The module that threads run which write evidence: it leaves in pieces, each when the one before has been taken. */

export interface EvidenceTask {
  rows: EvidenceRows
  /** YYYY-MM-DD. */
  today: string
  form: { set: SetForm } | { sign: SignForm }
  base: string
  undetermined: Supply['undetermined']
}

/** What the thread sends; every message is answered, a piece by anything. */
export type FromThread =
  /** The work begins now: waiting for the thread costs nothing. */
  | 'begun'
  | { piece: Uint8Array }
  | { ask: 'received'; sign: string }
  | { ask: 'picture'; drawing: string }
  | { ask: 'history' }

export default async function work({ task, port }: { task: EvidenceTask; port: MessagePort }): Promise<void> {
  const ask = async (message: FromThread): Promise<unknown> => {
    port.postMessage(message)
    const [answer] = (await once(port, 'message')) as unknown[]
    return answer
  }
  port.postMessage('begun' satisfies FromThread)
  const { rows, today, form, base, undetermined } = task
  const evidence = setEvidenceOf(rows, today)
  const supply: Supply = {
    base,
    undetermined,
    received: async ({ id }) => (await ask({ ask: 'received', sign: id })) as NamedFile[],
    picture: async (drawing) => (await ask({ ask: 'picture', drawing })) as Uint8Array | null,
    history: async () => (await ask({ ask: 'history' })) as Uint8Array,
  }
  if ('sign' in form) {
    const written = writeSign(form.sign, evidence)
    if (written) await ask({ piece: written })
  } else for await (const piece of writeSet(form.set, evidence, supply)) await ask({ piece })
  port.close()
}
