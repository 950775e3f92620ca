import { availableParallelism } from 'node:os'
import type { EvidenceSettings } from './submittals/evidence-pool.js'
import type { Retention } from '../submittals/retention.js'
import type { Place } from '../submittals/store/connect.js'

/** Everything that a running service may be told. Read from the environment in main.ts only; tests build their own. */
export interface Settings {
  logLevel: string
  /** Compiled worker module; drawings are checked in threads that run it. */
  worker: URL
  /** All of them are there as soon as one is needed. */
  threads: number
  /** Milliseconds without a task after which the threads are let go until the next one; absent: they start with the service and stay. */
  restAfter: number | undefined
  /** Milliseconds that one check may take once it has begun. */
  timeLimit: number
  /** The same for a check whose report is set in pages. */
  pageTimeLimit: number
  /** The same for a plan of dots. */
  planTimeLimit: number
  /** The same for the reading of what is uploaded to a submittal. */
  uploadTimeLimit: number
  /** Megabytes of heap that one thread may use. */
  heapLimit: number
  /** Checks that may wait for a thread. */
  queueLimit: number
  /** Milliseconds that a task may be expected to wait for a thread; whatever would wait longer is refused. */
  longestWait: number
  /** The same for a task that is done at once, between other requests. */
  longestShortWait: number
  /** Milliseconds that a turn of the event loop may take on average before new work is refused. */
  loopDelayLimit: number
  /** The thread that writes evidence. */
  evidence: EvidenceSettings
  /** Where submittals are kept; without one they are gone with the process. */
  place?: Place
  /** How long what is kept is kept; absent: until it is deleted. */
  retention?: Retention
  /** `api`: answers only; `worker`: checks what is queued only. */
  role: 'all' | 'api' | 'worker'
  /** `keys`: every call needs an API key; `off`: everyone who can reach the service may call it. */
  auth: 'off' | 'keys'
  /** Names by which the service may be asked, as `hostName` gives them; absent: by any. */
  hosts?: readonly string[]
  /** Requests a minute of one key that has no limit of its own, and of one address without a key; none: any number. */
  rateLimit?: number
  /** Whether notifications may go to addresses that are not public, and over http: for trying things out. */
  webhooksPrivate: boolean
  /** Whether /metrics is there. */
  metrics: boolean
  /** Whether traces are sent; where to, the libraries read from the standard variables of OpenTelemetry. */
  traces: boolean
  /** Signs of one organisation that may wait for their reports; none: any number. */
  openSigns?: number
}

/** With a thread to spare, the next drawing need not wait for a new thread when one was stopped. */
const FEWEST_THREADS = 2

export const DEFAULT_SETTINGS: Settings = {
  logLevel: 'info',
  worker: new URL('./worker.js', import.meta.url),
  threads: Math.max(FEWEST_THREADS, availableParallelism()),
  restAfter: undefined,
  timeLimit: 1800,
  pageTimeLimit: 10_000,
  planTimeLimit: 60_000,
  uploadTimeLimit: 60_000,
  heapLimit: 256,
  queueLimit: 16 * availableParallelism(),
  longestWait: 5000,
  longestShortWait: 2000,
  loopDelayLimit: 1000,
  evidence: {
    worker: new URL('./submittals/evidence-worker.js', import.meta.url),
    timeLimit: 180_000,
    heapLimit: 2048,
    queueLimit: 8,
  },
  role: 'all',
  auth: 'off',
  webhooksPrivate: false,
  metrics: true,
  traces: false,
}

/** Largest bodies that are read, in bytes. */
export const LIMITS = {
  /** An SVG file. */
  drawing: 5 * 1024 * 1024,
  /** A JSON body, which may hold a drawing as text. */
  json: 6 * 1024 * 1024,
  /** The JSON body of a translation: read between other requests, so much shorter. */
  translation: 192 * 1024,
  /** The description, the standards or the options as a part of a form. */
  formField: 512 * 1024,
  formParts: 8,
  /** Everything that is sent to a submittal at once. */
  upload: 100 * 1024 * 1024,
  uploadFiles: 2000,
  /** Signs of one piece of evidence. */
  evidenceSigns: 2000,
  /** Event streams that one process keeps open. */
  streams: 500,
  /** The same for one organisation. */
  streamsOfOne: 100,
  /** A larger JSON body is checked in a worker, so that it never holds up the others. */
  inlineJson: 4 * 1024,
}
