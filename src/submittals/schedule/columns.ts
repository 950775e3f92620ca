/**
 * The columns of a sign schedule: what we call them, what else the trade calls them, and where they go. The headings are common
 * practice in sign and door schedules, no source. Capitals, marks, plural and order of number words do not matter
 * (`heading.ts`), so that a synonym stands here once.
 */

export type Kind =
  /** Tells a sign, a place, a door or a file from others. */
  | 'name'
  /** Words on the sign, line by line. */
  | 'words'
  /** One line of them. */
  | 'line'
  | 'length'
  /** One of the words of `vocabulary.ts`. */
  | 'choice'
  | 'colour'
  | 'reflectance'
  /** Two lengths, or two colours, in one cell. */
  | 'size'
  | 'colours'
  | 'list'
  /** Known, and of no use to a check. */
  | 'unused'

export type Section = 'row' | 'sign' | 'panel' | 'lettering' | 'braille' | 'installation'

export interface Column {
  key: string
  heading: string
  kind: Kind
  section: Section
  also: readonly string[]
  /** What makes every cell of such a column unusable, as a sentence for people. */
  because?: string
}

const column = (
  section: Section,
  kind: Kind,
  key: string,
  heading: string,
  also: readonly string[] = [],
  because?: string,
): Column => ({ section, kind, key, heading, also, ...(because === undefined ? {} : { because }) })

export const COLUMNS: readonly Column[] = [
  column('row', 'name', 'mark', 'Mark', [
    'sign mark',
    'sign number',
    'sign id',
    'sign',
    'sign tag',
    'tag',
    'sign code',
    'sign ref',
    'id',
    'number',
    'sign identification',
  ]),
  column('row', 'name', 'building', 'Building', ['bldg', 'block']),
  column('row', 'name', 'level', 'Level', ['floor', 'storey', 'story', 'floor level']),
  column('row', 'name', 'roomNumber', 'Room number', [
    'room',
    'room id',
    'space number',
    'rm number',
    'rm',
    'room code',
  ]),
  column('row', 'name', 'location', 'Location', ['sign location', 'place', 'area', 'location description']),
  column('row', 'name', 'roomName', 'Room name', ['space name', 'rm name', 'room description', 'room title']),
  column('row', 'name', 'door', 'Door number', [
    'door',
    'door mark',
    'door id',
    'door tag',
    'door ref',
    'opening',
    'opening number',
  ]),
  column('row', 'name', 'drawing', 'Drawing file', [
    'drawing',
    'file',
    'file name',
    'filename',
    'svg',
    'svg file',
    'artwork',
    'artwork file',
    'art file',
  ]),
  column('sign', 'choice', 'use', 'Use', ['sign use', 'function', 'sign function', 'purpose']),
  column('sign', 'choice', 'type', 'Sign type', ['type', 'sign category', 'category', 'sign class']),
  column('lettering', 'words', 'text', 'Text', [
    'sign text',
    'copy',
    'sign copy',
    'wording',
    'sign wording',
    'message',
    'sign message',
    'legend',
    'sign legend',
    'tactile text',
    'tactile copy',
    'raised text',
    'inscription',
  ]),
  column('lettering', 'line', 'line1', 'Text line 1', ['line 1', 'copy line 1', 'message line 1', 'text 1']),
  column('lettering', 'line', 'line2', 'Text line 2', ['line 2', 'copy line 2', 'message line 2', 'text 2']),
  column('lettering', 'line', 'line3', 'Text line 3', ['line 3', 'copy line 3', 'message line 3', 'text 3']),
  column('lettering', 'line', 'line4', 'Text line 4', ['line 4', 'copy line 4', 'message line 4', 'text 4']),
  column('braille', 'words', 'brailleText', 'Braille text', [
    'braille',
    'braille copy',
    'braille wording',
    'braille message',
    'braille translation',
    'text braille',
  ]),
  column('sign', 'list', 'properNames', 'Proper names', ['proper noun']),
  column('lettering', 'length', 'characterHeight', 'Character height', [
    'letter height',
    'text height',
    'copy height',
    'cap height',
    'capital height',
    'tactile height',
    'tactile character height',
    'raised character height',
    'raised letter height',
    'lettering height',
    'height of character',
    'height of letter',
    'font height',
  ]),
  column('lettering', 'length', 'strokeThickness', 'Stroke thickness', [
    'stroke',
    'stroke width',
    'stroke weight',
    'letter stroke',
    'character stroke',
  ]),
  column('lettering', 'length', 'relief', 'Relief', [
    'letter relief',
    'letter depth',
    'character depth',
    'character relief',
    'raised depth',
    'tactile depth',
  ]),
  column('lettering', 'length', 'characterSpacing', 'Character spacing', ['letter spacing']),
  column('lettering', 'length', 'baselineSpacing', 'Baseline spacing', []),
  column('lettering', 'name', 'family', 'Typeface', [
    'font',
    'font family',
    'type face',
    'font name',
    'letter style font',
  ]),
  column('lettering', 'choice', 'style', 'Typeface style', ['font style', 'letter style', 'character style']),
  column('lettering', 'colour', 'characterColour', 'Character colour', [
    'text colour',
    'letter colour',
    'copy colour',
    'foreground colour',
    'lettering colour',
    'colour of character',
    'graphic colour',
  ]),
  column('lettering', 'reflectance', 'characterLrv', 'Character LRV', [
    'text lrv',
    'letter lrv',
    'foreground lrv',
    'copy lrv',
  ]),
  column('braille', 'choice', 'code', 'Braille code', ['braille grade', 'grade of braille', 'braille type']),
  column('braille', 'length', 'dotBaseDiameter', 'Dot diameter', [
    'dot base diameter',
    'braille dot diameter',
    'braille dot base diameter',
  ]),
  column('braille', 'length', 'dotHeight', 'Dot height', ['braille dot height', 'braille height']),
  column('braille', 'choice', 'dotShape', 'Dot shape', ['braille dot shape']),
  column('braille', 'length', 'dotSpacing', 'Dot spacing', [
    'braille dot spacing',
    'dot pitch',
    'distance between dot',
    'dot to dot',
  ]),
  column('braille', 'length', 'cellSpacing', 'Cell spacing', [
    'braille cell spacing',
    'cell pitch',
    'distance between cell',
    'cell to cell',
  ]),
  column('braille', 'length', 'lineSpacing', 'Braille line spacing', ['line pitch']),
  column('panel', 'length', 'width', 'Panel width', ['width', 'sign width', 'plate width', 'overall width']),
  column('panel', 'length', 'height', 'Panel height', ['height', 'sign height', 'plate height', 'overall height']),
  column('panel', 'size', 'size', 'Panel size', [
    'size',
    'sign size',
    'plate size',
    'dimension',
    'sign dimension',
    'panel dimension',
    'overall size',
  ]),
  column('panel', 'choice', 'finish', 'Finish', ['panel finish', 'sign finish', 'surface finish', 'surface']),
  column('panel', 'colour', 'panelColour', 'Panel colour', [
    'background colour',
    'background',
    'plate colour',
    'sign colour',
    'ground colour',
    'field colour',
  ]),
  column('panel', 'reflectance', 'panelLrv', 'Panel LRV', ['background lrv', 'plate lrv', 'sign lrv']),
  column('panel', 'colours', 'colours', 'Colours', ['colour scheme', 'colour combination', 'contrast']),
  column('installation', 'length', 'panelBottomHeight', 'Bottom edge above floor', [
    'mounting height to bottom',
    'mounting height to bottom of sign',
    'height to bottom',
    'height to bottom of sign',
    'bottom of sign above floor',
    'bottom of sign',
    'bottom of sign aff',
    'bottom edge aff',
    'bottom aff',
    'panel bottom height',
    'bottom edge height',
    'mounting height bottom',
    'mounting height bottom edge',
    'bottom of panel',
    'bottom edge',
  ]),
  column(
    'installation',
    'length',
    'mountingHeight',
    'Mounting height',
    ['height above floor', 'installation height', 'mounting height aff', 'aff', 'mount height'],
    'The height does not say to what of the sign it goes, so it was not used. Give it as “Bottom edge above floor”.',
  ),
  column('installation', 'choice', 'side', 'Mounting side', ['side', 'side of door', 'door side', 'mounting position']),
  column('installation', 'choice', 'approach', 'Approach', ['interior exterior', 'interior or exterior']),
  column('row', 'unused', 'quantity', 'Quantity', ['qty', 'count', 'quantity of sign', 'sign quantity', 'pc', 'each']),
  column('row', 'unused', 'notes', 'Notes', ['remark', 'comment', 'special instruction', 'note remark']),
  column('row', 'unused', 'material', 'Material', [
    'substrate',
    'sign material',
    'panel material',
    'mounting',
    'mounting method',
    'attachment',
    'fastener',
    'mounting type',
  ]),
  column('row', 'unused', 'reference', 'Reference', [
    'sheet',
    'detail',
    'elevation',
    'plan',
    'revision',
    'rev',
    'item',
    'item number',
    'department',
    'spec section',
  ]),
]
