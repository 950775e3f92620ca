import type { IntakeProblem } from '../report/set/evidence.js'
import type { CheckOptions } from '../check.js'
import type { SignDescription } from '../sign/description.js'

/** What an upload turns into: signs to check, doors that must have one, and what could not be used. Plain data that crosses threads. */

export interface UploadedFile {
  name: string
  bytes: Uint8Array
}

export interface UploadedSign {
  mark: string
  location: string | null
  door: string | null
  /** Names of the files that it came from, a file inside a zip as `set.zip/H-204.svg`. */
  files: string[]
  drawing?: Uint8Array
  sign?: SignDescription
  options?: Partial<CheckOptions>
}

/** A door that a schedule lists, whether or not it says which sign belongs to it. */
export interface ListedDoor {
  door: string
  location: string | null
  file: string
  row: number
}

export interface Upload {
  signs: UploadedSign[]
  doors: ListedDoor[]
  problems: IntakeProblem[]
}

/** One sign schedule, read. A row that cannot be used is a problem; the others are rows. */
export interface Schedule {
  rows: ScheduleRow[]
  doors: ListedDoor[]
  problems: IntakeProblem[]
}

export interface ScheduleRow {
  row: number
  mark: string | null
  location: string | null
  door: string | null
  /** Name of the drawing's file, where the schedule has such a column. */
  drawing: string | null
  sign: SignDescription
  /** Nobody said what the sign is for: `sign.use` is a guess, which the check must name (`CheckOptions.useAssumed`). */
  useAssumed?: true
}
