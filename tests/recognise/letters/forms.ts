import { boxOfPoints } from '../../../src/geometry/box.js'
import { loopOf } from '../../../src/geometry/loop.js'
import type { Polyline } from '../../../src/geometry/outline.js'
import { signedArea } from '../../../src/geometry/polyline.js'
import { CHARACTERS, OTHER_FORMS } from '../../../src/recognise/letters/characters.js'
import type { Ink } from '../../../src/recognise/letters/ink.js'
import { stemOf } from '../../../src/recognise/letters/stems.js'
import { CAPITAL, glyphByFeature, glyphOf, type Face } from './faces.js'

/** Every form of every character that a face gives, and some that it does not have but others do. */

export interface Form {
  label: string
  ink: Ink
}

/** Phonetic letters that are the one-storey forms of a and g. */
const ONE_STOREY: Record<string, string> = { ɑ: 'a', ɡ: 'g' }

export function formsOf(face: Face): Form[] {
  const plain = [...CHARACTERS, ...Object.keys(OTHER_FORMS), ...Object.keys(ONE_STOREY)].flatMap((form): Form[] => {
    const glyph = glyphOf(face, form)
    if (!glyph || glyph.contours.length === 0) return []
    return [{ label: OTHER_FORMS[form] ?? ONE_STOREY[form] ?? form, ink: filled([glyph.contours]) }]
  })
  const zero = glyphByFeature(face, '0', 'zero')
  const marked = zero ? [{ label: '0', ink: filled([zero]) }] : []
  const legged = face.kind === 'sans' ? leggedR(face) : undefined
  return [...plain, ...marked, ...(legged ? [{ label: 'R', ink: legged }] : [])]
}

const filled = (paths: Polyline[][]): Ink => ({
  layers: paths.map((contours) => ({ contours: contours.map(loopOf), rule: 'nonzero', effect: 'add' })),
})

/** Inner radius of the bend of the leg, as a share of the height. An invented value: the bend of common grotesques by eye. */
const BEND = 0.1
const STEPS = 16

/** The R of many grotesques, whose leg bends down from the waist and stands upright: made from the face's P. */
function leggedR(face: Face): Ink | undefined {
  const p = glyphOf(face, 'P')
  const box = p && boxOfPoints(p.contours.flat())
  const counter = p?.contours.reduce((a, b) => (Math.abs(signedArea(a)) < Math.abs(signedArea(b)) ? a : b))
  const hole = counter && boxOfPoints(counter)
  if (!p || !box || !hole) return undefined
  const stem = stemOf({ ink: filled([p.contours]), box, blobs: [] }, 'P')
  if (!stem) return undefined
  const right = box.x + box.width
  const outer = stem.width + BEND * CAPITAL
  const centre = { x: right - outer, y: hole.y + hole.height + outer }
  const arc = (radius: number, from: number, to: number) =>
    Array.from({ length: STEPS + 1 }, (_, i) => {
      const turn = from + ((to - from) * i) / STEPS
      return { x: centre.x + radius * Math.cos(turn), y: centre.y + radius * Math.sin(turn) }
    })
  const leg = [
    ...arc(outer, -Math.PI / 2, 0),
    { x: right, y: 0 },
    { x: right - stem.width, y: 0 },
    ...arc(outer - stem.width, 0, -Math.PI / 2),
  ]
  return filled([p.contours, [leg]])
}
