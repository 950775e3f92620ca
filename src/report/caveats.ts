import type { Sign } from '../sign/sign.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import { STAGES, type Finding, type Measured, type ReportStage } from './finding-schema.js'
import { overhang } from './overhang.js'
import type { Report } from './schema.js'
import { standardCaveats } from './standard-caveats.js'

/** What a reader must know before relying on a report. */

export const NO_CERTIFICATION = 'This report is not a certification and not legal advice.'

/** What holds whatever was checked. */
export const GENERAL_CAVEATS = [
  NO_CERTIFICATION,
  'State and local codes may be stricter than the standards named here.',
  'The authority having jurisdiction decides, and work that needs a licence is decided by those who hold it.',
  'Only what is listed here was looked at. Nothing is said about durability, sharp edges, fixing or the right place for the sign in a building, unless a finding says so.',
]

const LIFE_SAFETY =
  'Exit and other life-safety signs are also subject to building and fire codes that are not checked here; have them approved before they are made.'

const GIFT =
  'No code asks for anything of a gift. Its geometry and wording are held against the standard as a measure of good braille and lettering only.'

const CONFLICT =
  'The drawing and the description contradict each other in what is listed under assumptions as a conflict. Where the description was judged, the verdict rests on it: what is made as it is drawn may fail.'

const MIRRORED =
  'The sign is drawn mirrored and was read as artwork for the back of a clear sheet. Made as it is drawn, for reading from the front, it cannot be read.'

const DECLARED: Record<ReportStage, string> = {
  drawing: 'The drawing stage passes on declared values alone: nothing was taken from a drawing or measured.',
  product: 'The product stage passes on declared values alone: nothing was measured on the finished product.',
  site: 'The site stage passes on declared values alone: nothing was measured on site.',
}

interface CaveatInput {
  sign: Sign
  standards: readonly LoadedStandard[]
  /** Those of each standard, in the same order. */
  byStandard: readonly (readonly Finding[])[]
  stages: Report['stages']
  decisionRule: 'simple' | 'guarded'
}

/** The caveats of a report, what makes all of it doubtful first, then the general ones. */
export function caveatsOf({ sign, standards, byStandard, stages, decisionRule }: CaveatInput): string[] {
  const findings = byStandard.flat()
  return [
    ...sign.assumptions.filter(({ isDoubtful }) => isDoubtful).map(({ text }) => text),
    ...GENERAL_CAVEATS,
    ...(sign.use === 'exit-door' ? [LIFE_SAFETY] : []),
    ...(sign.use === 'gift' ? [GIFT] : []),
    ...declaredStages(findings, stages).map((stage) => DECLARED[stage]),
    ...standardCaveats(standards, byStandard),
    ...unread(sign),
    ...(sign.assumptions.some(({ about }) => about === 'conflict') ? [CONFLICT] : []),
    ...(isMirrored(sign) ? [MIRRORED] : []),
    ...overhang(findings),
    ruleLine(decisionRule),
  ]
}

/**
 * The stages that pass without anything that shows them: a drawing shows only itself. What it tells of a height above the floor still
 * hangs on the height that was declared for the panel.
 */
function declaredStages(findings: readonly Finding[], stages: Report['stages']): ReportStage[] {
  const shown = new Set<ReportStage>()
  for (const { stage, force, verdict, measured } of findings)
    if (force === 'shall' && verdict === 'pass' && measured !== null && shows(measured.basis, stage)) shown.add(stage)
  return STAGES.filter((stage) => stages[stage] === 'pass' && !shown.has(stage))
}

const shows = (basis: Measured['basis'], stage: ReportStage): boolean =>
  basis === 'measured' || (basis === 'drawn' && stage === 'drawing')

function unread({ unread }: Sign): string[] {
  if (unread.length === 0) return []
  const parts = unread.length === 1 ? 'One part of the sign was' : `${unread.length} parts of the sign were`
  return [`${parts} seen but not understood; what depends on them was left undecided.`]
}

/** Whether letters and braille are drawn for the other side; where only one of them is, a finding says so. */
const isMirrored = ({ lettering, braille }: Sign): boolean =>
  braille.some((block) => block.mirrored) && lettering.every(({ lie }) => lie?.mirrored !== false)

const ruleLine = (rule: 'simple' | 'guarded'): string =>
  rule === 'simple'
    ? 'Values were judged as they stand, without regard to their uncertainty (simple decision rule): near a limit a pass may be wrong.'
    : 'A value within its expanded uncertainty (k = 2) of a limit was left undecided (guarded decision rule).'
