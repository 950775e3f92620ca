import type { Box } from '../geometry/box.js'
import { Refusal } from '../refusal.js'
import { withAssumedParts } from './assumed-parts.js'
import { combineBraille } from './combine-braille.js'
import { combineLettering } from './combine-lettering.js'
import { Merge, mergePlace, moveBox } from './merge.js'
import type { Assumption, Border, Pictogram, Sign } from './sign.js'
import { isDrawnTurned, withoutPlaces } from './turned-places.js'

/**
 * One sign from a drawing and a description of it: the description adds what a drawing cannot hold and wins where both say
 * something. Every place where they really differ is an assumption about `conflict`. Described places count from the panel's
 * top left corner and are moved to where the drawing has its panel.
 * @throws {Refusal} `invalid-description` when there is neither.
 */
export function combine(drawn?: Sign, described?: Sign): Sign {
  if (!drawn && !described) throw new Refusal('invalid-description', 'Neither a drawing nor a description was given.')
  if (!drawn || !described) return withAssumedParts((drawn ?? described) as Sign)
  return withAssumedParts(combineBoth(drawn, described))
}

function combineBoth(drawn: Sign, said: Sign): Sign {
  const merge = new Merge()
  const corner = { x: drawn.panel.place.box?.x ?? 0, y: drawn.panel.place.box?.y ?? 0 }
  const described = isDrawnTurned(drawn) ? withoutPlaces(said, drawn, corner) : said
  return {
    ...((described.mark ?? drawn.mark) !== undefined && { mark: described.mark ?? drawn.mark }),
    use: described.use,
    panel: {
      place: mergePlace(drawn.panel.place, described.panel.place, corner),
      ...(drawn.panel.turned && { turned: drawn.panel.turned }),
      width: merge.length('panel', 'width', drawn.panel.width, described.panel.width),
      height: merge.length('panel', 'height', drawn.panel.height, described.panel.height),
      finish: merge.kind('panel', 'finish', drawn.panel.finish, described.panel.finish),
      colour: merge.colour('panel', 'colour', drawn.panel.colour, described.panel.colour),
      edge: merge.kind('panel', 'edge', drawn.panel.edge, described.panel.edge),
    },
    lettering: combineLettering(drawn.lettering, described, corner, merge),
    braille: combineBraille(drawn.braille, described.braille, corner, merge),
    pictograms: combinePictograms(drawn.pictograms, described.pictograms, corner, merge),
    borders: combineBorders(drawn.borders, described.borders, corner, merge),
    ...((described.properNames ?? drawn.properNames) && { properNames: described.properNames ?? drawn.properNames }),
    installation: described.installation,
    measured: described.measured,
    unread: [...drawn.unread, ...described.unread],
    assumptions: [...drawn.assumptions, ...stillAssumed(described, drawn), ...merge.conflicts],
    ignored: drawn.ignored,
  }
}

/** What the drawing settles needs no assumption of the description. */
const SETTLED_BY_DRAWING = ['borders', 'pictograms', 'part']

const stillAssumed = (described: Sign, drawn: Sign): Assumption[] =>
  described.assumptions.filter(
    ({ about }) => !SETTLED_BY_DRAWING.includes(about) || (about === 'part' && drawn.lettering.length === 0),
  )

function combinePictograms(drawn: Pictogram[], described: Pictogram[], corner: Corner, merge: Merge): Pictogram[] {
  const paired = drawn.map((from, i): Pictogram => {
    const to = described[i]
    if (!to) return from
    const at = `pictogram/${i}`
    return {
      place: mergePlace(from.place, to.place, corner),
      ...((to.meaning ?? from.meaning) !== undefined && { meaning: to.meaning ?? from.meaning }),
      ...((to.shape ?? from.shape) !== undefined && { shape: to.shape ?? from.shape }),
      field: merge.box(at, 'field', from.field, to.field, corner),
      colour: merge.colour(at, 'colour', from.colour, to.colour),
      fieldColour: merge.colour(at, 'fieldColour', from.fieldColour, to.fieldColour),
      finish: merge.kind(at, 'finish', from.finish, to.finish),
      figureHeight: to.figureHeight,
      ...(from.figure && { figure: from.figure }),
      ...(from.outlines && { outlines: from.outlines }),
      symbol: to.symbol,
    }
  })
  const added = described.slice(drawn.length).map((item) => ({
    ...item,
    place: movePlace(item.place, corner),
    field: merge.box('', '', undefined, item.field, corner),
  }))
  return [...paired, ...added]
}

function combineBorders(drawn: Border[], described: Border[], corner: Corner, merge: Merge): Border[] {
  const paired = drawn.map((from, i): Border => {
    const to = described[i]
    if (!to) return from
    const at = `border/${i}`
    const box = moveBox(to.box, corner)
    merge.compareBoxes(at, 'box', from.box, box)
    return {
      place: mergePlace(from.place, to.place, corner),
      box,
      width: merge.length(at, 'width', from.width, to.width),
      raised: merge.kind(at, 'raised', from.raised, to.raised),
      colour: merge.colour(at, 'colour', from.colour, to.colour),
      outlines: from.outlines,
    }
  })
  const added = described
    .slice(drawn.length)
    .map((item) => ({ ...item, place: movePlace(item.place, corner), box: moveBox(item.box, corner) }))
  return [...paired, ...added]
}

type Corner = { x: number; y: number }

const movePlace = <P extends { box?: Box }>(place: P, by: Corner): P =>
  place.box ? { ...place, box: moveBox(place.box, by) } : place
