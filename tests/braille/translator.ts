import { createTranslator } from '../../src/braille/engine.js'
import type { Translator } from '../../src/braille/translator.js'

let made: Translator | undefined

/** One translator for a test file: loading the engine takes a few tenths of a second. */
export const translator = (): Translator => (made ??= createTranslator())
