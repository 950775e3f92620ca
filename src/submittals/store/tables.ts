import type { Kysely, Transaction } from 'kysely'

/**
 * The tables of the store, the same in SQLite and PostgreSQL. Times are ISO 8601 texts in UTC, which sort as they run; what is
 * only read whole is JSON in a text; long content is gzipped bytes.
 */

export interface Tables {
  organisations: OrganisationRow
  keys: KeyRow
  sessions: SessionRow
  submittals: SubmittalRow
  signs: SignRow
  reports: ReportRow
  measurements: MeasurementRow
  waivers: WaiverRow
  notes: NoteRow
  events: EventRow
  uploads: UploadRow
  files: FileRow
  jobs: JobRow
  endpoints: EndpointRow
  deliveries: DeliveryRow
  replays: ReplayRow
}

export type Database = Kysely<Tables>
export type InTransaction = Transaction<Tables>

export interface OrganisationRow {
  id: string
  name: string
  created_at: string
}

/** An API key: its secret is kept as a digest only. */
export interface KeyRow {
  id: string
  organisation: string
  label: string
  /** SHA-256 of the secret, hexadecimal. */
  digest: string
  /** JSON array. */
  scopes: string
  /** Requests a minute; null: the service's own limit. */
  rate: number | null
  created_at: string
  expires_at: string | null
  revoked_at: string | null
  last_used_at: string | null
}

/** Someone who signed in to the page with a key. */
export interface SessionRow {
  digest: string
  key: string
  created_at: string
  expires_at: string
}

export type SubmittalState = 'queued' | 'running' | 'done' | 'cancelled'

export interface SubmittalRow {
  id: string
  organisation: string
  name: string
  /** JSON arrays and objects. */
  standards: string
  options: string
  doors: string
  problems: string
  set_findings: string
  state: SubmittalState
  total: number
  /** Signs that wait for a report. */
  open: number
  /** The end of the history: how many events, and the hash of the last. */
  event_count: number
  event_head: string
  created_at: string
  updated_at: string
}

export type SignState = 'queued' | 'done' | 'cancelled'

export interface SignRow {
  id: string
  submittal: string
  position: number
  mark: string
  location: string | null
  door: string | null
  /** JSON array of names. */
  files: string
  /** Digest of the drawing among the files. */
  drawing: string | null
  /** JSON of the sign description, the options and the facts of its installation. */
  description: string | null
  options: string
  installation: string | null
  /** Raised whenever what is to be checked changes: a report belongs to one revision. */
  revision: number
  state: SignState
  report: string | null
  /** The revision that the report is of. */
  report_revision: number | null
  verdict: string | null
  /** JSON: counts by verdict; verdicts by stage; a problem document; what the set is compared by. */
  summary: string | null
  stages: string | null
  problem: string | null
  facts: string | null
  updated_at: string
}

/** One report, as it was made: never changed, never made twice for a revision. */
export interface ReportRow {
  sign: string
  revision: number
  id: string
  verdict: string
  /** JSON: id, revision and digest of each standard. */
  standards: string
  made_at: string
  /** The report as gzipped JSON, and the sign redrawn with its findings as gzipped SVG. */
  body: Uint8Array
  picture: Uint8Array
}

export interface MeasurementRow {
  id: string
  sign: string
  /** JSON of one entry of `measured`. */
  measured: string
  author: string
  at: string
}

export interface WaiverRow {
  id: string
  sign: string
  fingerprint: string
  reason: string
  author: string
  authority: string
  expires: string | null
  at: string
  withdrawn_at: string | null
}

export interface NoteRow {
  id: string
  sign: string
  text: string
  author: string
  at: string
}

export interface EventRow {
  submittal: string
  number: number
  at: string
  actor: string
  kind: string
  /** Canonical JSON. */
  data: string
  previous: string
  hash: string
}

/** A file as it was received. */
export interface UploadRow {
  id: string
  submittal: string
  name: string
  digest: string
  size: number
  at: string
}

/** Content by its digest. `content` is null where files lie on disk. */
export interface FileRow {
  digest: string
  size: number
  content: Uint8Array | null
  created_at: string
}

/** The queue of the embedded store. */
export interface JobRow {
  id: string
  queue: string
  data: string
  attempts: number
  run_at: string
  taken_until: string | null
}

/** An address that is told of what happens. */
export interface EndpointRow {
  id: string
  organisation: string
  url: string
  /** JSON array of the kinds of news that it asked for; null: all. */
  events: string | null
  /** JSON: secrets in the order in which they sign, each with the time at which it ends. */
  secrets: string
  created_at: string
  /** When it first refused what was sent, and has taken nothing since. */
  failing_since: string | null
  disabled_at: string | null
  disabled_why: string | null
}

export interface DeliveryRow {
  id: string
  endpoint: string
  kind: string
  body: string
  state: 'waiting' | 'delivered' | 'given-up'
  attempts: number
  last_status: number | null
  last_error: string | null
  created_at: string
  updated_at: string
}

/** The answer to a request with an idempotency key, to be given again. */
export interface ReplayRow {
  organisation: string
  key: string
  digest: string
  status: number | null
  headers: string | null
  body: string | null
  created_at: string
}
