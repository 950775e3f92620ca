import type { ComparedSign } from '../../../src/submittals/set-findings/compared-sign.js'
import type { ListedDoor } from '../../../src/submittals/upload.js'

/** Signs and doors of an invented weaving house, for the rules of sets. */

export const sign = (mark: string, said: Partial<ComparedSign> = {}): ComparedSign => ({
  mark,
  location: null,
  door: null,
  use: 'permanent-room',
  wording: null,
  families: [],
  styles: [],
  dotSpacings: [],
  cellSpacings: [],
  ...said,
})

export const door = (name: string, location: string | null = null): ListedDoor => ({
  door: name,
  location,
  file: 'doors.csv',
  row: 2,
})
