// The sections of the bench, in the order of the page. Each measures and gives a title, what is said of it, and its rows.
import { brailleSection } from './braille.mjs'
import { drawingSection } from './drawing.mjs'
import { evidenceSection } from './evidence.mjs'
import { growthSection } from './growth.mjs'
import { jsonSection } from './json.mjs'
import { makingSection } from './making.mjs'
import { planSection } from './plans.mjs'
import { startSection } from './start.mjs'
import { storeSection } from './store.mjs'

export const SECTIONS = {
  drawing: drawingSection,
  growth: growthSection,
  json: jsonSection,
  braille: brailleSection,
  store: storeSection,
  evidence: evidenceSection,
  making: makingSection,
  plans: planSection,
  start: startSection,
}

/** What is quick enough, and matters enough, to be held against a stored ratio with each change. */
export const GUARDED = ['drawing', 'growth', 'json', 'store', 'start']
