import { isKnown, type BrailleBlock, type Fact, type Place, type Sign, type Unknown } from '../sign/sign.js'
import { NO_BRAILLE } from './braille.js'
import { unplaced, unsized } from './dots.js'
import { basisOf, gapOf, nothing, pointerOf } from './facts.js'
import { ASKEW, extentOfField, extentOfFigure } from './field.js'
import { extentOfBlock, frameOf, linesOf, type Extent } from './frame.js'
import { baselines, extreme, highest, levelAt, lowest, panelBottom, type Choice, type Level } from './heights.js'
import { letteringIn, NO_LETTERING, noLettering, raisedLettering, type Numbered } from './lettering.js'
import type { Gap, Observation } from './measurement.js'
import { HEIGHT_ASK, lowerEdge, panelSide } from './panel-edges.js'
import { placeAsk } from './placing.js'
import type { Found, Quantities, Quantity } from './quantity.js'

/**
 * How high the sign and what is on it are mounted. Datum: the finish floor. Codes differ in the point that they mean, so each has a
 * quantity of its own: baselines (2010 ADA Standards 703.4.1), the edges of all that is felt or the one line of characters (NCC 2022,
 * S15C2), the middle of the panel (ADAAG 1991, 4.30.6), the upper edge of the content (VAböV, article 5).
 */

const NO_TACTILE = 'The sign has nothing to read by touch.'
const NO_RAISED = 'The sign has no raised characters.'

interface Edges {
  levels: Level[]
  gaps: Gap[]
}

/** The upper or lower edges of lines of characters. What hangs below a baseline or stands above a capital shows in outlines only. */
function edgesOfCharacters(sign: Sign, lettering: Numbered[], side: 'top' | 'bottom'): Edges {
  const edge = lowerEdge(sign)
  const found: Edges = { levels: [], gaps: [] }
  for (const { lettering: set, n } of lettering) {
    const extents = linesOf(set, frameOf(sign))
    set.lines.forEach((line, i) => {
      const extent = extents[i]
      if (!extent) {
        found.gaps.push(gapOf(NOT_PLACED, set.place, placeAsk(set, n)))
        return
      }
      const basis = line.outlines.length > 0 ? DRAWN : isKnown(line.baseline) ? line.baseline : DRAWN
      found.levels.push(levelAt(extent[side], basis, edge, [line.place]))
      const text = isKnown(line.text) ? line.text.value : ''
      if (line.outlines.length === 0 && REACHES[side].test(text.normalize('NFD')))
        found.levels.push(beyond(extent, side, edge, line.place))
    })
  }
  return found
}

/** Where an end lies that reaches beyond the line: no farther than the characters are high. */
function beyond({ top, bottom }: Extent, side: 'top' | 'bottom', edge: Fact<number>, place: Place): Level {
  const ask = { pointer: '/drawing', ask: 'What does the sign look like, at true scale?' }
  const level: Level = { up: OUTLINES_TELL, places: [place], ask }
  if (!isKnown(edge)) return level
  const [at, most] = side === 'top' ? [top, top - (bottom - top)] : [bottom, bottom + (bottom - top)]
  return { ...level, between: [edge.value - at, edge.value - most] }
}

const DRAWN = { basis: 'drawn' as const }
const NOT_PLACED: Unknown = { unknown: 'missing-fact', why: 'the place of the characters is not known' }
const OUTLINES_TELL: Unknown = {
  unknown: 'missing-fact',
  why: 'how far some characters reach beyond the line is not known without their outlines',
}

/** Characters of many typefaces that reach below the baseline, and marks that stand above capitals. */
const REACHES = { bottom: /[gjpqyQ,;]/u, top: /\p{M}/u }

function edgesOfBraille(sign: Sign, side: 'top' | 'bottom'): Edges {
  const edge = lowerEdge(sign)
  const found: Edges = { levels: [], gaps: [] }
  sign.braille.forEach((block, n) => {
    found.gaps.push(...unplaced(block, n))
    const extent = extentOfBlock(block, frameOf(sign))
    if (!extent) return
    if (!isKnown(block.dotBaseDiameter)) found.gaps.push(unsized(block, n))
    else found.levels.push(levelAt(extent[side], block.dotBaseDiameter, edge, [block.place]))
  })
  return found
}

const both = (a: Edges, b: Edges): Edges => ({ levels: [...a.levels, ...b.levels], gaps: [...a.gaps, ...b.gaps] })

function extremeOf(sign: Sign, { levels, gaps }: Edges, pick: Choice, none: string): Found {
  if (levels.length + gaps.length === 0) return nothing(none)
  const found = extreme(sign, levels, pick)
  return { observations: found.observations, gaps: [...gaps, ...found.gaps] }
}

/** The edges of all that is felt. */
function tactile(sign: Sign, side: 'top' | 'bottom'): Found {
  const edges = both(edgesOfCharacters(sign, raisedLettering(sign), side), edgesOfBraille(sign, side))
  return extremeOf(sign, edges, side === 'top' ? highest : lowest, NO_TACTILE)
}

/** The upper edge of all that is on the sign. */
function content(sign: Sign): Found {
  const all = sign.lettering.map((lettering, n) => ({ lettering, n }))
  const edges = both(edgesOfCharacters(sign, all, 'top'), edgesOfBraille(sign, 'top'))
  const edge = lowerEdge(sign)
  const frame = frameOf(sign)
  for (const [n, pictogram] of sign.pictograms.entries()) {
    const { field, figure, place } = pictogram
    const extent = isKnown(field) ? extentOfField(pictogram, field, frame) : extentOfFigure(pictogram, frame)
    if (extent) edges.levels.push(levelAt(extent.top, isKnown(field) ? field : DRAWN, edge, [place]))
    else if (isKnown(field) || figure) edges.gaps.push(gapOf(ASKEW, place))
    else {
      const ask = { pointer: pointerOf(place, 'pictograms', n, 'field'), ask: 'Where is the field of the pictogram?' }
      edges.gaps.push(gapOf({ unknown: 'missing-fact', why: 'the place of the pictogram is not known' }, place, ask))
    }
  }
  return extremeOf(sign, edges, highest, 'The sign has nothing on it.')
}

function ofBaselines(sign: Sign, lettering: Numbered[], blocks: BrailleBlock[], pick: Choice, none: string): Found {
  const all = baselines(sign, lettering, blocks)
  return all.length > 0 ? extreme(sign, all, pick) : nothing(none)
}

/** The lowest or highest baseline that is read by touch; with braille, or where no characters are raised, of the braille too. */
function tactileBaselines(sign: Sign, pick: Choice, braille: boolean): Found {
  const lettering = raisedLettering(sign)
  const raised = lettering.some(({ lettering: { lines } }) => lines.length > 0)
  return ofBaselines(sign, lettering, braille || !raised ? sign.braille : [], pick, NO_TACTILE)
}

/** Each line of raised characters from its baseline to its top, both above the floor. */
function tactileLine(sign: Sign): Found {
  const raised = raisedLettering(sign)
  if (raised.length === 0) return nothing(NO_RAISED)
  const tops = edgesOfCharacters(sign, raised, 'top')
  const ends = [
    extremeOf(sign, { levels: baselines(sign, raised, []), gaps: [] }, lowest, NO_LETTERING),
    extremeOf(sign, tops, highest, NO_LETTERING),
  ]
  const gaps = ends.flatMap((end) => end.gaps)
  const [low, high] = ends.map((end) => end.observations[0])
  if (gaps.length > 0 || typeof low?.value !== 'number' || typeof high?.value !== 'number')
    return { observations: [], gaps: onceEach(gaps) }
  const observation: Observation = {
    value: (low.value + high.value) / 2,
    min: low.value,
    max: high.value,
    basis: basisOf(low, high),
    places: low.places,
    ...(low.context && { context: low.context }),
  }
  return { observations: [observation], gaps: [] }
}

const onceEach = (gaps: Gap[]): Gap[] =>
  gaps.filter((gap, i) => gaps.findIndex(({ why, ask }) => why === gap.why && ask?.pointer === gap.ask?.pointer) === i)

/** The middle of the panel. */
function centre(sign: Sign): Found {
  const bottom = panelBottom(sign)
  const height = panelSide(sign, 'height')
  const { place } = sign.panel
  const gaps = [...('reason' in bottom ? [bottom] : []), ...(isKnown(height) ? [] : [gapOf(height, place, HEIGHT_ASK)])]
  if ('reason' in bottom || !isKnown(height)) return { observations: [], gaps }
  const context = { panelBottomHeight: bottom.value }
  const value = bottom.value + height.value / 2
  return { observations: [{ value, basis: basisOf(bottom, height), places: [place], context }], gaps: [] }
}

const row = (method: string, couldBe: Quantity['couldBe'], take: Quantity['take']): Quantity => ({
  unit: 'mm',
  method,
  couldBe,
  doubt: 'more',
  take,
})

const READ: Quantity['couldBe'] = ['braille', 'lettering']

export const MOUNTING: Quantities = {
  'installation.lowestBaseline': row(
    'From the finish floor up to the lowest baseline that is read by touch, braille included.',
    READ,
    ({ sign }) => tactileBaselines(sign, lowest, true),
  ),
  'installation.highestBaseline': row(
    'From the finish floor up to the baseline of the highest raised characters.',
    ['lettering'],
    ({ sign }) => tactileBaselines(sign, highest, false),
  ),
  'installation.raisedLowestBaseline': row(
    'From the finish floor up to the baseline of the lowest raised characters.',
    ['lettering'],
    ({ sign }) => ofBaselines(sign, raisedLettering(sign), [], lowest, NO_RAISED),
  ),
  'installation.brailleBaselineLowest': row(
    'From the finish floor up to the lowest baseline of the braille.',
    ['braille'],
    ({ sign }) => ofBaselines(sign, [], sign.braille, lowest, NO_BRAILLE),
  ),
  'installation.brailleBaselineHighest': row(
    'From the finish floor up to the highest baseline of the braille.',
    ['braille'],
    ({ sign }) => ofBaselines(sign, [], sign.braille, highest, NO_BRAILLE),
  ),
  'installation.lowestTactile': row(
    'From the finish floor up to the lowest edge of raised characters and braille dots.',
    READ,
    ({ sign }) => tactile(sign, 'bottom'),
  ),
  'installation.highestTactile': row(
    'From the finish floor up to the highest edge of raised characters and braille dots.',
    READ,
    ({ sign }) => tactile(sign, 'top'),
  ),
  'installation.tactileLine': row(
    'From the finish floor up to the baseline and to the top of the raised characters.',
    ['lettering'],
    ({ sign }) => tactileLine(sign),
  ),
  'installation.brailleHighest': row(
    'From the finish floor up to the upper edge of the highest braille dots.',
    ['braille'],
    ({ sign }) => extremeOf(sign, edgesOfBraille(sign, 'top'), highest, NO_BRAILLE),
  ),
  'installation.topHeight': row(
    'From the finish floor up to the upper edge of the highest line, braille or pictogram.',
    ['braille', 'lettering', 'pictogram'],
    ({ sign }) => content(sign),
  ),
  'installation.centreHeight': row('From the finish floor up to the middle of the panel.', [], ({ sign }) =>
    centre(sign),
  ),
  'visual.heightAboveFloor': row(
    'From the finish floor up to the lowest baseline of the characters.',
    ['lettering'],
    ({ sign, scope }) => ofBaselines(sign, letteringIn({ sign, scope }), [], lowest, noLettering({ sign, scope })),
  ),
}
