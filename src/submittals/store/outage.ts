/** What an error of a database or of a disk means to whoever asked. Codes: PostgreSQL appendix A, SQLite result codes, errno(3). */

export type Trouble = 'unreachable' | 'full'

const UNREACHABLE =
  /^(08\w{3}|25P03|55P03|40P01|57P0[1-5]|53300|ECONNREFUSED|ECONNRESET|EPIPE|ETIMEDOUT|ENOTFOUND|EAI_AGAIN|SQLITE_BUSY\w*|SQLITE_LOCKED\w*)$/u
const FULL = /^(53100|ENOSPC|EDQUOT|SQLITE_FULL|SQLITE_IOERR_WRITE|SQLITE_IOERR_FSYNC)$/u
/** The client of PostgreSQL gives these no code. */
const BROKEN =
  /^(Connection terminated|timeout exceeded when trying to connect|Client has encountered a connection error|Client was closed and is not queryable|Cannot use a pool after calling end)/u

/** @returns undefined for an error that is no trouble of the store */
export function troubleOf(error: unknown): Trouble | undefined {
  if (!(error instanceof Error)) return undefined
  const code = 'code' in error && typeof error.code === 'string' ? error.code : ''
  if (FULL.test(code)) return 'full'
  if (UNREACHABLE.test(code) || BROKEN.test(error.message)) return 'unreachable'
  return error instanceof AggregateError || error.cause !== undefined ? troubleOfParts(error) : undefined
}

function troubleOfParts(error: Error): Trouble | undefined {
  const parts: unknown[] = error instanceof AggregateError ? error.errors : [error.cause]
  for (const part of parts) {
    const trouble = troubleOf(part)
    if (trouble) return trouble
  }
  return undefined
}
