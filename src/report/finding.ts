import type { Judgement } from '../judge/finding.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Place } from '../sign/sign.js'
import type { fingerprinter } from './digest.js'
import type { Finding } from './finding-schema.js'
import { messageFor } from './messages.js'
import { kept } from './numbers.js'
import { measured } from './observed.js'
import { distinctPlaces, reportPlace } from './place.js'
import { remedyFor } from './remedies.js'

/** How many places one finding lists; `whereTotal` counts them all. */
export const MOST_PLACES = 100

/**
 * One judgement as a finding of the report.
 * @param fingerprint names the findings of this sign
 * @param all every judgement of the check
 */
export function findingOf(
  judgement: Judgement,
  standard: LoadedStandard,
  fingerprint: ReturnType<typeof fingerprinter>,
  all: readonly Judgement[],
): Finding {
  const { requirement, limit } = judgement
  const places = distinctPlaces(placesOf(judgement))
  const source = standard.sources[requirement.citation.source]
  return {
    requirement: requirement.requirement,
    clause: requirement.clause,
    title: requirement.title,
    asks: requirement.text,
    force: requirement.force,
    stage: requirement.stage,
    verdict: judgement.verdict,
    reason: judgement.reason,
    quantity: requirement.quantity,
    measured: measured(judgement),
    limit: {
      min: kept(limit.min),
      max: kept(limit.max),
      allowed: limit.pass ?? null,
      unit: limit.unit,
      printed: limit.printed,
    },
    margin: judgement.margin === null ? null : kept(judgement.margin),
    unitSplit: judgement.unitSplit,
    where: places.slice(0, MOST_PLACES).map(reportPlace),
    whereTotal: places.length,
    message: messageFor(judgement),
    remedy: remedyFor(judgement, all),
    citation: {
      document: source?.document ?? requirement.citation.source,
      where: source?.where ?? null,
      clause: limit.clause,
      scopedBy: requirement.scope.clause,
      confidence: requirement.citation.confidence,
      note: requirement.citation.note ?? null,
    },
    fingerprint: fingerprint(
      requirement,
      places.map((place) => place.element),
    ),
  }
}

/** The offenders of a failure; what left an undetermined row open; nothing for the rest. */
function placesOf(judgement: Judgement): Place[] {
  if (judgement.verdict !== 'fail' && judgement.verdict !== 'undetermined') return []
  const decisive = judgement.decisive.flatMap((observation) => observation.places)
  return judgement.verdict === 'fail' ? decisive : [...decisive, ...judgement.gaps.flatMap((gap) => gap.places)]
}
