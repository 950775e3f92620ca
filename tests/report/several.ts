import type { Judgement } from '../../src/judge/finding.js'
import { makeReport } from '../../src/report/make.js'
import type { Report } from '../../src/report/schema.js'
import type { LoadedStandard } from '../../src/standards/catalogue.js'
import {
  CELL_SPACING,
  judgement,
  requirement,
  sampleInput,
  sampleJudgements,
  sampleSign,
  standard,
  translator,
} from './sample.js'

/** The sample sign held against the sample standard and an invented one, which is guidance that was replaced. */

export const MOON: LoadedStandard = {
  ...standard,
  id: 'moon-1',
  title: 'Signs on the Moon',
  kind: 'guidance',
  supersededBy: 'moon-2',
  gaps: [{ clause: '9', about: 'craters', kind: 'not-read', why: 'Not read.' }],
  requirements: [requirement('moon-1/1/cell-spacing')],
  digest: 'sha256-22',
}

/** Cell spacing of the invented standard, at most 7 mm and read second-hand, on the sample sign. */
export const moonSpacing = (changes: Partial<Judgement> = {}, value = 5.8): Judgement => ({
  ...judgement({}, value),
  requirement: requirement('moon-1/1/cell-spacing', { citation: { source: 'ADA', confidence: 'secondary' } }),
  limit: { ...CELL_SPACING, min: 6.3, max: 7, other: undefined, printed: '6.3 mm to 7 mm', clause: '1' },
  ...changes,
})

export const severalReport = (moon: Judgement[] = [moonSpacing()]): Report =>
  makeReport({
    input: { ...sampleInput, standards: ['us-ada-2010', 'moon-1'] },
    sign: sampleSign(),
    standards: [standard, MOON],
    judgements: [sampleJudgements(), moon],
    translator,
  })
