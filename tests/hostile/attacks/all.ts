import { encodings, otherFiles } from './encodings.js'
import { heaps } from './heaps.js'
import type { Attack } from './make.js'
import { references } from './references.js'
import { sizes } from './sizes.js'
import { texts } from './texts.js'
import { numbers, styles } from './values.js'
import { entities } from './xml.js'

export const ATTACKS: Record<string, Attack> = {
  ...entities,
  ...references,
  ...sizes,
  ...heaps,
  ...texts,
  ...numbers,
  ...styles,
  ...encodings,
  ...otherFiles,
}
