import type { Report } from '../schema.js'

/**
 * A submittal as its evidence shows it: plain data, all of it put together before a form is written, so that every form of the
 * evidence says the same. Times are ISO 8601 in UTC.
 */
export interface SetEvidence {
  id: string
  name: string
  /** As asked for: ids, some pinned to a revision. */
  standards: string[]
  state: 'queued' | 'running' | 'done' | 'cancelled'
  createdAt: string
  /** When the evidence was put together. It is the time of the last event, so that the same state gives the same bytes. */
  asOf: string
  signs: SetSign[]
  /** Where it is of some signs only: how many come before them, and how many the submittal has. Absent: it is of all. */
  part?: { from: number; total: number }
  /** What is wrong with the set as a whole. */
  setFindings: SetFinding[]
  /** What of the upload could not be used. */
  intakeProblems: IntakeProblem[]
  /** Null for a set that is not kept and so has none: it was checked and nothing more. */
  history: { events: number; head: string } | null
}

export interface SetSign {
  id: string
  /** What tells it from the others in the schedule. */
  mark: string
  /** Room number or place, as the schedule says it. */
  location: string | null
  /** The door that it stands beside. */
  door: string | null
  /** Names of the files that it came from. */
  files: string[]
  report: Report | null
  /** The sign redrawn with its findings marked (`reportSvg`); null without a report. */
  drawing: string | null
  /** The report is of before the last readings or facts that were added: why there is none with them. Absent: it has all. */
  outdated?: 'queued' | 'cancelled'
  /** Why there is no report, as a problem document says it. */
  problem: { title: string; detail: string } | null
  waivers: SetWaiver[]
  notes: { text: string; author: string; at: string }[]
  /** Sets of readings that were added after the upload. */
  measurements: {
    quantity: string
    values: number[]
    unit: string
    /** With coverage factor 2, in the unit of the values; null where none was given. */
    expandedUncertainty: number | null
    instrument: string | null
    author: string
    at: string
  }[]
}

/** A failing or undecided finding that an authority lets stand. The finding stays what it is. */
export interface SetWaiver {
  fingerprint: string
  reason: string
  author: string
  /** When it was entered. */
  at: string
  /** The authority's own number or letter. */
  authority: string
  /** The day after which it no longer holds; null: until withdrawn. */
  expires: string | null
  /** `unused`: no finding of the latest report that fails or is undecided has its fingerprint. */
  standing: 'in-force' | 'expired' | 'unused'
}

export interface SetFinding {
  kind: 'same-mark' | 'wording-differs' | 'typefaces-differ' | 'braille-spacing-differs' | 'door-without-sign'
  /** Marks of the signs that it is about; empty where none is. */
  marks: string[]
  /** One or two sentences for people. */
  message: string
}

/** A file, or a row of a schedule, that could not be used; the others were. */
export interface IntakeProblem {
  file: string
  /** Of a schedule: the row as a spreadsheet numbers it, the heading being row 1. */
  row: number | null
  column: string | null
  detail: string
}
