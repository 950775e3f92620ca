import { isKnown, type Fact, type Lettering, type LetteringPart, type Sign, type Unknown } from '../sign/sign.js'
import { nobodys } from './as-measured.js'
import { gapOf, join, nothing, pointerOf, ratio, take, type Ask } from './facts.js'
import type { Found, Quantities, Quantity, Scope, Subject } from './quantity.js'
import { allRaised, roleOf, roleOfAllRaised } from './role.js'

/**
 * Raised and visual characters: the same measurements on different parts.
 *
 * Datum: character height, stroke and proportion belong to the capital I (and the O) of the typeface at the size used, not to
 * single glyphs (2010 ADA Standards 703.2.4 to 703.2.6, 703.5.4, 703.5.5, 703.5.7). Gaps are between the closest points
 * of neighbouring outlines without word spaces (703.2.7, 703.5.8); line spacing is between baselines (703.2.8, 703.5.9).
 */

export const NO_LETTERING = 'The sign has no characters of this kind.'

const SERVE_BOTH =
  'The characters serve touch and sight; of what is asked of characters for sight they need only finish and contrast.'

/** Characters with their number on the sign. */
export interface Numbered {
  lettering: Lettering
  n: number
}

/** The lettering that a scope looks at, with its number on the sign. */
export function letteringIn({ sign, scope }: Pick<Subject, 'sign' | 'scope'>): Numbered[] {
  const raisedPart = allRaised(sign) ? roleOfAllRaised(sign) : 'raised'
  const found: Numbered[] = []
  sign.lettering.forEach((lettering, n) => {
    if (inParts(lettering, raisedPart, scope) && inSections(lettering, scope)) found.push({ lettering, n })
  })
  return found
}

/** @param raisedPart the part that raised characters play on the sign. */
const inParts = ({ part }: Lettering, raisedPart: LetteringPart, { parts }: Scope): boolean =>
  !parts || parts.includes(part) || (part === 'raised' && parts.includes(raisedPart))

/** Who gives a figure of the foot of the characters says that their sides are not straight; else an unknown section is in no list. */
const inSections = (lettering: Lettering, { sections }: Scope): boolean => {
  const { section, strokeThicknessAtBase: stroke, characterSpacingAtBase: gap } = lettering
  if (!sections) return true
  return isKnown(section)
    ? sections.includes(section.value)
    : (isKnown(stroke) || isKnown(gap)) && sections.includes('other')
}

const RAISED: Scope = { parts: ['raised', 'both'] }

/** The characters that are read by touch. */
export const raisedLettering = (sign: Sign): Numbered[] => letteringIn({ sign, scope: RAISED })

/** Nothing applies to sections other than straight: says so, and what stands when no section is known. */
export function noLettering({ sign, scope }: Pick<Subject, 'sign' | 'scope'>): string {
  const found = letteringIn({ sign, scope: { parts: scope.parts } })
  if (found.length === 0) return sign.lettering.some((l) => roleOf(l, sign) === 'both') ? SERVE_BOTH : NO_LETTERING
  return found.every(({ lettering }) => isKnown(lettering.section))
    ? 'No characters have a section that this asks about.'
    : 'The section of the characters is not given, so the outline given is held against the limit for straight sides. ' +
        'If their sides are not straight, the gap at their foot must be measured as well.'
}

export const eachLettering =
  (measure: (lettering: Lettering, n: number, sign: Sign) => Found) =>
  (subject: Subject): Found => {
    const found = letteringIn(subject)
    if (found.length === 0) return nothing(noLettering(subject))
    return join(
      found.map(({ lettering, n }) => numbered(measure(lettering, n, subject.sign), n)),
      NO_LETTERING,
    )
  }

/** Says of observations which lettering they are of. */
function numbered(found: Found, n: number): Found {
  for (const observation of found.observations) observation.lettering = n
  return found
}

/** A quantity that is one field of the lettering. */
function field(
  key:
    | 'characterHeight'
    | 'characterProportion'
    | 'strokeThickness'
    | 'relief'
    | 'style'
    | 'characterSpacing'
    | 'characterSpacingAtBase',
  ask: Omit<Ask, 'pointer'> & { pointer?: string },
  shape: Pick<Quantity, 'unit' | 'method'>,
): Quantity {
  const path = ask.pointer ?? key
  return {
    ...shape,
    couldBe: ['lettering'],
    doubt: 'more',
    take: eachLettering((lettering, n) => {
      if (key.startsWith('characterSpacing') && !hasPairs(lettering)) return nothing('No word has two characters.')
      const fact: Fact<number | string> = lettering[key]
      return take(fact, lettering.place, { ...ask, pointer: pointerOf(lettering.place, 'lettering', n, path) })
    }),
  }
}

/** Whether two characters stand next to each other somewhere; unread text is taken to have some. */
const hasPairs = ({ text }: Lettering): boolean =>
  !isKnown(text) || text.value.split(/\s+/u).some((word) => [...word].length > 1)

const NOBODYS: Unknown = {
  unknown: 'missing-fact',
  why: 'a length was measured on characters of several sizes, and it is not told on which; measure this share itself',
}

/** Straight sides are as wide at the base as at the face. */
const strokeAtBase = ({ section, strokeThickness, strokeThicknessAtBase: said }: Lettering): Fact<number> =>
  !isKnown(said) && isKnown(section) && section.value === 'straight' && isKnown(strokeThickness)
    ? strokeThickness
    : said

/** One field of the lettering as a share of another. */
function share(
  above: 'strokeThickness' | 'strokeThicknessAtBase' | 'characterSpacing' | 'baselineSpacing',
  below: 'characterHeight' | 'strokeThickness',
  method: string,
): Quantity {
  return {
    unit: 'ratio',
    method,
    couldBe: ['lettering'],
    doubt: 'more',
    take: eachLettering((lettering, n, sign) => {
      const top = above === 'strokeThicknessAtBase' ? strokeAtBase(lettering) : lettering[above]
      const bottom = lettering[below]
      if (top === undefined || (above === 'baselineSpacing' && lettering.lines.length < 2))
        return nothing('The text has one line.')
      if (above === 'characterSpacing' && !hasPairs(lettering)) return nothing('No word has two characters.')
      if (nobodys(lettering, above, sign) || nobodys(lettering, below, sign))
        return { observations: [], gaps: [gapOf(NOBODYS, lettering.place)] }
      if (isKnown(top) && isKnown(bottom))
        return { observations: [ratio(top, bottom, below, lettering.place)], gaps: [] }
      const asked = [
        { key: above, fact: top },
        { key: below, fact: bottom },
      ]
      return {
        observations: [],
        gaps: asked.flatMap(({ key, fact }) =>
          isKnown(fact)
            ? []
            : [
                gapOf(fact, lettering.place, {
                  pointer: pointerOf(lettering.place, 'lettering', n, key),
                  ask: QUESTIONS[key],
                  unit: 'mm',
                }),
              ],
        ),
      }
    }),
  }
}

export const QUESTIONS = {
  characterHeight: 'How high is the capital I of the typeface at the size used?',
  strokeThickness: 'How wide is the stroke of the capital I?',
  strokeThicknessAtBase: 'How wide is the stroke of the capital I where it meets the background?',
  characterSpacing: 'How far apart are the closest points of neighbouring characters?',
  characterSpacingAtBase: 'How far apart are neighbouring characters at their foot?',
  baselineSpacing: 'How far apart are the baselines of successive lines?',
  relief: 'How far do the characters stand out from their background?',
  characterProportion: 'How wide is the O of the typeface, as a share of the height of its capital I?',
  style: 'What kind of typeface is it?',
} as const

export const HEIGHT_METHOD = 'Height of the capital I of the typeface at the size used, from the baseline.'

const STYLE_CHOICES = ['sans-serif', 'serif', 'italic', 'oblique', 'script', 'decorative', 'unusual']

/** What raised and visual characters have in common, under the family's name. */
const common = (family: 'raised' | 'visual'): Quantities => ({
  [`${family}.proportion`]: field(
    'characterProportion',
    { ask: QUESTIONS.characterProportion, unit: 'ratio' },
    { unit: 'ratio', method: 'Width of the O over the height of the capital I, same typeface and size.' },
  ),
  [`${family}.strokeThickness`]: share(
    'strokeThickness',
    'characterHeight',
    'Stroke of the capital I over its height.',
  ),
  [`${family}.lineSpacing`]: share(
    'baselineSpacing',
    'characterHeight',
    'Distance of successive baselines over the character height.',
  ),
  [`${family}.style`]: field(
    'style',
    { pointer: 'typeface/style', ask: QUESTIONS.style, choices: STYLE_CHOICES },
    { unit: 'kind', method: 'The kind of typeface.' },
  ),
})

export const LETTERING: Quantities = {
  ...common('raised'),
  ...common('visual'),
  'raised.characterHeight': field(
    'characterHeight',
    { ask: QUESTIONS.characterHeight, unit: 'mm' },
    { unit: 'mm', method: HEIGHT_METHOD },
  ),
  'raised.strokeWidth': field(
    'strokeThickness',
    { ask: QUESTIONS.strokeThickness, unit: 'mm' },
    { unit: 'mm', method: 'Across the stroke of the capital I.' },
  ),
  'raised.strokeAtBase': share(
    'strokeThicknessAtBase',
    'characterHeight',
    'Stroke of the capital I where it meets the background, over its height.',
  ),
  'raised.relief': field(
    'relief',
    { ask: QUESTIONS.relief, unit: 'mm' },
    { unit: 'mm', method: 'From the background beside a character up to its face.' },
  ),
  'raised.characterSpacing': field(
    'characterSpacing',
    { ask: QUESTIONS.characterSpacing, unit: 'mm' },
    { unit: 'mm', method: 'Between the closest points of neighbouring outlines at their face, without word spaces.' },
  ),
  'raised.characterSpacingAtBase': field(
    'characterSpacingAtBase',
    { ask: QUESTIONS.characterSpacingAtBase, unit: 'mm' },
    { unit: 'mm', method: 'Between the closest points of neighbouring characters at their foot, without word spaces.' },
  ),
  'raised.characterSpacingInStrokes': share(
    'characterSpacing',
    'strokeThickness',
    'Gap between the closest points of neighbouring outlines over the stroke of the capital I.',
  ),
  'visual.characterSpacing': share(
    'characterSpacing',
    'characterHeight',
    'Gap between the closest points of neighbouring outlines over the character height, without word spaces.',
  ),
}
