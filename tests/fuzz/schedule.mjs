// Bytes as a sign schedule: CSV as it stands, a workbook when they begin one, and markup as the sheet of a workbook that is whole.
import { strToU8, zipSync } from 'fflate'
import { SignDescription } from '../../dist/sign/description.js'
import { readSchedule } from '../../dist/submittals/schedule/read.js'
import { examined, OPTIONS, STANDARDS } from './examined.mjs'

/** A long schedule holds no other kind of row than a short one. */
const MOST_CHECKED = 2

export const fuzz = async (bytes) => {
  const markup = bytes[0] === '<'.charCodeAt(0)
  const { rows, doors, problems } = await readSchedule({
    name: 'f.csv',
    bytes: markup ? workbookOf(bytes) : new Uint8Array(bytes),
  })
  for (const { detail, row } of problems)
    if (detail === '' || !(row === null || row >= 1)) throw new Error(`a problem says nothing: row ${row}, “${detail}”`)
  for (const { row, door } of doors) if (!(row >= 1) || door === '') throw new Error(`a door of row ${row}`)
  for (const { sign } of rows) SignDescription.parse(sign)
  for (const { sign, useAssumed } of rows.slice(0, MOST_CHECKED))
    examined({ sign, standards: STANDARDS, options: { ...OPTIONS, ...(useAssumed && { useAssumed }) } })
}

const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006'

/** The fewest parts that ECMA-376, part 1, asks for (12.3 and 18). */
const WHOLE = {
  '[Content_Types].xml': strToU8(`<Types xmlns="${PACKAGE}/content-types"/>`),
  'xl/workbook.xml': strToU8(
    `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  ),
  'xl/_rels/workbook.xml.rels': strToU8(
    `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${RELATIONS}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
  ),
}

const workbookOf = (sheet) => zipSync({ ...WHOLE, 'xl/worksheets/sheet1.xml': new Uint8Array(sheet) }, { level: 0 })
