import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { checkDrawings } from './drawings.js'
import { brailleOnIcons, SHOWN, textOnIcons } from './icons.js'
import { readFaces } from './letters.js'
import { underNoise } from './noise.js'
import { pageOf, type Found } from './page.js'
import { oddSigns, roundedSigns, sizedSigns, type Share } from './sizes.js'

/**
 * docs/accuracy.md, found anew and compared with what is checked in: `npx vitest run tests/accuracy -u` writes it.
 * Where the truth of each figure comes from is said on the page.
 */

const PAGE = fileURLToPath(new URL('../../docs/accuracy.md', import.meta.url))
/** About a minute on a quiet machine. */
const TIMEOUT = 900_000

const DECIMALS = [3, 2]
/** Cell over dot spacing beyond what the standard allows. */
const ODD_SHARES: Share[] = [
  [2, 2.2],
  [2.2, 2.4],
  [3.3, 3.6],
  [3.6, 4.2],
]
/** Millimetres; the first is the size that the icons say they have: 16 px. */
const ICON_SIZES = [(16 * 25.4) / 96, 8, 16, 32, 100]
const TEXT_ON_ICONS = { every: 6, size: 100 }
/** Standard deviations, millimetres. */
const NOISE = [0.01, 0.02, 0.05]
const SIGNS_UNDER_NOISE = 250

it('docs/accuracy.md says what is found', { timeout: TIMEOUT }, async () => {
  const translator = createTranslator()
  const found: Found = {
    sizes: {
      signs: sizedSigns(translator),
      rounded: new Map(DECIMALS.map((decimals) => [decimals, roundedSigns(decimals, translator)])),
      odd: ODD_SHARES.map((share) => ({ share, signs: oddSigns(share, translator) })),
    },
    letters: readFaces(),
    drawings: checkDrawings(translator),
    braille: ICON_SIZES.map((size) => ({ size, claims: brailleOnIcons(size, translator) })),
    text: { ...TEXT_ON_ICONS, claims: textOnIcons(TEXT_ON_ICONS.every, TEXT_ON_ICONS.size, translator) },
    noise: NOISE.map((sigma) => underNoise(sigma, SIGNS_UNDER_NOISE, translator)),
  }
  expect(wrongIn(found)).toEqual([])
  await expect(pageOf(found)).toMatchFileSnapshot(PAGE)
})

/** Whatever is said that is not so: the page tells of it, but is no excuse for it. */
function wrongIn({ sizes, letters, drawings, braille, text, noise }: Found): string[] {
  const odd = sizes.odd.flatMap(({ signs }) => signs)
  const signs = [...sizes.signs, ...odd, ...[...sizes.rounded.values()].flat()]
  return [
    ...signs.flatMap(({ read, sheet, turn }) =>
      read === 'wrong' ? [`a sign of known size (${sheet}, ${turn}°)`] : [],
    ),
    ...letters.faces.flatMap(({ name, counted }) => (counted.wrong > 0 ? [`characters of ${name}`] : [])),
    ...drawings.flatMap(({ name, wrong }) => wrong.map((what) => `${name}: ${what}`)),
    ...braille.flatMap(({ claims }) => claims.read.map(({ name }) => `braille on the icon ${name}`)),
    ...text.claims.read.flatMap((r) => (SHOWN[r.name] === r.text ? [] : [`“${r.text}” on the icon ${r.name}`])),
    ...noise.flatMap(({ sigma, wrong }) => (wrong > 0 ? [`cells under noise of ${sigma} mm`] : [])),
  ]
}
