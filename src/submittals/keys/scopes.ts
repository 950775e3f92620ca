/** What a key may do. Each scope stands for itself; none contains another. */
export const SCOPES = ['check', 'read', 'write', 'admin'] as const
export type Scope = (typeof SCOPES)[number]

export const SCOPE_MEANINGS: Record<Scope, string> = {
  check: 'ask for checks, readings, drawings and the other answers that keep nothing',
  read: 'read submittals and their evidence',
  write: 'create, change and delete submittals',
  admin: 'make, list and revoke the keys of the organisation, with any scope',
}
