import { isKnown, type Basis, type Fact, type Known, type Place, type Sign, type Unknown } from '../sign/sign.js'
import type { Found } from './quantity.js'
import type { Gap, Observation } from './measurement.js'

/** From the facts of a sign to observations and gaps. */

export type Ask = NonNullable<Gap['ask']>

export const nothing = (why: string): Found => ({ observations: [], gaps: [], nothing: why })

/** Joins what was found at several places; `nothing` stands only when nothing was found anywhere. */
export function join(found: Found[], why: string): Found {
  const [only] = found
  if (only && found.length === 1 && only.observations.length + only.gaps.length > 0) return only
  const observations = found.flatMap((f) => f.observations)
  const gaps = found.flatMap((f) => f.gaps)
  return observations.length + gaps.length > 0
    ? { observations, gaps }
    : nothing(found.find((f) => f.nothing !== undefined)?.nothing ?? why)
}

/** The observation of a fact that is known, at its own places when it names some. */
export function observe<T extends number | string | boolean>(fact: Known<T>, place: Place): Observation {
  const { value, min, max, count, uncertainty, basis, places, method, between } = fact
  const observation: Observation = { value, basis, places: places && places.length > 0 ? places : [place] }
  if (typeof min === 'number') observation.min = min
  if (typeof max === 'number') observation.max = max
  if (count !== undefined) observation.count = count
  if (uncertainty !== undefined) observation.uncertainty = uncertainty
  if (method !== undefined) observation.remark = method
  if (between) observation.between = between
  return observation
}

/** The gap of a fact that is not known. A question is asked only where an answer of the client would decide. */
export function gapOf(unknown: Unknown, place: Place, ask?: Ask): Gap {
  const { unknown: reason, why } = unknown
  return ask ? { reason, why, places: [place], ask } : { reason, why, places: [place] }
}

/** What one fact gives: its observation or its gap. */
export function take<T extends number | string | boolean>(fact: Fact<T>, place: Place, ask: Ask): Found {
  return isKnown(fact)
    ? { observations: [observe(fact, place)], gaps: [] }
    : { observations: [], gaps: [gapOf(fact, place, ask)] }
}

/** Drawn as soon as one of the values is, since the arithmetic of the drawing is in it then; else measured as soon as one is. */
export const basisOf = (...facts: { basis: Basis }[]): Basis =>
  facts.find((f) => f.basis === 'drawn')?.basis ?? facts.find((f) => f.basis === 'measured')?.basis ?? 'declared'

/**
 * One length as a share of another, with first-order propagation of both standard uncertainties (JCGM 100:2008, 5.1.2).
 * `context` names the length below the line in millimetres.
 */
export function ratio(above: Known<number>, below: Known<number>, name: string, place: Place): Observation {
  const share = above.value / below.value
  const uncertainty = Math.hypot(
    (above.uncertainty ?? 0) / below.value,
    (share * (below.uncertainty ?? 0)) / below.value,
  )
  const observation: Observation = {
    value: share,
    basis: basisOf(above, below),
    places: above.places && above.places.length > 0 ? above.places : [place],
    context: { [name]: below.value, length: above.value },
  }
  const [low, high] = readings(below)
  if (above.min !== undefined || high !== below.value) observation.min = (above.min ?? above.value) / high
  if (above.max !== undefined || low !== below.value) observation.max = (above.max ?? above.value) / low
  if (above.count !== undefined) observation.count = above.count
  if (above.between) observation.between = above.between
  if (uncertainty > 0) observation.uncertainty = uncertainty
  return observation
}

/** The least and the greatest reading of a gauge. What a drawing shows of one length belongs to its typeface, which has one. */
const readings = ({ basis, value, min, max }: Known<number>): [number, number] =>
  basis === 'measured' ? [min ?? value, max ?? value] : [value, value]

/** Where a client would add a fact about the n-th thing of a list; a drawn thing is added under the same number. */
export const pointerOf = (
  place: Place,
  list: 'lettering' | 'braille' | 'pictograms' | 'borders',
  n: number,
  key: string,
) => `${place.pointer ?? `/sign/${list}/${n}`}/${key}`

export const PANEL_POINTER = '/sign/panel'
export const INSTALLATION_POINTER = '/sign/installation'

export const installationPlace = (sign: Sign): Place => ({
  element: 'installation',
  ...(sign.panel.place.pointer !== undefined && { pointer: INSTALLATION_POINTER }),
})
