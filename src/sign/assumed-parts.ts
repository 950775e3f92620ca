import { asksForTouch, type Assumption, type Lettering, type Sign } from './sign.js'

/**
 * What characters are taken for when nobody says which part they are: one set that serves touch and sight, on a sign that no clause
 * asks to be read by touch characters for sight, which are held to all that is asked of such.
 */
export const assumedPart = (use: Sign['use']): Lettering['part'] => (asksForTouch(use) ? 'both' : 'visual')

const FOR_SIGHT: Assumption = {
  about: 'part',
  text: 'Nothing says which part the characters are, and no clause asks that this sign be read by touch: they are taken for characters for sight.',
}

const saysBoth = ({ about, text }: Assumption): boolean => about === 'part' && text.includes('touch and sight')

/** The sign with every part that was assumed taken as its use has it. */
export function withAssumedParts(sign: Sign): Sign {
  const part = assumedPart(sign.use)
  const isOther = (l: Lettering): boolean => l.partAssumed === true && l.part !== part
  if (!sign.lettering.some(isOther)) return sign
  return {
    ...sign,
    lettering: sign.lettering.map((l) => (isOther(l) ? { ...l, part } : l)),
    assumptions: [...sign.assumptions.filter((assumption) => !saysBoth(assumption)), FOR_SIGHT],
  }
}
