import type { Translator } from '../../braille/translator.js'
import type { Trier } from './trial.js'

/** What the steps of a correction work with, and the reasons that they gave. */
export interface Bench extends Trier {
  translator: Translator
  /** Why a requirement was not put right, by its name; the last reason counts. */
  reasons: Map<string, string>
}
