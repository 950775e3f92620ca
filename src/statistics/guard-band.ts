/**
 * From a measured value and its uncertainty to a decision. `simple`: the value is held against the limit as it stands (JCGM 106:2012,
 * 8.2). `guarded`: the limit is drawn in by a guard band as wide as the expanded uncertainty to accept, and drawn out by as much to
 * reject (JCGM 106:2012, 8.3; ISO 14253-1: who shows conformity takes the uncertainty off, who shows nonconformity adds it); in between
 * nothing is decided.
 */
export type DecisionRule = 'simple' | 'guarded'

export type Decision = 'pass' | 'fail' | 'within-uncertainty'

/** Coverage factor of an expanded uncertainty (JCGM 100:2008, 6.3.3). */
const COVERAGE_FACTOR = 2

/** A value this near to the edge of a guard band is on it: no conversion of units moves it across. */
const EDGE = 1e-9

/** The expanded uncertainty that belongs to a standard uncertainty, in its unit. */
export const expanded = (uncertainty: number): number => COVERAGE_FACTOR * uncertainty

/**
 * @param margin signed distance of the value inside (+) or outside (-) the nearer limit
 * @param uncertainty standard uncertainty; 0 where none is known
 * @param noise what arithmetic alone may have put on the margin
 */
export function decide(rule: DecisionRule, margin: number, uncertainty: number, noise: number): Decision {
  const band = rule === 'guarded' ? expanded(uncertainty) : 0
  if (Math.abs(margin) < band - EDGE) return 'within-uncertainty'
  return margin >= -noise ? 'pass' : 'fail'
}
