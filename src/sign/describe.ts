import type { Translator } from '../braille/translator.js'
import type { Box } from '../geometry/box.js'
import { assumedPart } from './assumed-parts.js'
import { describeBraille } from './describe-braille.js'
import { describeBorder, describePictogram } from './describe-features.js'
import { describeInstallation } from './describe-installation.js'
import { describeMeasured } from './describe-measured.js'
import type { LetteringDescription, SignDescription } from './description.js'
import { Facts, needed } from './facts.js'
import {
  declared,
  isKnown,
  type Assumption,
  type Lettering,
  type LetteringLine,
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
  return {
    ...(description.mark !== undefined && { mark: description.mark }),
    use: description.use,
    panel,
    lettering: (description.lettering ?? []).map((item, i) =>
      describeLettering(item, i, facts, panel, description.use),
    ),
    braille: (description.braille ?? []).map((item, i) => describeBraille(item, i, facts, translator)),
    pictograms: (description.pictograms ?? []).map((item, i) => describePictogram(item, i, facts, panel)),
    borders: (description.borders ?? []).map((item, i) => describeBorder(item, i, facts)),
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
    edge: facts.kind(panel?.edge),
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
    strokeThicknessAtBase: facts.length(item.strokeThicknessAtBase),
    relief: facts.length(item.relief),
    section: facts.kind(item.section),
    characterSpacing: facts.length(item.characterSpacing),
    characterSpacingAtBase: facts.length(item.characterSpacingAtBase),
    wordSpacing: facts.length(item.wordSpacing),
    alignment: facts.kind(item.alignment),
    ...(lines.length > 1 && { baselineSpacing: spacing }),
    finish: isKnown(finish) ? finish : panel.finish,
    colour: facts.colour(item.colour),
    background: panel.colour,
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
