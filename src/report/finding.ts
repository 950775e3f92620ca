import type { Judgement } from '../judge/finding.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Place } from '../sign/sign.js'
import type { fingerprinter } from './digest.js'
import type { Finding } from './finding-schema.js'
import { askedBy, type Asked } from './fixed.js'
import { messageFor } from './messages.js'
import { kept } from './numbers.js'
import { measured } from './observed.js'
import { passedAsBefore } from './passed.js'
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
  const asked = askedBy(standard, requirement, limit)
  if (judgement.verdict === 'not-applicable') return assemble(asked, outOfPlay(judgement), fingerprint(requirement, []))
  if (judgement.verdict === 'pass')
    return assemble(
      asked,
      passedAsBefore(judgement, () => foundBy(judgement, [], all)),
      fingerprint(requirement, []),
    )
  const places = distinctPlaces(placesOf(judgement))
  const elements = places.map((place) => place.element)
  return assemble(asked, foundBy(judgement, places, all), fingerprint(requirement, elements))
}

export type Found = Omit<Finding, keyof Asked | 'fingerprint'>

function foundBy(judgement: Judgement, places: readonly Place[], all: readonly Judgement[]): Found {
  const { verdict, reason, unitSplit, margin } = judgement
  return {
    verdict,
    reason,
    measured: measured(judgement),
    margin: margin === null ? null : kept(margin),
    unitSplit,
    where: places.slice(0, MOST_PLACES).map(reportPlace),
    whereTotal: places.length,
    message: messageFor(judgement),
    remedy: remedyFor(judgement, all),
  }
}

const settled = new WeakMap<Judgement, Found>()

/** Of a row that does not apply nothing hangs on the sign: judgements that are the same object give the same text. */
function outOfPlay(judgement: Judgement): Found {
  const before = settled.get(judgement)
  if (before) return before
  const found = foundBy(judgement, [], [])
  settled.set(judgement, found)
  return found
}

/** Every key by name: objects that are made alike are read fast, and there are many. */
const assemble = (asked: Asked, found: Found, fingerprint: string): Finding => ({
  requirement: asked.requirement,
  clause: asked.clause,
  title: asked.title,
  asks: asked.asks,
  force: asked.force,
  stage: asked.stage,
  quantity: asked.quantity,
  limit: asked.limit,
  citation: asked.citation,
  verdict: found.verdict,
  reason: found.reason,
  measured: found.measured,
  margin: found.margin,
  unitSplit: found.unitSplit,
  where: found.where,
  whereTotal: found.whereTotal,
  message: found.message,
  remedy: found.remedy,
  fingerprint,
})

/** The offenders of a failure; what left an undetermined row open. */
function placesOf(judgement: Judgement): Place[] {
  const decisive = judgement.decisive.flatMap((observation) => observation.places)
  return judgement.verdict === 'fail' ? decisive : [...decisive, ...judgement.gaps.flatMap((gap) => gap.places)]
}
