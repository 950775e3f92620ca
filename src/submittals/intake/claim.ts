import { drawingOfText } from '../../drawing/drawing-of-text.js'
import type { ScheduleRow, UploadedSign } from '../upload.js'
import { shownName, stemOf } from './names.js'
import type { SubmittalSign } from './submittal-json.js'

/** One sign as a row of a schedule or an entry of JSON tells it, before it has found its drawing. */
export interface Claim {
  /** Shown name of the file that says it. */
  file: string
  /** Of a schedule. */
  row: number | null
  /** What it is called when nothing names it. */
  nameless: string
  /** Name of its file without extension, where the file speaks of this sign only. */
  ownFile: string | null
  mark: string | null
  location: string | null
  door: string | null
  /** Name of the drawing that it asks for. */
  wants: string | null
  /** The drawing itself, where the entry holds it as text. */
  drawing?: Uint8Array
  sign?: UploadedSign['sign']
  options?: UploadedSign['options']
  /** Further files that speak of the same sign. */
  also: string[]
}

export const claimOfRow = (file: string, row: ScheduleRow): Claim => ({
  file,
  row: row.row,
  nameless: `${stemOf(file)} row ${row.row}`,
  ownFile: null,
  mark: row.mark,
  location: row.location,
  door: row.door,
  wants: row.drawing,
  sign: row.sign,
  ...(row.useAssumed && { options: { useAssumed: true } }),
  also: [],
})

/** @param place which of the file's entries it is, counted from 1; null when it is the only one */
export function claimOfEntry(file: string, place: number | null, entry: SubmittalSign): Claim {
  const inline = entry.drawing !== undefined && entry.drawing.trimStart().startsWith('<')
  return {
    file,
    row: null,
    nameless: place === null ? stemOf(file) : `${stemOf(file)} sign ${place}`,
    ownFile: place === null ? stemOf(file) : null,
    mark: entry.mark ?? entry.sign?.mark ?? null,
    location: entry.location ?? null,
    door: entry.door ?? null,
    wants: inline ? null : (entry.drawing ?? null),
    ...(inline && { drawing: drawingOfText(entry.drawing ?? '') }),
    ...(entry.sign && { sign: entry.sign }),
    ...(entry.options && { options: entry.options }),
    also: [],
  }
}

/** The sign that it is, once its drawing is known. */
export function signOf(claim: Claim, found?: { name: string; bytes: Uint8Array }): UploadedSign {
  const named = found?.name ?? claim.wants
  const drawing = claim.drawing ?? found?.bytes
  return {
    mark: claim.mark ?? (named ? stemOf(shownName(named)) : claim.nameless),
    location: claim.location,
    door: claim.door,
    files: [...new Set([claim.file, ...claim.also, ...(found ? [found.name] : [])])],
    ...(drawing && { drawing }),
    ...(claim.sign && { sign: claim.sign }),
    ...(claim.options && { options: claim.options }),
  }
}
