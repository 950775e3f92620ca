import type { LoadedStandard } from '../standards/catalogue.js'

/** Words and marks that the generated pages on standards share. */

export const KIND_WORDS: Record<LoadedStandard['kind'], string> = {
  code: 'A code: law where it is adopted.',
  standard: 'A standard: binding where a law or a contract names it.',
  guidance: 'Guidance: no law by itself.',
  'reference-geometry': 'Sizes with a name, for reference: no code asks them of a sign, and every row is advice.',
}

export const anchor = (requirement: string): string => requirement.replaceAll('/', '-')
/** Text that keeps to its cell of a table. */
export const cell = (text: string): string => text.replaceAll('|', '\\|')
