import { measurer } from '../../src/measure/measurer.js'
import type { Measurement } from '../../src/measure/measurement.js'
import type { Scope } from '../../src/measure/quantity.js'
import type { Sign } from '../../src/sign/sign.js'
import { translator } from './signs.js'

export const RAISED: Scope = { parts: ['raised', 'both'] }

export const measured = (sign: Sign, quantity: string, scope: Scope = RAISED): Measurement =>
  measurer(sign, translator)(quantity, scope)

export const valuesOf = (sign: Sign, quantity: string, scope: Scope = RAISED) =>
  measured(sign, quantity, scope).observations.map(({ value }) => value)

export const reasonsOf = (sign: Sign, quantity: string, scope: Scope = RAISED) =>
  measured(sign, quantity, scope).gaps.map(({ reason }) => reason)
