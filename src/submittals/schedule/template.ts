import { COLUMNS } from './columns.js'

/** The columns of an empty schedule, in the order in which people fill them in. */
const OFFERED = [
  'mark',
  'roomNumber',
  'roomName',
  'door',
  'use',
  'text',
  'brailleText',
  'drawing',
  'quantity',
  'properNames',
  'characterHeight',
  'strokeThickness',
  'relief',
  'family',
  'style',
  'code',
  'dotBaseDiameter',
  'dotHeight',
  'dotShape',
  'dotSpacing',
  'cellSpacing',
  'lineSpacing',
  'width',
  'height',
  'finish',
  'characterColour',
  'panelColour',
  'panelBottomHeight',
  'side',
  'approach',
  'notes',
]

/** By it, spreadsheets know UTF-8 (common practice, no source). */
const BYTE_ORDER_MARK = '\ufeff'

/** An empty sign schedule as CSV (RFC 4180) with the headings that are surely recognised, lengths in millimetres. */
export function scheduleTemplate(): string {
  const headings = OFFERED.flatMap((key) => COLUMNS.filter((column) => column.key === key)).map(({ heading, kind }) =>
    kind === 'length' ? `${heading} (mm)` : heading,
  )
  return `${BYTE_ORDER_MARK}${headings.join(',')}\r\n`
}
