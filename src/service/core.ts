import { createTranslator } from '../braille/engine.js'
import { settingFor, translateText } from '../braille/translate.js'
import type { Translation, TranslationRequest } from '../braille/translation-schema.js'
import type { Translator } from '../braille/translator.js'
import { DEFAULT_STANDARDS } from '../check-options.js'
import { findStandards } from '../standards/catalogue.js'
import { answer } from './answer.js'
import type { Answer, AnsweredTask } from './task.js'

/** What is worked out at once, between requests, instead of in a thread. */
export interface Core {
  answer: (task: AnsweredTask) => Answer
  translate: (request: TranslationRequest) => Translation
}

/** @throws {Error} when the braille engine does not pass its self-test: then nothing is answered */
export const createCore = (translator: Translator = createTranslator()): Core => ({
  answer: (task) => answer(task, translator),
  translate: (request) => {
    const asked = findStandards(request.standards ?? DEFAULT_STANDARDS)
    const [standard] = findStandards(DEFAULT_STANDARDS)
    if (!standard) throw new Error('The default standard is not in the catalogue.')
    return translateText(request, translator, settingFor(asked, standard))
  },
})
