import { isKnown, type Fact, type Known, type Lettering, type MeasuredQuantity, type Sign } from '../sign/sign.js'
import { roleOf } from './role.js'

/**
 * The sign with readings of a gauge where declared or drawn lengths stood, so that what follows from such a length (a share of the
 * height, a gap in strokes, the edge of a dot) follows from the reading.
 */

/** Coverage factor of the expanded uncertainty that clients state (JCGM 100:2008, 6.3.3). */
export const COVERAGE = 2

type Length = 'characterHeight' | 'strokeThickness' | 'characterSpacing'
type Family = 'raised' | 'visual'

/** All readings of a quantity taken together; undefined when there is none. */
export function readingOf(sign: Sign, quantity: string): Known<number> | undefined {
  const taken = sign.measured.filter((m) => m.quantity === quantity && m.values.length > 0)
  if (taken.length === 0) return undefined
  const values = taken.flatMap((m) => m.values)
  const uncertainty = Math.max(...taken.map((m) => standardUncertainty(m) ?? 0))
  return {
    value: mean(values),
    min: Math.min(...values),
    max: Math.max(...values),
    count: values.length,
    ...(uncertainty > 0 && { uncertainty }),
    basis: 'measured',
    places: taken.map((m) => m.place),
  }
}

export const mean = (values: number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

export const standardUncertainty = ({ expandedUncertainty }: MeasuredQuantity): number | undefined =>
  expandedUncertainty === undefined ? undefined : expandedUncertainty / COVERAGE

const familyOf = (lettering: Lettering, sign: Sign): Family =>
  roleOf(lettering, sign) === 'visual' ? 'visual' : 'raised'

/** Whether it is known which characters a reading belongs to: there is one set, or all have the same length. */
function tellsWhose(sign: Sign, family: Family, length: Length): boolean {
  const facts = sign.lettering.filter((l) => familyOf(l, sign) === family).map((l) => l[length])
  const [first] = facts
  return facts.every((fact) => sameLength(fact, first))
}

const sameLength = (a: Fact<number>, b: Fact<number> | undefined): boolean =>
  isKnown(a) && isKnown(b) ? a.value === b.value : !isKnown(a) && !isKnown(b)

/** The reading of one length of a set of characters, when it is known to be theirs. */
function readingFor(lettering: Lettering, length: Length, sign: Sign): Known<number> | undefined {
  const family = familyOf(lettering, sign)
  return tellsWhose(sign, family, length) ? readingOf(sign, `${family}.${length}`) : undefined
}

/** The reading of the stroke as a length, when it is known to be theirs; of characters for sight it is measured as a share only. */
function strokeReadFor(lettering: Lettering, sign: Sign): Known<number> | undefined {
  const family = familyOf(lettering, sign)
  return tellsWhose(sign, family, 'strokeThickness') ? readingOf(sign, `${family}.${STROKE_AS_LENGTH}`) : undefined
}

const STROKE_AS_LENGTH = 'strokeWidth'

/** The stroke that follows from a measured share of the height. */
function strokeFrom(share: Known<number>, height: Fact<number>): Known<number> | undefined {
  if (!isKnown(height)) return undefined
  const times = (n: number | undefined): number => (n ?? share.value) * height.value
  const uncertainty = Math.hypot((share.uncertainty ?? 0) * height.value, share.value * (height.uncertainty ?? 0))
  return {
    ...share,
    value: times(share.value),
    min: times(share.min),
    max: times(share.max),
    ...(uncertainty > 0 && { uncertainty }),
  }
}

/** A length that was measured on several sets of characters which differ in it: whose readings those are is not told. */
export function nobodys(lettering: Lettering, length: string, sign: Sign): boolean {
  const family = familyOf(lettering, sign)
  const names = length === 'strokeThickness' ? [length, STROKE_AS_LENGTH] : [length]
  const isMeasured = names.some((name) => readingOf(sign, `${family}.${name}`) !== undefined)
  return isRead(length) && isMeasured && !tellsWhose(sign, family, length)
}

const LENGTHS: readonly string[] = ['characterHeight', 'strokeThickness', 'characterSpacing'] satisfies Length[]
const isRead = (length: string): length is Length => LENGTHS.includes(length)

function withReadings(lettering: Lettering, sign: Sign): Lettering {
  const characterHeight = readingFor(lettering, 'characterHeight', sign) ?? lettering.characterHeight
  const share = readingFor(lettering, 'strokeThickness', sign)
  const stroke = share ? strokeFrom(share, characterHeight) : strokeReadFor(lettering, sign)
  // Of characters for sight the spacing is measured as a share, which no length follows from.
  const spacing = familyOf(lettering, sign) === 'raised' ? readingFor(lettering, 'characterSpacing', sign) : undefined
  return {
    ...lettering,
    characterHeight,
    strokeThickness: stroke ?? lettering.strokeThickness,
    characterSpacing: spacing ?? lettering.characterSpacing,
  }
}

/** A reading under its key; nothing where there is none. */
const told = <K extends string>(key: K, reading: Known<number> | undefined) =>
  reading ? ({ [key]: reading } as Record<K, Known<number>>) : {}

export function asMeasured(sign: Sign): Sign {
  if (sign.measured.length === 0) return sign
  const dots = {
    ...told('dotBaseDiameter', readingOf(sign, 'braille.dotBaseDiameter')),
    ...told('dotHeight', readingOf(sign, 'braille.dotHeight')),
  }
  return {
    ...sign,
    lettering: sign.lettering.map((lettering) => withReadings(lettering, sign)),
    braille: Object.keys(dots).length > 0 ? sign.braille.map((block) => ({ ...block, ...dots })) : sign.braille,
  }
}
