import type { ReportingDescriptor } from 'sarif'
import { standardOfRequirement } from '../standards/requirement-id.js'
import type { Finding } from './finding-schema.js'

/** Rows as rules of SARIF. */

export const LEVELS = { shall: 'error', should: 'warning', advice: 'note' } as const

/**
 * A row as a rule, without what may differ from sign to sign.
 * @param base where this service is found, without a slash at the end; without it the rule has no `helpUri`, which must be absolute
 */
export function ruleOf(finding: Finding, base: string | undefined): ReportingDescriptor {
  const { requirement, clause, title, asks, force, stage, quantity, citation } = finding
  return {
    id: requirement,
    shortDescription: { text: title },
    fullDescription: { text: asks },
    help: { text: `${citation.document}. ${pageOf(requirement)}` },
    ...(base !== undefined && {
      helpUri: `${base}/v1/standards/${encodeURIComponent(standardOfRequirement(requirement))}`,
    }),
    defaultConfiguration: { level: LEVELS[force] },
    properties: { clause, force, stage, quantity },
  }
}

/** The same for one sign, with the limit in force and the clause that sets it. */
export function ruleOfSign(finding: Finding, base: string | undefined): ReportingDescriptor {
  const { requirement, limit, citation } = finding
  const rule = ruleOf(finding, base)
  return {
    ...rule,
    help: { text: `${citation.document}, ${citation.clause}. Allowed: ${limit.printed}. ${pageOf(requirement)}` },
    properties: { ...rule.properties, limit, citation },
  }
}

/** A name of the page, not its address: where this service answers is not known to the report. */
const pageOf = (requirement: string): string =>
  `See docs/standards/${standardOfRequirement(requirement)}.md#${requirement.replaceAll('/', '-')}`
