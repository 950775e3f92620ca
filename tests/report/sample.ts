import type { Translator } from '../../src/braille/translator.js'
import type { CheckInput } from '../../src/check.js'
import type { Judgement } from '../../src/judge/finding.js'
import type { Observation } from '../../src/measure/measurement.js'
import { makeReport } from '../../src/report/make.js'
import type { Report } from '../../src/report/schema.js'
import { declared, missing, type Place, type Sign } from '../../src/sign/sign.js'
import type { LoadedStandard } from '../../src/standards/catalogue.js'
import type { Requirement } from '../../src/standards/standard.js'

/** A hand-made sign and hand-made judgements of it. All values of the sign are invented. */

export const LINE: Place = {
  element: 'braille/0/line/0',
  box: { x: 30, y: 78, width: 19.5, height: 6.4 },
  source: { id: 'dots', line: 41, column: 3 },
}
export const LETTERS: Place = {
  element: 'lettering/0',
  box: { x: 30, y: 30, width: 62, height: 20 },
  pointer: '/sign/lettering/0',
}

const bar = (x: number, y: number, width: number, height: number) => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
]

/** H, I, L, L from straight bars, with their feet on the baseline. */
const HILL = [
  ...[bar(30, 30, 3, 20), bar(33, 38.5, 9, 3), bar(42, 30, 3, 20)],
  bar(51, 30, 3, 20),
  ...[bar(60, 30, 3, 20), bar(63, 47, 8, 3)],
  ...[bar(76, 30, 3, 20), bar(79, 47, 8, 3)],
]

const DOTS = [
  ...[
    [30, 78],
    [30, 80.4],
    [32.4, 80.4],
  ],
  ...[
    [35.8, 80.4],
    [38.2, 78],
  ],
  ...[
    [41.6, 78],
    [41.6, 80.4],
    [41.6, 82.8],
  ],
  ...[
    [47.4, 78],
    [47.4, 80.4],
    [47.4, 82.8],
  ],
].map(([x, y]) => ({ x: x ?? 0, y: y ?? 0 }))

export function sampleSign(changes: Partial<Sign> = {}): Sign {
  return {
    mark: 'L-17',
    use: 'permanent-room',
    panel: {
      place: { element: 'panel', box: { x: 0, y: 0, width: 130, height: 110 } },
      width: declared(130),
      height: declared(110),
      finish: declared('glossy'),
      colour: declared({ css: '#f3efe2', luminance: 0.86 }),
      edge: missing(),
    },
    lettering: [
      {
        place: LETTERS,
        part: 'both',
        text: declared('HILL'),
        lines: [
          {
            place: { ...LETTERS, element: 'lettering/0/line/0' },
            text: declared('HILL'),
            baseline: declared({ x: 30, y: 50 }),
            outlines: HILL,
          },
        ],
        style: declared('sans-serif'),
        characterProportion: missing(),
        characterHeight: declared(20),
        strokeThickness: declared(3.2),
        strokeThicknessAtBase: missing(),
        relief: missing(),
        section: missing(),
        characterSpacing: declared(5),
        characterSpacingAtBase: missing(),
        wordSpacing: missing(),
        alignment: missing(),
        finish: missing(),
        colour: declared({ css: '#1d2b3a', luminance: 0.02 }),
        background: declared({ css: '#f3efe2', luminance: 0.86 }),
      },
    ],
    braille: [
      {
        place: { element: 'braille/0', box: LINE.box },
        lines: [
          { place: LINE, cells: declared('⠓⠊⠇⠇'), text: 'hill', dots: DOTS, baseline: declared({ x: 30, y: 82.8 }) },
        ],
        dotBaseDiameter: declared(1.55),
        dotHeight: missing(),
        dotShape: missing(),
        dotSpacing: declared(2.4),
        cellSpacing: declared(5.8),
        alignment: missing(),
        rotation: 0,
        mirrored: false,
      },
    ],
    pictograms: [],
    borders: [
      {
        place: { element: 'border/0' },
        box: { x: 4, y: 4, width: 122, height: 102 },
        width: declared(1.5),
        raised: declared(true),
        colour: missing(),
        outlines: [],
      },
    ],
    installation: {
      panelBottomHeight: missing(),
      side: missing(),
      approach: missing(),
      viewingDistance: missing(),
      leafWidth: missing(),
      swing: missing(),
      latchToTextCentre: missing(),
      leaves: missing(),
      wallAtLatch: missing(),
      edgeToArchitrave: missing(),
      edgeToJamb: missing(),
      handleHeight: missing(),
      latchToCorner: missing(),
      wallColour: missing(),
      clearWall: missing(),
      nearestApproach: missing(),
      jambs: missing(),
      controlSide: missing(),
    },
    measured: [],
    unread: [],
    assumptions: [{ about: 'scale', text: 'The drawing gives its size in CSS px, read as 96 to the inch.' }],
    ignored: [{ source: { id: 'logo', line: 12, column: 5 }, why: 'An image is not looked at.' }],
    ...changes,
  }
}

export function requirement(name: string, changes: Partial<Requirement> = {}): Requirement {
  const [, clause = ''] = name.split('/')
  return {
    requirement: name,
    clause,
    title: 'Cell spacing',
    text: 'Neighbouring cells stand within the printed range, centre to centre.',
    force: 'shall',
    stage: 'drawing',
    quantity: 'braille.cellSpacing',
    limit: { kind: 'yes', printed: '' },
    exceptions: [],
    scope: { uses: ['permanent-room'], when: [], clause: '216.2' },
    howToMeasure: 'Callipers over ten cells, divided by ten.',
    citation: { source: 'ADA', confidence: 'verified' },
    ...changes,
  }
}

export const observation = (value: Observation['value'], changes: Partial<Observation> = {}): Observation => ({
  value,
  basis: 'drawn',
  places: [LINE],
  ...changes,
})

/** Cell spacing: 0.241 in (6.1 mm) to 0.300 in (7.6 mm), 2010 ADA Standards, Table 703.3.1. */
export const CELL_SPACING = {
  kind: 'length' as const,
  min: 0.241 * 25.4,
  max: 0.3 * 25.4,
  other: { min: 6.1, max: 7.6 },
  unit: 'mm' as const,
  printed: '0.241 inch (6.1 mm) to 0.300 inch (7.6 mm)',
  clause: '703.3.1',
}

/** A judgement of the cell spacing, changed as wanted. */
export function judgement(changes: Partial<Judgement> = {}, value = 5.8): Judgement {
  const seen = [observation(value, { min: value, max: value, count: 3, uncertainty: 0.01 })]
  return {
    requirement: requirement('us-ada-2010/703.3.1/cell-spacing'),
    verdict: 'fail',
    reason: null,
    measurement: { quantity: 'braille.cellSpacing', unit: 'mm', method: 'lattice fit', observations: seen, gaps: [] },
    limit: CELL_SPACING,
    decisive: seen,
    gaps: [],
    margin: value - CELL_SPACING.min,
    unitSplit: null,
    ...changes,
  }
}

/** Several rows: three failures, one advice, four undecided, one pass, one that does not apply. */
export function sampleJudgements(): Judgement[] {
  const finish = [
    observation('glossy', {
      basis: 'declared',
      places: [{ element: 'panel', box: { x: 0, y: 0, width: 130, height: 110 } }],
    }),
  ]
  const stroke = [observation(0.16, { places: [LETTERS], context: { characterHeight: 20 } })]
  const gap = (why: string, pointer: string, place: Place) => ({
    reason: 'missing-fact' as const,
    why,
    places: [place],
    ask: { pointer, ask: why.replace('is not given', '').trim() + '?', unit: 'mm' as const },
  })
  const open = (
    name: string,
    title: string,
    stage: Requirement['stage'],
    quantity: string,
    why: string,
    pointer: string,
    place: Place,
  ): Judgement => ({
    ...judgement(),
    requirement: requirement(`us-ada-2010/${name}`, {
      title,
      stage,
      quantity,
      howToMeasure: 'Depth gauge against the face of the panel.',
    }),
    verdict: 'undetermined',
    reason: 'missing-fact',
    measurement: undefined,
    limit: {
      kind: 'length',
      min: 0.79375,
      unit: 'mm',
      printed: '1/32 inch (0.8 mm) minimum',
      clause: name.split('/')[0] ?? '',
    },
    decisive: [],
    gaps: [gap(why, pointer, place)],
    margin: null,
  })
  return [
    open(
      '703.2.1/relief',
      'Relief',
      'product',
      'raised.relief',
      'The relief is not given',
      '/sign/lettering/0/relief',
      LETTERS,
    ),
    {
      ...judgement(),
      requirement: requirement('us-ada-2010/703.2.6/stroke-thickness', {
        title: 'Stroke thickness',
        quantity: 'raised.strokeThickness',
        text: 'The stroke of the letter I is at most the printed share of its height.',
      }),
      measurement: {
        quantity: 'raised.strokeThickness',
        unit: 'ratio',
        method: 'stroke of I over its height',
        observations: stroke,
        gaps: [],
      },
      limit: {
        kind: 'ratio',
        max: 0.15,
        unit: 'ratio',
        printed: '15 percent maximum of the height of the character',
        clause: '703.2.6',
      },
      decisive: stroke,
      margin: -0.01,
    },
    {
      ...judgement(),
      requirement: requirement('us-ada-2010/703.2.7/border-clearance', { title: 'Clearance to the border' }),
      verdict: 'not-applicable',
      because: 'The sign has no raised border',
      measurement: undefined,
      decisive: [],
      margin: null,
    },
    judgement(),
    {
      ...judgement({}, 2.4),
      requirement: requirement('us-ada-2010/703.3.1/dot-spacing', {
        title: 'Dot spacing',
        quantity: 'braille.dotSpacing',
      }),
      verdict: 'pass',
      limit: {
        ...CELL_SPACING,
        min: 2.286,
        max: 2.54,
        other: { min: 2.3, max: 2.5 },
        printed: '0.090 inch (2.3 mm) to 0.100 inch (2.5 mm)',
      },
      margin: 0.114,
    },
    open(
      '703.3.1/dot-height',
      'Dot height',
      'product',
      'braille.dotHeight',
      'The dot height is not given',
      '/sign/braille/0/dotHeight',
      LINE,
    ),
    open(
      '703.4.1/lowest-baseline',
      'Lowest baseline',
      'site',
      'installation.lowestBaseline',
      'The height of the panel above the floor is not given',
      '/sign/installation/panelBottomHeight',
      { element: 'installation' },
    ),
    open(
      '703.4.1/highest-baseline',
      'Highest baseline',
      'site',
      'installation.highestBaseline',
      'The height of the panel above the floor is not given',
      '/sign/installation/panelBottomHeight',
      { element: 'installation' },
    ),
    {
      ...judgement(),
      requirement: requirement('us-ada-2010/703.5.1/finish', {
        title: 'Finish',
        stage: 'product',
        quantity: 'visual.finish',
        text: 'Characters and background have a non-glare finish.',
      }),
      measurement: { quantity: 'visual.finish', unit: 'kind', method: 'as declared', observations: finish, gaps: [] },
      limit: {
        kind: 'one-of',
        pass: ['non-glare', 'matte', 'eggshell'],
        unit: 'kind',
        printed: 'non-glare finish',
        clause: '703.5.1',
      },
      decisive: finish,
      margin: null,
    },
    {
      ...judgement(),
      requirement: requirement('us-ada-2010/A4.30.5/contrast-advice', {
        title: 'Contrast of 70 percent',
        force: 'advice',
        quantity: 'contrast.share',
      }),
      measurement: {
        quantity: 'contrast.share',
        unit: 'ratio',
        method: '(B1 - B2) / B1',
        observations: [observation(0.62, { places: [LETTERS] })],
        gaps: [],
      },
      limit: { kind: 'ratio', min: 0.7, unit: 'ratio', printed: '70 percent', clause: 'A4.30.5' },
      decisive: [observation(0.62, { places: [LETTERS] })],
      margin: -0.08,
    },
  ]
}

export const translator: Translator = {
  identity: {
    engine: 'invented engine',
    version: '0',
    tables: { 'ueb-contracted': 'two.ctb', 'ueb-uncontracted': 'one.ctb' },
    digest: 'sha256-00',
  },
  toCells: (text) => text,
  toText: (cells) => cells,
}

export const standard: LoadedStandard = {
  id: 'us-ada-2010',
  title: '2010 ADA Standards for Accessible Design',
  edition: '2010',
  kind: 'code',
  changes: [{ revision: 1, date: '2026-01-01', text: 'First table.', requirements: [] }],
  gaps: [],
  jurisdiction: 'United States',
  revision: 1,
  firstUnit: 'in',
  setAside: {},
  sources: { ADA: { document: '2010 ADA Standards for Accessible Design', where: 'ada.gov' } },
  requirements: [requirement('us-ada-2010/703.3.1/cell-spacing')],
  digest: 'sha256-11',
}

export const sampleInput: CheckInput = {
  standards: ['us-ada-2010'],
  options: { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
}

export function sampleReport(sign = sampleSign(), judgements = sampleJudgements(), input = sampleInput): Report {
  return makeReport({ input, sign, standards: [standard], judgements: [judgements], translator })
}
