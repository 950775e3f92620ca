import type { CheckInput } from '../check.js'
import type { PlanSettings } from '../make/dot-plan/schema.js'
import type { MadeReport } from '../submittals/outcome.js'
import type { UploadedFile } from '../submittals/upload.js'
import type { Exclusion, Fault, RefusalType } from '../refusal.js'
import type { PlanTaskInput } from './dot-plan-request.js'
import type { DrawingTaskInput } from './drawing-request.js'
import type { ReadUpload } from './submittals/upload-answer.js'
import type { Judged } from './watching/meters.js'
import type { StageTime } from './watching/stage-clock.js'

/** What is asked of the core, and what it answers, as plain data that crosses threads. */

/** The forms that a report can be had in; the first is the default. */
export const REPORT_TYPES = [
  'application/json',
  'text/html',
  'image/svg+xml',
  'text/csv',
  'application/sarif+json',
  'application/pdf',
] as const
export type ReportType = (typeof REPORT_TYPES)[number]

/** The forms that a plan of dots can be had in; the first is the default. */
export const PLAN_TYPES = ['application/json', 'text/csv', 'image/svg+xml', 'text/x-gcode'] as const
export type PlanType = (typeof PLAN_TYPES)[number]

/** The same of a drawing that is made. */
export const DRAWING_TYPES = ['application/json', 'image/svg+xml'] as const
export type DrawingType = (typeof DRAWING_TYPES)[number]

export type Task = AnsweredTask | UploadTask

/** What is answered in one step; an upload is read file by file. */
export type AnsweredTask = (Question & { input: CheckInput }) | PlanTask | DrawingTask | KeptTask

export interface CheckQuestion {
  kind: 'check'
  type: ReportType
}
export type CheckTask = CheckQuestion & { input: CheckInput }

export type Question = CheckQuestion | { kind: 'reading' } | { kind: 'correction' }

export interface PlanTask {
  kind: 'dot-plan'
  type: PlanType
  input: PlanTaskInput
}

/** The check of a sign that is kept: the report and the picture are written for the store. */
export interface KeptTask {
  kind: 'kept'
  input: CheckInput
}

/** What was uploaded to a submittal: files, or one body of JSON. */
export interface UploadTask {
  kind: 'upload'
  files: UploadedFile[]
  json?: Uint8Array
}

export interface DrawingTask {
  kind: 'drawing'
  type: DrawingType
  input: DrawingTaskInput
}

/** A question whose JSON body has not been read yet, as it takes long to. */
export type UnreadTask = (Question | UnreadPlan) & { json: Uint8Array }

export interface UnreadPlan {
  kind: 'dot-plan'
  type: PlanType
  /** What the query says of the program. */
  form: PlanSettings
}

/** One answer, already written out, so that it is sent as it is. */
export interface Answer {
  body: string | Uint8Array
  /** Names the content of a report: the same question in the same form has the same tag. */
  tag?: string
  /** What the stages of a check or a reading took. */
  stages?: StageTime[]
  /** What a report comes to. */
  judged?: Judged
  /** Of a kept sign; the body is empty then. */
  made?: MadeReport
  /** Of an upload; the body is empty then. */
  upload?: ReadUpload
}

/** A `Refusal` of the core, or what is wrong with the JSON. */
export interface RefusedAnswer {
  refused: {
    type: RefusalType | 'malformed-json'
    detail: string
    errors: Fault[]
    excess?: { limit: number; actual: number }
    conflicts?: Exclusion[]
  }
}
