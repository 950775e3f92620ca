import type { Box } from '../geometry/box.js'
import type { Place } from '../sign/sign.js'
import { kept } from './numbers.js'
import type { ReportBox, ReportPlace, ReportSource } from './place-schema.js'

/** The report's form of a box; null when it is unknown or not finite. */
export function reportBox(box: Box | undefined): ReportBox | null {
  if (!box) return null
  const [x, y, width, height] = [kept(box.x), kept(box.y), kept(box.width), kept(box.height)]
  return x === null || y === null || width === null || height === null ? null : { x, y, width, height }
}

export const reportSource = (source: { id?: string; line: number; column: number }): ReportSource => ({
  id: source.id ?? null,
  line: source.line,
  column: source.column,
})

export const reportPlace = (place: Place): ReportPlace => ({
  element: place.element,
  box: reportBox(place.box),
  source: place.source ? reportSource(place.source) : null,
  pointer: place.pointer ?? null,
})

/** Places without repetition, in the order given. */
export function distinctPlaces(places: readonly Place[]): readonly Place[] {
  if (places.length < 2) return places
  const seen = new Map<string, Place>()
  for (const place of places) {
    const { box, source } = place
    const key = [
      place.element,
      place.pointer,
      box?.x,
      box?.y,
      box?.width,
      box?.height,
      source?.line,
      source?.column,
    ].join('|')
    if (!seen.has(key)) seen.set(key, place)
  }
  return [...seen.values()]
}
