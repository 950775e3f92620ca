import { evidenceWords } from './evidence.js'
import type { Finding, Measured } from './finding-schema.js'
import { table } from './html-table.js'
import { isolated, markup, NOTHING, type Html } from './html-tag.js'
import { lowerFirst } from './sentences.js'
import { statisticsWords } from './statistics-words.js'
import { STAGE_WORDS } from './words.js'

/** The part of the page for what passed and what does not apply. */

/** What the readings say, behind with what they were taken. */
function after(measured: Measured, quantity: string): string {
  const words = statisticsWords(measured, quantity)
  return words === '' ? '' : `. ${words}`
}

/** What passed and what does not apply, folded away. */
export function restSection(findings: readonly Finding[]): Html {
  const of = (verdict: Finding['verdict']) => findings.filter((f) => f.verdict === verdict)
  return markup`${passed(of('pass'))}${notApplicable(of('not-applicable'))}`
}

function passed(findings: Finding[]): Html {
  if (findings.length === 0) return NOTHING
  const rows = findings.map(
    (f) =>
      markup`<tr>
        <th scope="row">${f.clause} ${f.title}</th>
        <td>${isolated(f.message)}</td>
        <td>
          ${STAGE_WORDS[f.stage]}${f.measured ? markup`: ${isolated(lowerFirst(evidenceWords(f.measured, f.quantity)))}${after(f.measured, f.quantity)}` : ''}
        </td>
      </tr>`,
  )
  return markup`<details>
    <summary><span class="pass">✓ Passed</span>: ${findings.length}</summary>
    ${table('Passed', ['Requirement', 'Finding', 'Evidence'], rows)}
  </details>`
}

/** What does not apply, each reason once. */
function notApplicable(findings: Finding[]): Html {
  if (findings.length === 0) return NOTHING
  const byReason = new Map<string, string[]>()
  for (const { message, clause, title } of findings)
    byReason.set(message, [...(byReason.get(message) ?? []), `${clause} ${title}`])
  const rows = [...byReason].map(
    ([why, requirements]) =>
      markup`<tr>
        <th scope="row">${isolated(why)}</th>
        <td>${requirements.join('; ')}</td>
      </tr>`,
  )
  return markup`<details>
    <summary><span class="not-applicable">– Not applicable</span>: ${findings.length}</summary>
    ${table('Not applicable', ['Why', 'Requirements'], rows)}
  </details>`
}
