import type { Translator } from '../braille/translator.js'
import type { Drawing } from '../drawing/drawing.js'
import { boxOfPoints, centreOfBox } from '../geometry/box.js'
import { Refusal } from '../refusal.js'
import { isKnown, type Assumption, type Lettering, type Sign, type Use } from '../sign/sign.js'
import { agreeing } from './agreeing.js'
import { borderOf } from './borders.js'
import { setsOfPieces } from './characters.js'
import type { Surface } from './colours.js'
import { shapesLess, type Dot } from './dots.js'
import { withinBudget } from './budget.js'
import { findBraille, type FoundBraille } from './findbraille.js'
import { labelParts, markAssumed, type Labelled } from './labelling.js'
import { couldBeCharacters } from './lettering.js'
import { overTheEdge, type Edge } from './over-the-edge.js'
import { choosePanel, onPanel, panelsOn, refusePanel, type OnSheet } from './panels.js'
import type { NamedPart, PartName } from './parts.js'
import { notSet, passedOver, saidToIgnore } from './passed-over.js'
import { findPictograms } from './pictograms.js'
import { piecesOfShape, type Piece } from './pieces.js'
import { doubtOfScale } from './scale.js'
import { colouredSets, setsOfRuns } from './sets.js'
import { sortOut } from './sorting.js'
import { stitched, type Stroked } from './stitch.js'
import { withoutOutlines } from './strokes.js'
import { readTexts } from './texts.js'
import { nothingInstalled } from './undrawn.js'
import { uprightOf } from '../geometry/upright.js'

export interface RecogniseOptions {
  use: Use
  /** Layer, id or class → part. */
  part?: Record<string, PartName>
  /** Words that may keep their capital sign in braille. */
  properNames?: string[]
  /** Of several panels on one sheet, the one that is the sign: its number or its id. */
  panel?: string | number
}

/**
 * From shapes to the sign: which shapes are braille, characters, panel, borders, pictograms; what live text says; colours.
 * Lengths in millimetres from the drawing's top left corner. What cannot be told stays unknown, with its reason.
 * @throws {Refusal} `no-tactile-elements` when nothing of a tactile sign is in the drawing; `several-signs` when it holds several
 * panels and none of them was chosen.
 */
export function recognise(given: Drawing, options: RecogniseOptions, translator: Translator): Sign {
  const { drawing, assumptions } = withoutOutlines(given)
  const { sign, sheet } = readSheet(drawing, options, translator)
  const panels = panelsOn(sheet)
  const { panel } = options
  if (panels.length === 0) return panel === undefined ? withAssumptions(sign, assumptions) : refusePanel(panel)
  const chosen = choosePanel(panels, panel)
  const text = `Panel ${chosen.number} of ${panels.length} on the sheet is the sign; what lies elsewhere was left out.`
  const alone = readSheet(onPanel(drawing, chosen), options, translator)
  return withAssumptions(alone.sign, [...assumptions, { about: 'panel', text }])
}

const withAssumptions = (sign: Sign, more: Assumption[]): Sign => ({
  ...sign,
  assumptions: [...sign.assumptions, ...more],
})

/**
 * All that a drawing holds, as one sign, and what tells whether it is several. Braille that stays open is read once more when
 * the outlined letters are known, which say what it may repeat.
 * @param read outlined letters of a first reading
 */
function readSheet(
  drawing: Drawing,
  options: RecogniseOptions,
  translator: Translator,
  read: readonly Lettering[] = [],
): { sign: Sign; sheet: OnSheet } {
  const labelled = labelParts(drawing, options.part ?? {})
  const texts = readTexts(labelled)
  const live = setsOfRuns(texts.lettering)
  const known = [...live.map((set) => set.lettering), ...read]
  const first = findBraille(labelled, texts.braille, known, translator)

  const few = first.specks.length <= MOST_SPECKS
  const { pieces, unread: tooMany } = piecesOf(labelled, few ? first.dots : [...first.dots, ...first.specks])
  const sorted = sortOut({ dots: first.dots, texts: texts.places, pieces }, drawing)
  const over = passedOver(drawing, options.part ?? {})
  const { clouds } = over
  const surfaces = surfacesOf(sorted.grounds)

  const pictured = findPictograms(sorted.pictograms, sorted.grounds, sorted.found.piece, surfaces, clouds)
  const hidden = over.unread.length > 0
  if (tooMany.length === 0) refuseNothingTactile(labelled, hidden, first, sorted.characters)
  const edge = edgeOf(sorted.found.piece, drawing)
  const written = colouredSets(live, edge.box, surfaces, clouds)
  const outlined = setsOfPieces(sorted.characters, written.lettering.length, {
    grounds: sorted.grounds,
    surfaces,
    clouds,
    braille: first.blocks,
    mayHoldBraille: first.unread.length > 0,
    specks: new Set(first.specks.map(contourOf)),
  })
  const braille = agreeing(first, outlined.lettering, () =>
    findBraille(labelled, texts.braille, [...known, ...outlined.lettering], translator),
  )
  const told = outlined.lettering.filter(({ text }) => isKnown(text))
  const open = braille.unread.length > 0 || braille.specks.length > 1
  if (open && read.length === 0 && told.length > 0) return readSheet(drawing, options, translator, told)
  const points = new Set(outlined.pieces.map((piece) => piece.contour))
  const specks = braille.specks.filter((dot) => !points.has(contourOf(dot)))

  const lettering = markAssumed([...written.lettering, ...outlined.lettering], labelled)
  const sign: Sign = {
    use: options.use,
    panel: sorted.found.panel,
    lettering,
    braille: braille.blocks,
    pictograms: pictured.pictograms,
    borders: sorted.borders.map((ring, i) => borderOf(ring, `border/${i}`)),
    properNames: options.properNames,
    installation: nothingInstalled(),
    measured: [],
    unread: [
      ...braille.unread,
      ...tooMany,
      ...unreadSpecks(specks, braille.unread.length > 0),
      ...texts.unread,
      ...outlined.unread,
      ...sorted.unread,
      ...overTheEdge(lettering, braille.blocks, edge),
      ...over.unread,
    ],
    assumptions: [
      ...drawing.assumptions,
      ...doubtOfScale(drawing, braille.blocks, braille.candidates),
      ...labelled.assumptions,
      ...braille.assumptions,
      ...sorted.assumptions,
      ...texts.assumptions,
      ...outlined.assumptions,
      ...pictured.assumptions,
    ],
    ignored: [
      ...texts.ignored,
      ...written.outside.map(({ drawn }) => ({ source: drawn.source, why: `The text lies outside the ${edge.of}.` })),
      ...sorted.ignored,
      ...braille.ignored,
      ...notSet(texts.lettering.map(({ run }) => run)),
      ...over.ignored,
      ...saidToIgnore(labelled),
    ],
  }
  const sheet: OnSheet = {
    holders: sorted.holders,
    named: pieces.filter((p) => p.named?.part === 'panel'),
    lettering: [
      ...texts.places,
      ...outlined.lettering.flatMap((l) => l.lines.flatMap(({ place }) => (place.box ? centreOfBox(place.box) : []))),
    ],
    dots: braille.dots,
  }
  return { sign, sheet }
}

/** Contours of everything that is not braille and not to be ignored, and what was too much to look at. */
function piecesOf(labelled: Labelled, dots: readonly Dot[]): { pieces: Piece[]; unread: Sign['unread'] } {
  const lessDots = shapesLess(dots)
  const left: Stroked<{ named?: NamedPart; order: number }>[] = []
  labelled.shapes.forEach(({ shape: whole, named }, order) => {
    const looked = named?.part !== 'ignore' && named?.part !== 'braille'
    const shape = looked ? lessDots(whole) : undefined
    if (shape) left.push({ shape, rest: { named, order } })
  })
  const { kept, unread } = withinBudget(left)
  const pieces = stitched(kept).flatMap(({ shape, rest }) => piecesOfShape(shape, rest.order, rest.named))
  return { pieces, unread }
}

/** Small round things that may be points of characters, up to this many; beyond, they are a pattern. */
const MOST_SPECKS = 200

const contourOf = ({ shape, contour }: Dot) => shape.contours[contour]

/** Small round things in no block and no character, where nothing was said of them yet. */
function unreadSpecks(specks: readonly Dot[], said: boolean): Sign['unread'] {
  const box = boxOfPoints(specks)
  if (!box || said) return []
  const why = `${specks.length === 1 ? 'A small round shape' : `${specks.length} small round shapes`} of no readable braille: a dot, or the point of a small character.`
  return [
    { place: { element: 'drawing', box, source: specks[0].shape.source }, why, couldBe: ['braille', 'lettering'] },
  ]
}

const surfacesOf = (grounds: readonly Piece[]): Surface[] => {
  const orders = new Map(grounds.map((g) => [g.shape, g.order]))
  return [...orders].map(([shape, order]) => ({ shape, order })).sort((a, b) => a.order - b.order)
}

function refuseNothingTactile(
  labelled: Labelled,
  hidden: boolean,
  braille: FoundBraille,
  characters: readonly Piece[],
): void {
  const named = [...labelled.shapes, ...labelled.texts].some(({ named: n }) => n !== undefined && n.part !== 'ignore')
  if (named || hidden || labelled.texts.length > 0 || braille.candidates.length > 0 || couldBeCharacters(characters))
    return
  throw new Refusal(
    'no-tactile-elements',
    'The drawing holds nothing that could be raised characters, braille, a pictogram or a border. ' +
      'If it does, say which shapes they are, with data-part attributes or the part mapping.',
  )
}

/** What everything has to stand within. */
const edgeOf = (panel: Piece | undefined, { viewport }: Drawing): Edge => {
  const page = { x: 0, y: 0, ...viewport }
  return panel
    ? { box: panel.box, of: 'panel', upright: uprightOf(panel.outline, panel.box) }
    : { box: page, of: 'page', upright: uprightOf([], page) }
}
