import type { Gap, Observation } from './measurement.js'
import type { Found } from './quantity.js'

/**
 * What was found, without figures that are none: a share of a length of zero, or of one that is next to nothing beside the other, is no
 * number and meets or misses no limit. It stays open instead.
 */
export function onlyNumbers(found: Found): Found {
  if (found.observations.every(isNumber)) return found
  const none = found.observations.filter((observation) => !isNumber(observation))
  const gaps = none.map(({ places }): Gap => ({ reason: 'missing-fact', why: NO_NUMBER, places }))
  return { ...found, observations: found.observations.filter(isNumber), gaps: [...found.gaps, ...gaps] }
}

const NO_NUMBER = 'a size that it is reckoned by is zero, or next to nothing, so that no figure comes of it'

/** What is no number at all, a kind or a yes, is none that could have gone astray. */
function isNumber({ value, min, max, uncertainty }: Observation): boolean {
  return [value, min, max, uncertainty].every((part) => typeof part !== 'number' || Number.isFinite(part))
}
