import type { Translator } from '../braille/translator.js'
import type { Box } from '../geometry/box.js'
import { assumedPart } from './assumed-parts.js'
import { describeBraille } from './describe-braille.js'
import type { LetteringDescription, MeasuredDescription, SignDescription } from './description.js'
import { Facts, needed } from './facts.js'
import { toMillimetres, type Unit } from './length.js'
import { MEASURABLE } from './quantities.js'
import {
  declared,
  isKnown,
  type Assumption,
  type Installation,
  type Lettering,
  type LetteringLine,
  type MeasuredQuantity,
  type Panel,
  type Sign,
} from './sign.js'

/** Where the description stands in the body of a request. */
const ROOT = '/sign'

/**
 * The sign that a description tells of, in millimetres. Every place carries the JSON Pointer of its part of the description;
 * what is not given is a missing fact. Braille cells are the translation of the text in the declared code; a text that
 * cannot be translated leaves them unknown.
 */
export function describe(description: SignDescription, translator: Translator): Sign {
  const facts = new Facts(description.units ?? 'mm')
  const panel = describePanel(description.panel, facts)
  const orPanels = (finish: Panel['finish']): Panel['finish'] => (isKnown(finish) ? finish : panel.finish)
  return {
    ...(description.mark !== undefined && { mark: description.mark }),
    use: description.use,
    panel,
    lettering: (description.lettering ?? []).map((item, i) =>
      describeLettering(item, i, facts, panel, description.use),
    ),
    braille: (description.braille ?? []).map((item, i) => describeBraille(item, i, facts, translator)),
    pictograms: (description.pictograms ?? []).map((item, i) => {
      const field = item.field && facts.box(item.field)
      return {
        place: place(`pictogram/${i}`, `${ROOT}/pictograms/${i}`, field),
        ...(item.meaning !== undefined && { meaning: item.meaning }),
        ...(item.shape !== undefined && { shape: item.shape }),
        field: facts.kind(field),
        colour: facts.colour(item.colour),
        fieldColour: facts.colour(item.fieldColour),
        finish: orPanels(facts.kind(item.finish)),
      }
    }),
    borders: (description.borders ?? []).map((item, i) => {
      const box = facts.box(item.box)
      return {
        place: place(`border/${i}`, `${ROOT}/borders/${i}`, box),
        box,
        width: facts.length(item.width),
        raised: facts.kind(item.raised),
        outlines: [],
      }
    }),
    ...(description.properNames && { properNames: description.properNames }),
    installation: describeInstallation(description.installation, facts),
    measured: (description.measured ?? []).map((item, i) => describeMeasured(item, i, facts.units)),
    unread: [],
    assumptions: assumptionsOf(description),
    ignored: [],
  }
}

const place = (element: string, pointer: string, box?: Box) => ({ element, pointer, ...(box && { box }) })

function describePanel(panel: SignDescription['panel'], facts: Facts): Panel {
  const width = facts.length(panel?.width)
  const height = facts.length(panel?.height)
  const box = isKnown(width) && isKnown(height) ? { x: 0, y: 0, width: width.value, height: height.value } : undefined
  return {
    place: place('panel', `${ROOT}/panel`, box),
    width,
    height,
    finish: facts.kind(panel?.finish),
    colour: facts.colour(panel?.colour),
  }
}

function describeLettering(
  item: LetteringDescription,
  index: number,
  facts: Facts,
  panel: Panel,
  use: Sign['use'],
): Lettering {
  const element = `lettering/${index}`
  const pointer = `${ROOT}/lettering/${index}`
  const lines = item.lines ?? [item.text]
  const start = facts.point(item.baseline)
  const spacing = needed(facts.length(item.baselineSpacing), 'baselineSpacing')
  const baselineOf = (line: number): LetteringLine['baseline'] => {
    if (!isKnown(start) || line === 0) return start
    return isKnown(spacing) ? declared({ x: start.value.x, y: start.value.y + line * spacing.value }) : spacing
  }
  const finish = facts.kind(item.finish)
  return {
    place: place(element, pointer),
    part: item.part ?? assumedPart(use),
    ...(item.part === undefined && { partAssumed: true }),
    text: facts.kind(item.lines?.join(' ') ?? item.text),
    lines: lines.map((text, line) => ({
      place: place(`${element}/line/${line}`, item.lines ? `${pointer}/lines/${line}` : `${pointer}/text`),
      text: facts.kind(text),
      baseline: baselineOf(line),
      outlines: [],
    })),
    ...(item.typeface?.family !== undefined && { family: item.typeface.family }),
    style: facts.kind(item.typeface?.style),
    characterProportion: facts.kind(item.characterProportion),
    characterHeight: facts.length(item.characterHeight),
    strokeThickness: facts.length(item.strokeThickness),
    relief: facts.length(item.relief),
    section: facts.kind(item.section),
    characterSpacing: facts.length(item.characterSpacing),
    characterSpacingAtBase: facts.length(item.characterSpacingAtBase),
    ...(lines.length > 1 && { baselineSpacing: spacing }),
    finish: isKnown(finish) ? finish : panel.finish,
    colour: facts.colour(item.colour),
    background: panel.colour,
  }
}

function describeInstallation(installation: SignDescription['installation'], facts: Facts): Installation {
  return {
    panelBottomHeight: facts.length(installation?.panelBottomHeight),
    side: facts.kind(installation?.side),
    approach: facts.kind(installation?.approach),
    viewingDistance: facts.length(installation?.viewingDistance),
    leafWidth: facts.length(installation?.door?.leafWidth),
    swing: facts.kind(installation?.door?.swing),
    latchToTextCentre: facts.length(installation?.door?.latchToTextCentre),
  }
}

function describeMeasured(item: MeasuredDescription, index: number, units: Unit): MeasuredQuantity {
  const unit = MEASURABLE[item.quantity] === 'ratio' ? 'ratio' : (item.unit ?? units)
  const toModel = (value: number): number => (unit === 'ratio' ? value : toMillimetres(value, unit))
  return {
    quantity: item.quantity,
    values: item.values.map(toModel),
    ...(item.expandedUncertainty !== undefined && { expandedUncertainty: toModel(item.expandedUncertainty) }),
    ...(item.instrument !== undefined && { instrument: item.instrument }),
    place: place(`measured/${index}`, `${ROOT}/measured/${index}`),
  }
}

function assumptionsOf(description: SignDescription): Assumption[] {
  const assumptions: Assumption[] = []
  const say = (about: string, text: string) => void assumptions.push({ about, text })
  if (description.units === undefined) say('units', 'No units were given; bare lengths are taken as millimetres.')
  if (description.borders === undefined) say('borders', 'No borders were described; the sign is taken to have none.')
  if (description.pictograms === undefined)
    say('pictograms', 'No pictograms were described; the sign is taken to have none.')
  description.lettering?.forEach((item, i) => {
    if (item.part === undefined)
      say('part', `lettering/${i}: no part was given; ${TAKEN_FOR[assumedPart(description.use)]}.`)
    checkLines(item, `lettering/${i}`)
  })
  description.braille?.forEach((item, i) => {
    if (item.code === undefined && (item.text ?? item.lines) !== undefined)
      say('braille-code', `braille/${i}: no code was given; contracted Unified English Braille is taken.`)
    checkLines(item, `braille/${i}`)
  })
  return assumptions

  function checkLines(item: { text?: string; lines?: string[] }, element: string) {
    if (item.text === undefined || item.lines === undefined || words(item.text) === words(item.lines.join(' '))) return
    say('conflict', `${element}: the text and the lines differ; the lines are what is on the sign and are judged.`)
  }
}

const TAKEN_FOR = {
  both: 'one set of characters is taken to serve touch and sight',
  visual: 'the characters are taken to be for sight',
  raised: 'the characters are taken to be raised',
}

const words = (text: string): string => text.trim().split(/\s+/u).join(' ')
