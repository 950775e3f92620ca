import { isKnown, type Basis, type Fact, type Known, type Place, type Sign, type Unknown } from '../sign/sign.js'
import type { Found } from './quantity.js'
import type { Gap, Observation } from './measurement.js'

/** From the facts of a sign to observations and gaps. */

export type Ask = NonNullable<Gap['ask']>

export const nothing = (why: string): Found => ({ observations: [], gaps: [], nothing: why })

/** Joins what was found at several places; `nothing` stands only when nothing was found anywhere. */
export function join(found: Found[], why: string): Found {
  const observations = found.flatMap((f) => f.observations)
  const gaps = found.flatMap((f) => f.gaps)
  return observations.length + gaps.length > 0
    ? { observations, gaps }
    : nothing(found.find((f) => f.nothing !== undefined)?.nothing ?? why)
}

/** The observation of a fact that is known, at its own places when it names some. */
export function observe<T extends number | string | boolean>(fact: Known<T>, place: Place): Observation {
  return {
    value: fact.value,
    ...(typeof fact.min === 'number' && { min: fact.min }),
    ...(typeof fact.max === 'number' && { max: fact.max }),
    ...(fact.count !== undefined && { count: fact.count }),
    ...(fact.uncertainty !== undefined && { uncertainty: fact.uncertainty }),
    basis: fact.basis,
    places: fact.places && fact.places.length > 0 ? fact.places : [place],
    ...(fact.method !== undefined && { remark: fact.method }),
  }
}

/** The gap of a fact that is not known. A question is asked only where an answer of the client would decide. */
export function gapOf(unknown: Unknown, place: Place, ask?: Ask): Gap {
  return { reason: unknown.unknown, why: unknown.why, places: [place], ...(ask && { ask }) }
}

/** What one fact gives: its observation or its gap. */
export function take<T extends number | string | boolean>(fact: Fact<T>, place: Place, ask: Ask): Found {
  return isKnown(fact)
    ? { observations: [observe(fact, place)], gaps: [] }
    : { observations: [], gaps: [gapOf(fact, place, ask)] }
}

/** Drawn as soon as one of the values is: then the arithmetic of the drawing is in it. */
export const basisOf = (...facts: { basis: Basis }[]): Basis =>
  facts.some((f) => f.basis === 'drawn') ? 'drawn' : 'declared'

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
  return {
    value: share,
    ...(above.min !== undefined && { min: above.min / below.value }),
    ...(above.max !== undefined && { max: above.max / below.value }),
    ...(above.count !== undefined && { count: above.count }),
    ...(uncertainty > 0 && { uncertainty }),
    basis: basisOf(above, below),
    places: above.places && above.places.length > 0 ? above.places : [place],
    context: { [name]: below.value, length: above.value },
  }
}

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
