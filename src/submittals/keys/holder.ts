import type { Actor } from '../keeping.js'
import { now } from '../store/ids.js'
import type { KeyRow } from '../store/tables.js'
import type { Scope } from './scopes.js'

/** Who a key that was shown belongs to, and what it lets its holder do. */
export interface Holder {
  /** Id of the key. */
  key: string
  /** Its organisation and its label. */
  actor: Actor
  scopes: readonly Scope[]
  /** Requests a minute; null: as the service is set. */
  rate: number | null
}

export const holderOf = (row: Pick<KeyRow, 'id' | 'organisation' | 'label' | 'scopes' | 'rate'>): Holder => ({
  key: row.id,
  actor: { organisation: row.organisation, name: row.label },
  scopes: JSON.parse(row.scopes) as Scope[],
  rate: row.rate,
})

/** Neither revoked nor past its end, at this moment. */
export const isLive = ({ revoked_at, expires_at }: Pick<KeyRow, 'revoked_at' | 'expires_at'>): boolean =>
  revoked_at === null && (expires_at === null || expires_at > now())
