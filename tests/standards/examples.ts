import { PUMP_ROOM, TWO_SETS, withValues } from '../measure/signs.js'

/** For every row a sign that passes it, one that fails it and one that leaves it open. All signs and sizes are invented. */

type Json = Record<string, unknown>

export interface Example {
  pass?: Json
  fail?: Json
  undetermined?: Json
  /** Verdicts that no sign can have, with the reason. */
  never?: { verdicts: ('pass' | 'fail' | 'undetermined')[]; why: string }
}

const from = (values: Record<string, unknown>) => withValues(PUMP_ROOM, values)
const without = (...paths: string[]) => from(Object.fromEntries(paths.map((path) => [path, undefined])))
const l = (key: string) => `lettering.0.${key}`
const b = (key: string) => `braille.0.${key}`

/** Passes as it is; fails with another value; open without it. */
const value = (path: string, wrong: unknown, base: Json = PUMP_ROOM): Example => ({
  pass: base,
  fail: withValues(base, { [path]: wrong }),
  undetermined: withValues(base, { [path]: undefined }),
})

const VISUAL_ONLY = [{ ...(TWO_SETS.lettering as Json[])[0] }]
const forUse = (use: string, values: Record<string, unknown> = {}) => from({ use, ...values })
const paintedOnly = (use: string) => forUse(use, { lettering: VISUAL_ONLY })
const JUDGEMENT = 'only a person at the place or with the printed figure can tell'
const byPerson = (use: string): Example => ({
  undetermined: forUse(use),
  never: { verdicts: ['pass', 'fail'], why: JUDGEMENT },
})
const NOT_READ = 'a described sign has nothing that was not read; see tests/measure/unread.test.ts'

const LANDING = (height: number) => forUse('elevator-landing', { [l('characterHeight')]: height })
const FIELD = { x: 10, y: 10, width: 160, height: 160 }
const PICTOGRAM = from({
  panel: { width: 260, height: 400, finish: 'matte', colour: '#ffffff' },
  pictograms: [{ meaning: 'pump', field: FIELD, colour: '#000000', fieldColour: '#ffffff', finish: 'matte' }],
  [l('baseline')]: { x: 20, y: 220 },
  [b('origin')]: { x: 20, y: 280 },
})
const SYMBOL = withValues(PICTOGRAM, { use: 'symbol-of-accessibility', 'pictograms.0.meaning': 'wheelchair' })
const p = (key: string) => `pictograms.0.${key}`
const frame = (box: Json) => from({ borders: [{ box, width: 2, raised: true }] })
const FAR = frame({ x: -100, y: -100, width: 600, height: 600 })
const CONTROL = (word: string) =>
  forUse('elevator-car-control', {
    pictograms: [{ meaning: 'door open' }],
    lettering: undefined,
    braille: [{ ...(PUMP_ROOM.braille as Json[])[0], lines: undefined, text: word }],
  })
const CONTROL_UNREAD = withValues(CONTROL('open'), { 'braille.0.text': undefined })
const installation = (key: string, wrong: unknown) => value(`installation.${key}`, wrong)

export const EXAMPLES: Record<string, Example> = {
  '216.2/tactile-characters': {
    pass: PUMP_ROOM,
    fail: paintedOnly('permanent-room'),
    undetermined: withValues(paintedOnly('permanent-room'), { 'installation.approach': 'exterior' }),
  },
  '216.4.1/tactile-characters': {
    pass: forUse('exit-door'),
    fail: paintedOnly('exit-door'),
    undetermined: withValues(paintedOnly('exit-door'), { 'installation.approach': 'exterior' }),
  },
  '216.5/identification': byPerson('parking'),
  '407.2.3.1/tactile-characters': {
    pass: forUse('elevator-landing'),
    fail: paintedOnly('elevator-landing'),
    never: { verdicts: ['undetermined'], why: NOT_READ },
  },
  '407.2.3.1/character-height': value(l('characterHeight'), 40, LANDING(50.8)),
  '407.2.3.1/both-jambs': {
    pass: forUse('elevator-landing', { 'installation.jambs': 'both' }),
    fail: forUse('elevator-landing', { 'installation.jambs': 'one' }),
    undetermined: forUse('elevator-landing'),
  },
  '407.2.3.1/star': {
    pass: forUse('elevator-landing', { pictograms: [{ meaning: 'star' }] }),
    undetermined: forUse('elevator-landing'),
    never: { verdicts: ['fail'], why: 'whether this is the main entry level is not part of a description' },
  },
  '407.2.3.2/character-height': {
    pass: LANDING(50.8),
    undetermined: LANDING(40),
    never: { verdicts: ['fail'], why: 'whether the elevator is destination-oriented is not part of a description' },
  },
  '407.4.7.1.1/tactile-characters': {
    pass: forUse('elevator-car-control'),
    fail: paintedOnly('elevator-car-control'),
    never: { verdicts: ['undetermined'], why: NOT_READ },
  },
  '407.4.7.1.1/location': {
    pass: forUse('elevator-car-control', { 'installation.controlSide': 'left' }),
    undetermined: forUse('elevator-car-control', { 'installation.controlSide': 'below' }),
    never: { verdicts: ['fail'], why: 'an existing panel without room may have them elsewhere' },
  },
  // 2010 ADA Standards, Table 407.4.7.1.3: the control that opens the door has the word "open"
  '407.4.7.1.3/control-words': { pass: CONTROL('open'), fail: CONTROL('close'), undetermined: CONTROL_UNREAD },
  '703.1/visual-characters': {
    pass: PUMP_ROOM,
    undetermined: from({ [l('part')]: 'raised' }),
    never: { verdicts: ['fail'], why: 'another sign may carry the characters for sight' },
  },
  '703.2/repeated-in-braille': {
    pass: PUMP_ROOM,
    fail: from({ braille: [] }),
    never: { verdicts: ['undetermined'], why: NOT_READ },
  },
  '703.2/wording': {
    pass: PUMP_ROOM,
    fail: from({ [b('lines')]: ['pump room', '21'] }),
    undetermined: without(b('lines')),
  },
  '703.2/edges': byPerson('permanent-room'),
  '703.2.1/relief': value(l('relief'), 0.5),
  '703.2.2/case': {
    pass: PUMP_ROOM,
    fail: from({ [l('text')]: 'Pump Room 12', [l('lines')]: ['Pump Room', '12'] }),
    undetermined: without(l('text'), l('lines')),
  },
  '703.2.3/style': value(l('typeface.style'), 'serif'),
  '703.2.4/proportion': value(l('characterProportion'), 0.5),
  '703.2.5/character-height': value(l('characterHeight'), 14),
  '703.2.6/stroke-thickness': value(l('strokeThickness'), 4),
  '703.2.6/stroke-thickness-min': value(l('strokeThickness'), 1),
  '703.2.7/character-spacing-min': value(l('characterSpacing'), 2),
  '703.2.7/character-spacing-max': value(l('characterSpacing'), 12),
  '703.2.7/character-spacing-base-min': value(
    l('characterSpacingAtBase'),
    1,
    from({ [l('section')]: 'rounded', [l('characterSpacingAtBase')]: 2 }),
  ),
  '703.2.7/border-clearance': {
    fail: frame({ x: 10, y: -100, width: 600, height: 600 }),
    undetermined: FAR,
    never: {
      verdicts: ['pass'],
      why: 'a description does not give the width of the characters; see tests/measure/border.test.ts',
    },
  },
  '703.2.8/line-spacing': value(l('baselineSpacing'), 40),
  '703.3/contracted': {
    pass: from({ [l('text')]: 'HEATING', [l('lines')]: ['HEATING'], [b('lines')]: ['heating'] }),
    fail: from({ [b('lines')]: ['heating'], [b('code')]: 'ueb-uncontracted' }),
    undetermined: without(b('lines')),
  },
  '703.3.1/dot-base-diameter': value(b('dotBaseDiameter'), 1.4),
  '703.3.1/dot-spacing': value(b('dotSpacing'), 2.6),
  '703.3.1/cell-spacing': value(b('cellSpacing'), 5.8),
  '703.3.1/dot-height': value(b('dotHeight'), 0.5),
  '703.3.1/line-spacing': value(b('lineSpacing'), 9.5),
  '703.3.1/dot-shape': value(b('dotShape'), 'flat'),
  '703.3.1/capitals': {
    pass: PUMP_ROOM,
    fail: from({ [b('lines')]: ['Pump Room', '12'] }),
    undetermined: from({ [b('lines')]: ['Pump Room', '12'], properNames: undefined }),
  },
  '703.3.2/below-text': {
    pass: PUMP_ROOM,
    fail: from({ [b('origin')]: { x: 20, y: 5 } }),
    undetermined: without(b('origin')),
  },
  '703.3.2/character-clearance': {
    pass: PUMP_ROOM,
    fail: from({ [b('origin')]: { x: 20, y: 75 } }),
    undetermined: without(l('baseline')),
  },
  '703.3.2/border-clearance': {
    pass: FAR,
    fail: frame({ x: 15, y: -100, width: 600, height: 600 }),
    undetermined: withValues(FAR, { [b('origin')]: undefined }),
  },
  '703.4.1/lowest-baseline': installation('panelBottomHeight', 1000),
  '703.4.1/highest-baseline': installation('panelBottomHeight', 1600),
  '703.4.2/side': installation('side', 'hinge'),
  '703.4.2/floor-space': installation('door.latchToTextCentre', 200),
  '703.5.1/finish': {
    pass: PUMP_ROOM,
    fail: from({ 'panel.finish': 'glossy' }),
    undetermined: from({ 'panel.finish': 'satin' }),
  },
  '703.5.1/contrast': value(l('colour'), '#dddddd'),
  '703.5.1/reflectance-contrast': value(l('colour'), '#dddddd'),
  '703.5.2/case': {
    pass: TWO_SETS,
    undetermined: withValues(TWO_SETS, { [l('text')]: undefined, [l('lines')]: undefined }),
    never: { verdicts: ['fail'], why: 'every case is allowed' },
  },
  '703.5.3/style': value(l('typeface.style'), 'italic', TWO_SETS),
  '703.5.4/proportion': value(l('characterProportion'), 1.2, TWO_SETS),
  '703.5.5/character-height': {
    pass: TWO_SETS,
    fail: withValues(TWO_SETS, { [l('characterHeight')]: 12 }),
    undetermined: withValues(TWO_SETS, { 'installation.panelBottomHeight': undefined }),
  },
  '703.5.6/height-above-floor': value('installation.panelBottomHeight', 700, TWO_SETS),
  '703.5.7/stroke-thickness': value(l('strokeThickness'), 7, TWO_SETS),
  '703.5.8/character-spacing': value(l('characterSpacing'), 1, TWO_SETS),
  '703.5.9/line-spacing': value(l('baselineSpacing'), 40, TWO_SETS),
  '703.6.1/field-height': value(p('field'), { ...FIELD, height: 120 }, PICTOGRAM),
  '703.6.1/field-clear': value(p('field'), { x: 10, y: 150, width: 160, height: 200 }, PICTOGRAM),
  '703.6.2/finish': {
    pass: PICTOGRAM,
    fail: withValues(PICTOGRAM, { [p('finish')]: 'glossy' }),
    undetermined: withValues(PICTOGRAM, { 'panel.finish': undefined }),
  },
  '703.6.2/contrast': value(p('colour'), '#eeeeee', PICTOGRAM),
  '703.6.3/descriptor': {
    pass: PICTOGRAM,
    fail: withValues(PICTOGRAM, { [l('part')]: 'visual' }),
    undetermined: withValues(PICTOGRAM, { [l('baseline')]: undefined }),
  },
  '703.7.1/finish': {
    pass: SYMBOL,
    fail: withValues(SYMBOL, { [p('finish')]: 'glossy' }),
    undetermined: withValues(SYMBOL, { [p('finish')]: 'satin' }),
  },
  '703.7.1/contrast': value(p('colour'), '#eeeeee', SYMBOL),
  '703.7.2/shape': { undetermined: SYMBOL, never: { verdicts: ['pass', 'fail'], why: JUDGEMENT } },
  '810.6.1/tactile-characters': {
    pass: forUse('transit-station'),
    undetermined: paintedOnly('transit-station'),
    never: { verdicts: ['fail'], why: 'another sign of the station may be the tactile one' },
  },
  '307.3/post-overhang': byPerson('permanent-room'),
  '307.4/headroom': {
    pass: from({ 'installation.panelBottomHeight': 2100 }),
    undetermined: PUMP_ROOM,
    never: { verdicts: ['fail'], why: 'whether the sign hangs over a circulation path is not part of a description' },
  },
}
