import type { BorderDescription, PictogramDescription } from './description.js'
import type { Facts } from './facts.js'
import { isKnown, type Border, type Panel, type Pictogram } from './sign.js'

/** Pictograms and borders from their description. */

export function describePictogram(item: PictogramDescription, index: number, facts: Facts, panel: Panel): Pictogram {
  const field = item.field && facts.box(item.field)
  const finish = facts.kind(item.finish)
  return {
    place: { element: `pictogram/${index}`, pointer: `/sign/pictograms/${index}`, ...(field && { box: field }) },
    ...(item.meaning !== undefined && { meaning: item.meaning }),
    ...(item.shape !== undefined && { shape: item.shape }),
    field: facts.kind(field),
    colour: facts.colour(item.colour),
    fieldColour: facts.colour(item.fieldColour),
    finish: isKnown(finish) ? finish : panel.finish,
    figureHeight: facts.length(item.figureHeight),
    symbol: {
      triangleEdge: facts.length(item.triangleEdge),
      circleDiameter: facts.length(item.circleDiameter),
      thickness: facts.length(item.thickness),
      centreHeight: facts.length(item.centreHeight),
      doorCentreOffset: facts.length(item.doorCentreOffset),
    },
  }
}

export function describeBorder(item: BorderDescription, index: number, facts: Facts): Border {
  const box = facts.box(item.box)
  return {
    place: { element: `border/${index}`, pointer: `/sign/borders/${index}`, box },
    box,
    width: facts.length(item.width),
    raised: facts.kind(item.raised),
    colour: facts.colour(item.colour),
    outlines: [],
  }
}
