import { type Fact, type Known, type Lettering, type TypefaceStyle, type Unknown } from '../sign/sign.js'
import type { SubstituteFace } from './faces.js'
import type { LaidRun } from './layout.js'
import { capitalMeasures } from './typeface.js'

/** What a typeface tells of live text that is set in it: its kind and the sizes of its capitals, in millimetres. */

/** Degrees of lean that are no more than rounding of a matrix. */
const UPRIGHT = 0.5

export const unreadable = (why: string): Unknown => ({ unknown: 'unreadable', why })

export function styleOf({ face, frame, drawn, turned }: LaidRun): Fact<TypefaceStyle> {
  if (turned) return { unknown: 'needs-judgement', why: 'characters are turned one by one' }
  if (drawn.fontStyle.startsWith('italic')) return { value: 'italic', basis: 'drawn', method: 'font-style of the text' }
  if (drawn.fontStyle.startsWith('oblique'))
    return { value: 'oblique', basis: 'drawn', method: 'font-style of the text' }
  if (face.kind === 'unknown') return unreadable(face.why)
  if (frame && (frame.mirrored || Math.abs(frame.shear) > UPRIGHT))
    return { unknown: 'needs-judgement', why: 'the characters are drawn slanted or mirrored by a transform' }
  if (face.style)
    return { value: face.style, basis: 'drawn', method: `as the typeface ${face.name} is classed by its makers` }
  return { unknown: 'needs-judgement', why: `the forms of the typeface “${face.name}” have to be looked at` }
}

export const notTheOutlines = ({ name, lender }: SubstituteFace): Unknown =>
  unreadable(
    `the outlines of the typeface “${name}” are not known here; ${lender} has its advances, but other outlines`,
  )

type Sizes = Pick<Lettering, 'characterHeight' | 'characterProportion' | 'strokeThickness'>

export function sizesOf({ face, frame, trouble }: LaidRun): Sizes {
  const why = trouble ?? unreadable('the size of the characters is not known')
  const nothing = { characterHeight: why, characterProportion: why, strokeThickness: why }
  if (!frame) return nothing
  if (face.kind === 'substitute') {
    const others = notTheOutlines(face)
    const method = `height of the capitals of ${face.name} by ${face.capHeight?.source ?? ''}, at the size of the text`
    const height = face.capHeight && { value: face.capHeight.share * frame.emAcross, basis: 'drawn' as const, method }
    return { characterHeight: height ?? others, characterProportion: others, strokeThickness: others }
  }
  if (face.kind === 'metrics') {
    const method = `height of the capitals of ${face.name} in its published metrics, at the size of the text`
    return { ...nothing, characterHeight: { value: face.capHeight * frame.emAcross, basis: 'drawn', method } }
  }
  const measures = face.kind === 'outlines' ? capitalMeasures(face.font) : undefined
  if (face.kind !== 'outlines' || !measures) return nothing
  const share = (units: number) => units / face.font.unitsPerEm
  const known = (value: number, method: string): Known<number> => ({ value, basis: 'drawn', method })
  const squeeze = frame.emAlong / frame.emAcross
  return {
    characterHeight: known(
      share(measures.height) * frame.emAcross,
      `height of the capital I of ${face.name} at the size of the text`,
    ),
    characterProportion: known(
      measures.proportion * squeeze,
      `width of the capital O over height of the capital I of ${face.name}`,
    ),
    strokeThickness: known(
      share(measures.stem) * frame.emAlong,
      `stem of the capital I of ${face.name}, at half its height`,
    ),
  }
}
