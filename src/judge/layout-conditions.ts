import { isKnown, type Sign } from '../sign/sign.js'
import { met, notMet, open, when, type Met } from './met.js'
import type { Condition } from './types.js'

/** Conditions on how much is on a sign, what it is made on and how it was measured. */

const tactile = ({ lettering }: Sign) => lettering.filter(({ part }) => part !== 'visual')
const tactileLines = (sign: Sign): number => tactile(sign).reduce((sum, { lines }) => sum + lines.length, 0)

const NO_RAISED = 'The sign has no raised characters.'

/** A sign without tactile lines has neither one nor several. */
function lines(sign: Sign, isWanted: (count: number) => boolean, because: string): Met {
  const count = tactileLines(sign)
  return count === 0 ? notMet(NO_RAISED) : when(isWanted(count), because)
}

/** How many words the raised characters say; undefined where a text was not read. */
export function tactileWords(sign: Sign): number | undefined {
  const texts = tactile(sign).map(({ text }) => (isKnown(text) ? text.value : undefined))
  if (texts.some((text) => text === undefined)) return undefined
  return texts
    .join(' ')
    .split(/\s+/u)
    .filter((word) => word !== '').length
}

function wordCount(sign: Sign, isWanted: (count: number) => boolean, because: string): Met {
  if (tactileLines(sign) === 0) return notMet(NO_RAISED)
  const count = tactileWords(sign)
  return count === undefined
    ? open('the characters were not read, so their words are not counted', sign.panel.place)
    : when(isWanted(count), because)
}

/** A sentence of so many words or fewer is short (Braille Literacy Canada guidelines, as ICEB reports them). */
const SHORT_SENTENCE = 10

const isOnPvc = ({ braille }: Sign): boolean => braille.some(({ carrier }) => carrier === 'pvc')

const isAllOnPvc = (sign: Sign): boolean => isOnPvc(sign) && sign.braille.every(({ carrier }) => carrier === 'pvc')

const isOnSteel = ({ braille }: Sign): boolean => braille.some(({ carrier }) => carrier === 'stainless-steel')

/** The Korean notice of 2020 has a row of its own for stainless steel, whose figures the reports of it do not give. */
const STEEL_NOT_READ = 'for braille on stainless steel there is a row of its own, which was not read'

/** A row is held against all braille of a sign: what lies within the narrower one is right on either. */
const SOME_ON_PVC = 'some of the braille is on PVC, for which there is a row of its own, and some is not'

/** Measured by the very formula of the row, so that its value does not follow from colours or from other readings. */
const contrastMeasured = ({ measured }: Sign, wanted: string): Met =>
  when(
    measured.some(({ quantity }) => quantity === wanted),
    'The contrast was not measured; it follows from colours or reflectances.',
  )

export const LAYOUT_CONDITIONS = {
  'one-tactile-line': (sign) => lines(sign, (n) => n === 1, 'The sign has several lines of raised characters.'),
  'several-tactile-lines': (sign) => lines(sign, (n) => n > 1, 'The sign has one line of raised characters.'),
  'one-word': (sign) => wordCount(sign, (n) => n === 1, 'The sign has several words.'),
  'english-over-ten-words': (sign) => wordCount(sign, (n) => n > SHORT_SENTENCE, 'The sign has few words.'),
  'carrier-pvc': (sign) =>
    when(isAllOnPvc(sign), isOnPvc(sign) ? 'Not all braille is on PVC.' : 'The braille is not said to be on PVC.'),
  'carrier-not-pvc': (sign) => {
    if (isOnSteel(sign)) return open(STEEL_NOT_READ, sign.panel.place)
    if (isAllOnPvc(sign)) return notMet('The braille is on PVC.')
    return isOnPvc(sign) ? open(SOME_ON_PVC, sign.panel.place) : met
  },
  'character-contrast-measured': (sign) => contrastMeasured(sign, 'contrast.charactersByMichelson'),
  'pictogram-contrast-measured': (sign) => contrastMeasured(sign, 'contrast.pictogramByMichelson'),
  'border-gives-contrast': ({ borders, panel }) =>
    borders.length === 0
      ? notMet('The sign has no border.')
      : open('whether the border is what sets the sign apart from the wall is seen at the place', panel.place),
  'suspended-overhead': ({ panel }) => open('whether the sign hangs overhead is seen at the place', panel.place),
  'door-symbol': ({ pictograms }) =>
    pictograms.some(({ shape }) => shape !== undefined) ? met : notMet('The sign has no symbol told by its outline.'),
  'triangle-alone': ({ pictograms }) =>
    when(
      pictograms.some(({ shape }) => shape === 'triangle'),
      'The sign has no symbol that is a triangle alone.',
    ),
} satisfies Partial<Record<Condition, (sign: Sign) => Met>>
