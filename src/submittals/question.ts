import type { CheckInput, CheckOptions } from '../check.js'
import type { InstallationDescription } from '../sign/installation-description.js'
import type { MeasuredDescription } from '../sign/measured-description.js'
import type { SignDescription } from '../sign/description.js'
import type { Use } from '../sign/vocabulary.js'

/** What is asked of one kept sign: what was uploaded, with all that was added to it since. */

export interface KeptSign {
  mark: string
  drawing?: Uint8Array
  description: SignDescription | null
  options: Partial<CheckOptions>
  installation: InstallationDescription | null
  /** In the order in which they were added. */
  measured: MeasuredDescription[]
}

export const ASSUMED_USE: Use = 'permanent-room'

/**
 * The question for `check`. Readings that were added later take the place of earlier ones of the same quantity; facts of the
 * installation that were added take the place of the whole of what was described.
 */
export function questionOf(sign: KeptSign, standards: string[], submittal: Partial<CheckOptions>): CheckInput {
  const { useAssumed, ...options } = { ...submittal, ...sign.options }
  // A row of a schedule that says no use has one that was only assumed for it; what is said of the whole set comes before that.
  const described = sign.description
  const said = useAssumed === true ? undefined : described?.use
  const use = said ?? options.use
  const taken = use ?? described?.use ?? ASSUMED_USE
  const measured = [...new Map([...(described?.measured ?? []), ...sign.measured].map((m) => [m.quantity, m])).values()]
  const installation = sign.installation ?? described?.installation
  const properNames = described?.properNames ?? options.properNames
  return {
    ...(sign.drawing && { drawing: sign.drawing }),
    sign: {
      // Without a description there is no bare length that could be mistaken.
      ...(described ?? { units: 'mm' }),
      mark: sign.mark,
      use: taken,
      ...(installation && { installation }),
      ...(measured.length > 0 && { measured }),
    },
    standards,
    options: {
      ...options,
      use: taken,
      ...(use === undefined && { useAssumed: true }),
      ...(properNames && { properNames }),
      decisionRule: options.decisionRule ?? 'simple',
      unitSystem: options.unitSystem ?? 'printed',
      language: options.language ?? 'en',
    },
  }
}
