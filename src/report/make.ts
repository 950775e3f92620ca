import type { Translator } from '../braille/translator.js'
import type { CheckInput } from '../check.js'
import type { Judgement } from '../judge/finding.js'
import type { Assumption, Sign } from '../sign/sign.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import { VERSION } from '../version.js'
import { caveatsOf } from './caveats.js'
import { fingerprinter, reportId } from './digest.js'
import { elementKeys } from './element-keys.js'
import { findingOf } from './finding.js'
import type { Finding } from './finding-schema.js'
import { standardOf } from './fixed.js'
import { reportPlace, reportSource } from './place.js'
import { questionsOf, scaleQuestion, toMeasureOf } from './questions.js'
import { readingOf } from './reading.js'
import type { Report } from './schema.js'
import { outcomeOf } from './verdicts.js'

export interface ReportInput {
  input: CheckInput
  sign: Sign
  standards: LoadedStandard[]
  /** One list for each standard, in the same order. */
  judgements: Judgement[][]
  translator: Translator
}

/** All judgements as a report. Pure, with a fixed order of keys: the same input gives the same bytes. */
export function makeReport({ input, sign, standards, judgements, translator }: ReportInput): Report {
  const all = judgements.flat()
  const named = fingerprinter(nameOf(sign))
  const keyOf = elementKeys(sign)
  const fingerprint: typeof named = (requirement, elements) => named(requirement, elements.map(keyOf))
  const byStandard = standards.map((standard, i) =>
    (judgements[i] ?? []).map((judgement) => findingOf(judgement, standard, fingerprint, all)),
  )
  const findings = byStandard.flat()
  const { decisionRule, unitSystem } = input.options
  const { identity } = translator
  const { verdict, stages, summary } = outcomeOf(findings)
  return {
    id: reportId(input, standards, translator),
    mark: sign.mark ?? null,
    use: sign.use,
    verdict,
    stages,
    summary,
    standards: standards.map((standard, i) => outcomeFor(standard, byStandard[i] ?? [])),
    decisionRule,
    unitSystem,
    findings,
    reading: readingOf(sign),
    assumptions: distinct(doubtfulFirst(sign).map(({ about, text }) => ({ about, text }))),
    ignored: sign.ignored.map(({ source, why }) => ({ source: reportSource(source), why })),
    unread: sign.unread.map(({ place, why, couldBe }) => ({ where: reportPlace(place), why, couldBe })),
    questions: [...scaleQuestion(sign, findings), ...questionsOf(all, input.sign?.units)],
    toMeasure: toMeasureOf(all),
    caveats: caveatsOf({ sign, standards, byStandard, stages, decisionRule }),
    engine: {
      version: VERSION,
      braille: {
        name: identity.engine,
        version: identity.version,
        tables: { ...identity.tables },
        digest: identity.digest,
      },
    },
  }
}

/** A standard with what its own findings say. */
function outcomeFor(standard: LoadedStandard, findings: readonly Finding[]): Report['standards'][number] {
  const { sources, ...named } = standardOf(standard)
  const { verdict, summary } = outcomeOf(findings)
  return { ...named, verdict, summary, sources }
}

/** What tells one sign from another: its mark. Without one, only its parts tell. */
const nameOf = ({ mark }: Sign): string => (mark === undefined ? '' : `mark ${mark}`)

const doubtfulFirst = ({ assumptions }: Sign): Assumption[] => [
  ...assumptions.filter(({ isDoubtful }) => isDoubtful),
  ...assumptions.filter(({ isDoubtful }) => !isDoubtful),
]

function distinct<T>(items: T[]): T[] {
  const byText = new Map(items.map((item) => [JSON.stringify(item), item]))
  return [...byText.values()]
}
