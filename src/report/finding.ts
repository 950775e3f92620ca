import type { Judgement } from '../judge/finding.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Place } from '../sign/sign.js'
import type { fingerprinter } from './digest.js'
import type { Finding } from './finding-schema.js'
import { askedBy } from './fixed.js'
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
  const { requirement } = judgement
  if (judgement.verdict === 'not-applicable')
    return { ...outOfPlay(judgement, standard), fingerprint: fingerprint(requirement, []) }
  const places = distinctPlaces(placesOf(judgement))
  return {
    ...foundBy(judgement, standard, places, all),
    fingerprint: fingerprint(
      requirement,
      places.map((place) => place.element),
    ),
  }
}

type Nameless = Omit<Finding, 'fingerprint'>

function foundBy(
  judgement: Judgement,
  standard: LoadedStandard,
  places: readonly Place[],
  all: readonly Judgement[],
): Nameless {
  const { requirement, limit, verdict, reason, unitSplit, margin } = judgement
  return {
    ...askedBy(standard, requirement, limit),
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

const nameless = new WeakMap<Judgement, { standard: LoadedStandard; finding: Nameless }>()

/** Of a row that does not apply nothing hangs on the sign but the name: judgements that are the same object give the same text. */
function outOfPlay(judgement: Judgement, standard: LoadedStandard): Nameless {
  const before = nameless.get(judgement)
  if (before?.standard === standard) return before.finding
  const finding = foundBy(judgement, standard, [], [])
  nameless.set(judgement, { standard, finding })
  return finding
}

/** The offenders of a failure; what left an undetermined row open; nothing for the rest. */
function placesOf(judgement: Judgement): Place[] {
  if (judgement.verdict !== 'fail' && judgement.verdict !== 'undetermined') return []
  const decisive = judgement.decisive.flatMap((observation) => observation.places)
  return judgement.verdict === 'fail' ? decisive : [...decisive, ...judgement.gaps.flatMap((gap) => gap.places)]
}
