import type { Translator } from '../braille/translator.js'
import type { CheckInput } from '../check.js'
import { DEFAULT_STANDARDS, DEFAULT_USE } from '../check-options.js'
import { answerOrRefusal } from './answer.js'

/** A small sign that needs all that a check may need: outlined letters, live text and braille. The word is “hi”. */
const SIGN = `<svg xmlns="http://www.w3.org/2000/svg" width="80mm" height="60mm" viewBox="0 0 80 60">
<rect id="panel" width="80" height="60" fill="#fff"/>
<path id="raised" d="M20,30V11h2.4v8h9v-8h2.4v19h-2.4v-9h-9v9zM38,30V11h2.4v19z"/>
<text id="visual" x="20" y="56" font-family="DejaVu Sans" font-size="6">HI</text>
<g id="braille"><circle cx="20" cy="42" r=".78"/><circle cx="20" cy="44.4" r=".78"/><circle cx="22.4" cy="44.4" r=".78"/>
<circle cx="26.9" cy="44.4" r=".78"/><circle cx="29.3" cy="42" r=".78"/></g></svg>`

/**
 * Checks one sign, so that a thread has its tables, faces and references before it takes work: a client's time is not spent
 * on loading them.
 */
export function warmUp(translator: Translator) {
  const input: CheckInput = {
    drawing: new TextEncoder().encode(SIGN),
    standards: DEFAULT_STANDARDS,
    options: { use: DEFAULT_USE, decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
  }
  const answer = answerOrRefusal({ kind: 'check', type: 'application/json', input }, translator)
  if ('refused' in answer) throw new Error(`the first check was refused: ${answer.refused.detail}`)
}
