import type { Finding } from '../../report/finding-schema.js'
import { isolated, markup, NOTHING, type Html } from '../../report/html-tag.js'
import type { Report } from '../../report/schema.js'
import { isMeasurable } from './to-measure.js'

/** What would decide an undecided finding, and where on the page it can be entered. */

const OF_ITS_PLACE = '/sign/installation'

/** @param isEarlier nothing can be entered for a report that is not the latest */
export function wayToDecide(finding: Finding, report: Report, isEarlier: boolean): Html {
  const { requirement, quantity, reason } = finding
  const how = report.toMeasure.find((item) => item.requirement === requirement)?.how
  const asked = report.questions.filter(({ decides }) => decides.includes(requirement))
  const isPlace = asked.some(({ pointer }) => pointer.startsWith(OF_ITS_PLACE))
  const links = [
    ...(how !== undefined && isMeasurable(quantity)
      ? [markup`<a href="#values-${quantity}">Enter measured values</a>`]
      : []),
    ...(isPlace ? [markup`<a href="#place">Enter facts of its place</a>`] : []),
  ]
  const others = asked.filter(({ pointer }) => !pointer.startsWith(OF_ITS_PLACE))
  return markup`${how === undefined ? NOTHING : markup`${isolated(how)} `}${others.length === 0 ? NOTHING : facts(others)}${how === undefined && asked.length === 0 ? WITHOUT[reason ?? 'missing-fact'] : NOTHING}${isEarlier || links.length === 0 ? NOTHING : markup`<span class="no-print">${links.map((link, i) => markup`${i === 0 ? '' : ' · '}${link}`)}</span>`}`
}

const facts = (asked: Report['questions']): Html =>
  markup`In the schedule or the description: ${asked.map(({ ask, choices }) => `${ask}${choices ? ` (${choices.join(', ')})` : ''}`).join(' ')} `

const WITHOUT: Record<NonNullable<Finding['reason']>, string> = {
  'missing-fact': 'A fact that the schedule or the description does not give.',
  'within-uncertainty': 'A measurement with less uncertainty, or a value farther from the limit.',
  'needs-judgement': 'A person, who judges it.',
  unreadable: 'A drawing, or a description beside it, that says it in a way that can be read.',
  'limit-reached': 'A simpler drawing: a limit was reached before this was looked at.',
}
