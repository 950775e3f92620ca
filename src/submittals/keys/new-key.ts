import { z } from 'zod'
import { LONGEST_NAME, text } from '../../sign/text.js'
import { SERVICE } from '../outcome.js'
import { SCOPE_MEANINGS, SCOPES } from './scopes.js'

/** What is said of a key when it is made. */

const HIGHEST_RATE = 1_000_000

// The history shows labels, and under this name the service itself.
export const Label = text(LONGEST_NAME).refine(
  (label) => label.trim().toLowerCase() !== SERVICE,
  'is the name of the service itself',
)
export const OrganisationName = text(LONGEST_NAME)
export const Scopes = z
  .array(z.enum(SCOPES))
  .min(1, 'is empty: give at least one scope')
  .describe(SCOPES.map((scope) => `\`${scope}\`: ${SCOPE_MEANINGS[scope]}`).join('; '))
export const Expires = z.iso.date().describe('The last day, in UTC, on which the key works.')
/** Requests a minute. */
export const Rate = z.int().positive().max(HIGHEST_RATE)
