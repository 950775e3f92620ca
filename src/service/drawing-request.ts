import { z } from 'zod'
import { SignOrder } from '../make/draw/order.js'
import { DEFAULT_STANDARDS, Standards } from '../check-options.js'
import { invalid } from './read-request.js'

/** What POST /v1/drawings takes: a sign without its geometry, and the standards that its drawing is to satisfy. */

const EXAMPLE = { standards: DEFAULT_STANDARDS, sign: { use: 'permanent-room', lettering: [{ text: 'Seed Library' }] } }

export const DrawingRequest = z
  .strictObject({
    standards: Standards.optional(),
    sign: SignOrder,
    leaveToPerson: z
      .boolean()
      .optional()
      .describe(
        'Also take a drawing of which a person must still judge something, such as a code of braille that is not read here. Nothing of it fails.',
      ),
  })
  .meta({
    id: 'DrawingRequest',
    description: 'A sign to be drawn, and all the standards that the drawing is to satisfy.',
    examples: [EXAMPLE],
  })

export interface DrawingTaskInput {
  standards: string[]
  order: SignOrder
  leaveToPerson: boolean
}

/** @throws {Refusal} `invalid-description` with every error and where it is. */
export function orderFromJson(body: unknown): DrawingTaskInput {
  const parsed = DrawingRequest.safeParse(body)
  if (!parsed.success) throw invalid(parsed.error, DrawingRequest, '')
  const { standards = DEFAULT_STANDARDS, sign, leaveToPerson = false } = parsed.data
  return { standards, order: sign, leaveToPerson }
}
