import type { Finding } from '../../report/finding-schema.js'
import { brailleRewrite } from './braille.js'
import type { Bench } from './bench.js'
import { NotCorrectable } from './outcome.js'
import type { Sheet } from './sheet.js'
import { reads, tried, type Trial } from './trial.js'

/** One try at setting the braille anew. */

export const ELSEWHERE = 'Changing the text of the drawing here would change other things that it shows.'
const MISREAD = 'The braille as it was set anew was not read as it should be, so it was left as it is.'

/** The braille with some rows put right; undefined, with the reason noted, where that cannot be done or breaks something. */
export function attempt(sheet: Sheet, failed: readonly Finding[], bench: Bench): Trial | undefined {
  const note = (why: string): undefined => {
    for (const { requirement } of failed) bench.reasons.set(requirement, why)
  }
  for (const named of [true, false]) {
    const rewrite = brailleRewrite(sheet, failed, bench.translator, named)
    if (rewrite instanceof NotCorrectable) return note(rewrite.why)
    const trial = tried(sheet, rewrite, bench)
    if (!trial) note(ELSEWHERE)
    else if (!reads(trial.sheet.sign, rewrite.cells)) note(MISREAD)
    else if (trial.broken.length > 0) note(breaking(trial.broken))
    else if (trial.mended.length > 0) return trial
    else note(NOTHING_WON)
  }
  return undefined
}

const NOTHING_WON = 'It was tried, and the drawing failed in the same way.'

export const breaking = (broken: readonly string[]): string =>
  `Putting it right would break ${broken.slice(0, MOST_NAMED).join(', ')}, so it was undone.`

const MOST_NAMED = 3
