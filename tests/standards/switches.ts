import { TWO_SETS } from '../measure/signs.js'

/** For each condition of a row, what a description says for it to hold and for it not to hold. All signs and words are invented. */

type Json = Record<string, unknown>

export interface Switch {
  on: Json
  /** On, it is only open whether it holds: what a description does not tell. */
  isOpen?: true
  /** Absent: no sign that the row is in force for can be without it. */
  off?: Json
}

const said = (...lines: string[]): Json => ({
  'lettering.0.text': lines.join(' '),
  'lettering.0.lines': lines,
  'braille.0.lines': lines.map((line) => line.toLowerCase()),
})
const FIELD = { x: 10, y: 10, width: 160, height: 160 }
const SIZES = { triangleEdge: 250, circleDiameter: 304.8, thickness: 6.35 }
const symbol = (shape: string): Json => ({ pictograms: [{ meaning: 'toilet', shape, ...SIZES }] })
const pictogram = (meaning: string): Json => ({ pictograms: [{ meaning, field: FIELD }] })
const BORDER = { borders: [{ box: { x: 1, y: 1, width: 258, height: 148 }, width: 6, raised: false }] }
const use = (name: string): Json => ({ use: name })

export const SWITCHES: Record<string, Switch> = {
  'separate-visual-set': {
    on: { panel: TWO_SETS.panel, lettering: TWO_SETS.lettering, braille: TWO_SETS.braille },
    off: {},
  },
  'visual-set-elsewhere': { on: { 'lettering.0.part': 'raised' }, isOpen: true, off: {} },
  'elevator-car-control': { on: use('elevator-car-control'), off: {} },
  'destination-oriented-elevator': { on: use('elevator-landing'), isOpen: true },
  'main-entry-level': { on: use('elevator-landing'), isOpen: true },
  'at-a-door': { on: {}, off: { 'installation.door.swing': 'none' } },
  'no-wall-at-latch': {
    on: { 'installation.door.wallAtLatch': false },
    off: { 'installation.door.wallAtLatch': true },
  },
  'pictogram-designates-room': { on: pictogram('pump'), off: pictogram('no smoking') },
  'platform-space-limited': { on: use('transit-station'), isOpen: true, off: {} },
  'over-circulation-path': { on: {}, isOpen: true },
  'one-tactile-line': { on: said('PUMPS'), off: said('PUMP', 'ROOM') },
  'several-tactile-lines': { on: said('PUMP', 'ROOM'), off: said('PUMPS') },
  'one-word': { on: said('PUMPS'), off: said('PUMP ROOM') },
  'carrier-pvc': { on: { 'braille.0.carrier': 'pvc' }, off: { 'braille.0.carrier': 'sticker' } },
  'carrier-not-pvc': { on: { 'braille.0.carrier': 'paper' }, off: { 'braille.0.carrier': 'pvc' } },
  'character-contrast-measured': {
    on: { measured: [{ quantity: 'contrast.charactersByMichelson', values: [0.9], unit: 'ratio' }] },
    off: { measured: [{ quantity: 'contrast.lighterReflectance', values: [0.9], unit: 'ratio' }] },
  },
  'pictogram-contrast-measured': {
    on: { measured: [{ quantity: 'contrast.pictogramByMichelson', values: [0.9], unit: 'ratio' }] },
    off: { measured: [{ quantity: 'contrast.charactersByMichelson', values: [0.9], unit: 'ratio' }] },
  },
  'border-gives-contrast': { on: BORDER, isOpen: true, off: { borders: [] } },
  'suspended-overhead': { on: {}, isOpen: true },
  'door-symbol': { on: symbol('triangle-in-circle'), off: { pictograms: [] } },
  'triangle-alone': { on: symbol('triangle'), off: symbol('triangle-in-circle') },
  'english-over-ten-words': {
    on: said('ALL', 'WHO COME', 'HERE', 'LEAVE THE', 'PUMP', 'ROOM AS', 'THEY FOUND IT'),
    off: {},
  },
  'in-arm-zone': { on: { 'installation.panelBottomHeight': 1200 }, off: { 'installation.panelBottomHeight': 1700 } },
  'with-pictogram': { on: pictogram('pump'), off: { pictograms: [] } },
  'longer-text': { on: said('PUMP', 'ROOM'), isOpen: true, off: said('PUMPS') },
  'door-number': { on: said('12'), isOpen: true, off: said('PUMPS') },
  'black-and-white': { on: {}, isOpen: true, off: { lettering: [] } },
  'station-name': { on: use('transit-station'), isOpen: true, off: use('informational') },
  'posted-timetable': { on: use('informational'), isOpen: true, off: use('directional') },
  'toilet-or-lift': { on: use('elevator-landing') },
  'sanitary-room': { on: use('permanent-room'), isOpen: true, off: use('directional') },
  exterior: { on: { 'installation.approach': 'exterior' }, off: { 'installation.approach': 'interior' } },
  'on-a-handrail': {
    on: { 'installation.side': undefined },
    isOpen: true,
    off: { 'installation.side': 'latch' },
  },
  'one-direction': { on: {}, isOpen: true },
}
