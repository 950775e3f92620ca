import { domeOf } from '../geometry/dome.js'
import type { Finding } from './finding-schema.js'

/**
 * Dots that are higher than half their base is wide. As a part of a ball such a dot is wider above its base than at it, which no code
 * forbids and no mould lets go of.
 */

/** Shapes that are no part of a ball. */
const NO_DOME: readonly unknown[] = ['flat', 'pointed']

type Findings = readonly Finding[]

const measuredOf = (findings: Findings, quantity: string): Finding['measured'] | undefined =>
  findings.find((finding) => finding.quantity === quantity && finding.measured !== null)?.measured

/** Without the noise of the arithmetic; a comparison is not made with it. */
const DECIMALS = 6
const told = (millimetres: number): string => String(Number(millimetres.toFixed(DECIMALS)))

/** Told only where the lowest dot is too high for the widest base, so that it holds for each of them. */
export function overhang(findings: Findings): string[] {
  const height = measuredOf(findings, 'braille.dotHeight')?.min ?? 0
  const base = measuredOf(findings, 'braille.dotBaseDiameter')?.max ?? 0
  if (NO_DOME.includes(measuredOf(findings, 'braille.dotShape')?.value)) return []
  if (!(height > 0 && base > 0 && domeOf(base, height).overhangs)) return []
  return [
    `Dots ${told(height)} mm high on a base ${told(base)} mm wide are higher than half their base is wide: a dome that is part of a ball overhangs its base there. A drop takes that form only where it does not wet the ground, and a mould does not let go of it. Measure both again, or look at the shape.`,
  ]
}
