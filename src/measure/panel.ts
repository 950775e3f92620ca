import { isKnown, type Sign } from '../sign/sign.js'
import { gapOf, nothing, PANEL_POINTER, pointerOf, take, type Ask } from './facts.js'
import { HEIGHT_ASK, panelSide } from './panel-edges.js'
import type { Found, Quantities, Quantity } from './quantity.js'

/** The panel and what is round it: its size, its edge, its borders, and what only an instrument tells of its surface and its light. */

const EDGE_ASK: Ask = {
  pointer: `${PANEL_POINTER}/edge`,
  ask: 'How is the edge of the panel made?',
  choices: ['rounded', 'chamfered', 'square'],
}

/** A rounded edge is; a square one is not; whether a chamfer will do is for a person. */
function roundedEdges({ panel: { edge, place } }: Sign): Found {
  if (!isKnown(edge)) return { observations: [], gaps: [gapOf(edge, place, EDGE_ASK)] }
  if (edge.value === 'chamfered') {
    const why = 'the edge is chamfered, which takes the corner away and does not round it'
    return { observations: [], gaps: [{ reason: 'needs-judgement', why, places: [place] }] }
  }
  const remark = `The edge of the panel is ${edge.value}.`
  return { observations: [{ value: edge.value === 'rounded', basis: edge.basis, places: [place], remark }], gaps: [] }
}

/** What is only ever read off an instrument. */
const read = (quantity: string, unit: 'gloss-units' | 'lx', ask: string, method: string): Quantity => ({
  unit,
  method,
  couldBe: [],
  doubt: 'more',
  take: ({ sign }) => ({
    observations: [],
    gaps: [
      gapOf({ unknown: 'missing-fact', why: 'it was not measured' }, sign.panel.place, {
        pointer: '/sign/measured',
        ask: `${ask} (${quantity})?`,
        unit,
      }),
    ],
  }),
})

const borderWidth = ({ borders }: Sign): Found => {
  if (borders.length === 0) return nothing('The sign has no border.')
  const found = borders.map(({ width, place }, n) =>
    take(width, place, {
      pointer: pointerOf(place, 'borders', n, 'width'),
      ask: 'How wide is the border?',
      unit: 'mm',
    }),
  )
  return { observations: found.flatMap((f) => f.observations), gaps: found.flatMap((f) => f.gaps) }
}

const WIDTH_ASK: Ask = { pointer: `${PANEL_POINTER}/width`, ask: 'How wide is the panel?', unit: 'mm' }

export const PANEL: Quantities = {
  'sign.width': {
    unit: 'mm',
    method: 'Across the panel.',
    couldBe: [],
    doubt: 'more',
    take: ({ sign }) => take(panelSide(sign, 'width'), sign.panel.place, WIDTH_ASK),
  },
  'sign.height': {
    unit: 'mm',
    method: 'From the lower to the upper edge of the panel.',
    couldBe: [],
    doubt: 'more',
    take: ({ sign }) => take(panelSide(sign, 'height'), sign.panel.place, HEIGHT_ASK),
  },
  'sign.roundedEdges': {
    unit: 'truth',
    method: 'The edge all round the panel, by touch.',
    couldBe: [],
    doubt: 'more',
    take: ({ sign }) => roundedEdges(sign),
  },
  'sign.gloss': read('sign.gloss', 'gloss-units', 'What does a gloss meter read on the surface', 'With a gloss meter.'),
  'sign.illuminance': read('sign.illuminance', 'lx', 'What does a lux meter read on the sign', 'With a lux meter.'),
  'border.width': {
    unit: 'mm',
    method: 'Across the frame of the border.',
    couldBe: ['border'],
    doubt: 'more',
    take: ({ sign }) => borderWidth(sign),
  },
}
