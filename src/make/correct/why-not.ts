import type { Finding } from '../../report/finding-schema.js'
import type { Report } from '../../report/schema.js'
import type { NotCorrected } from './schema.js'

/** Why what still fails was not put right. */

const DESIGN: Record<string, string> = {
  'raised.characterHeight':
    'Characters of another height are wider too: whether they still fit, and what gives way, is a decision of the design.',
  'raised.case': 'It changes the print, and with it the size of the text.',
  'raised.style': 'It needs another typeface.',
  'raised.proportion': 'It needs another typeface.',
  'raised.strokeThickness': 'It needs another typeface or weight.',
  'raised.strokeWidth': 'It needs another typeface or weight.',
  'pictogram.fieldHeight': 'The field of the pictogram has to grow, and the rest of the sign with it.',
  'pictogram.fieldClear': 'What stands in the field has to go elsewhere.',
  'braille.repeatsRaisedText': 'There is no braille yet: where it goes is a decision of the design.',
}

const AT_SITE = 'No change of the drawing decides it: it is told on the finished sign or where it hangs.'
const ADVICE = 'It is advice and not a requirement; nothing was changed for it.'
const OTHERWISE = 'It needs a decision about the design of the sign.'

export function whyNot({ findings }: Report, reasons: ReadonlyMap<string, string>): NotCorrected[] {
  const why = ({ requirement, force, stage, quantity }: Finding): string => {
    if (stage !== 'drawing') return AT_SITE
    if (force !== 'shall') return ADVICE
    return reasons.get(requirement) ?? DESIGN[quantity] ?? OTHERWISE
  }
  return findings
    .filter(({ verdict }) => verdict === 'fail')
    .map((finding) => ({ requirement: finding.requirement, why: why(finding) }))
}
