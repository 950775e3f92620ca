import { LIMITS as DRAWING } from '../../drawing/limits.js'

/**
 * What one upload may hold at most. The bytes of files lie outside the heap of a thread, so that its memory limit does not bound
 * them and these do; what JSON becomes lies inside it.
 */
export const UPLOAD_LIMITS = {
  /** Files, those in zips counted one by one: a drawing and a description for each sign, and schedules. */
  files: 40_000,
  /** Entries of all zips, folders and what systems leave in them included. */
  entries: 60_000,
  /** Bytes that all zips together say they unpack to. */
  unpacked: 256_000_000,
  /** Bytes of one drawing. */
  drawing: DRAWING.bytes,
  /** Bytes of one schedule as it is sent. */
  schedule: 10_000_000,
  /** Bytes of one JSON file. */
  json: 6_000_000,
  /** Bytes of all JSON files together. */
  allJson: 48_000_000,
  /** How many times its own size a zip may unpack to. Drawings unpack to three to six times (measured on those in tests/drawings). */
  ratio: 200,
  /** Signs of one upload, and of one JSON file. */
  signs: 20_000,
} as const

/** A zip that unpacks to fewer bytes is not held against the ratio: little can be packed very tightly. */
export const RATIO_HOLDS_FROM = 10_000_000

/** Largest file of any kind, to be known before the kind is. */
export const LARGEST_FILE = Math.max(UPLOAD_LIMITS.drawing, UPLOAD_LIMITS.schedule, UPLOAD_LIMITS.json)
