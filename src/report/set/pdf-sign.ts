import { numbered } from '../numbering.js'
import { passedInShort, undecidedInShort, wrongSection } from '../pdf-findings.js'
import { outdatedWords } from '../overlay.js'
import { overlaySection } from '../pdf-overlay.js'
import type { Paper } from '../pdf-paper.js'
import { assumedInShort, figure, readingInShort } from '../pdf-sign.js'
import { STAGE_WORDS, VERDICT_SYMBOLS, VERDICT_WORDS, verdictSentence } from '../words.js'
import { STAGES } from '../finding-schema.js'
import type { SetSign } from './evidence.js'
import { whyNoReport } from './outcome.js'
import { ownCaveats } from './shared-caveats.js'
import { placeOf } from './words.js'

/** One sign of a set on paper: in full what is wrong or open, in short what passed. Its measuring is on the inspection sheet. */

/** @param shared the caveats that are said once for the whole set */
export function signPart(paper: Paper, sign: SetSign, shared: readonly string[]): void {
  const { report, drawing } = sign
  facts(paper, sign)
  if (!report) {
    overlaySection(paper, { findings: [] }, sign)
    return
  }
  const { failing, undecided } = numbered(report)
  if (drawing !== null) figure(paper, drawing, 'in-set')
  wrongSection(paper, report, failing, sign)
  undecidedInShort(paper, report, undecided, sign)
  overlaySection(paper, report, sign)
  passedInShort(paper, report)
  assumedInShort(paper, report, ownCaveats(sign, shared))
}

function facts(paper: Paper, sign: SetSign): void {
  const { report, files } = sign
  const place = placeOf(sign)
  const outdated = outdatedWords(sign)
  if (outdated !== undefined) paper.paragraph(outdated, 'Out of date. ')
  if (!report) paper.paragraph(whyNoReport(sign), 'No report. ')
  else {
    const { verdict, stages, use, id } = report
    paper.paragraph(verdictSentence(report), `${VERDICT_SYMBOLS[verdict]} ${VERDICT_WORDS[verdict]}. `)
    const words = STAGES.map(
      (stage) => `${STAGE_WORDS[stage].toLowerCase()}: ${VERDICT_WORDS[stages[stage]].toLowerCase()}`,
    )
    paper.paragraph(`${words.join('; ')}.`, 'By stage: ')
    readingInShort(paper, report)
    paper.paragraph(`${use}; report ${id}.`, 'Use: ')
  }
  const from = files.length === 0 ? '' : `from ${files.join('; ')}`
  const told = [place, from].filter((part) => part !== '')
  if (told.length > 0) paper.paragraph(told.join('; '), 'Place and files: ')
}
