import type { SetEvidence } from './evidence.js'
import { setCounts, setVerdict } from './verdict.js'

/**
 * A set as JSON for programs: the verdict of all, and of each sign its whole report or why there is none. Redrawn drawings are left
 * out. The same evidence gives the same bytes.
 */
export function setJson(evidence: SetEvidence): string {
  const { id, name, standards, asOf, signs, setFindings, intakeProblems } = evidence
  return `${JSON.stringify(
    {
      ...{ id, name, asOf, standards, verdict: setVerdict(evidence), signCounts: setCounts(signs) },
      signs: signs.map(({ id, mark, location, door, files, report, problem }) => ({
        ...{ id, mark, location, door, files },
        verdict: report?.verdict ?? null,
        ...{ report, problem },
      })),
      setFindings,
      problems: intakeProblems,
    },
    null,
    2,
  )}\n`
}
