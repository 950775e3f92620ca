/** What a file in the format of a zip is: many formats of offices are zips inside. Told by the names that such a format must hold. */

export type Container = { kind: 'zip' | 'workbook' } | { kind: null; why: string }

/** ECMA-376 part 2, 7.2.3.2: the list of the parts of an Office Open XML package. */
const OFFICE_PARTS = '[content_types].xml'
/** Where those of a workbook lie (common practice of all writers; the standard leaves the place to the package's relations). */
const WORKBOOK_FOLDER = 'xl/'
/** OpenDocument 1.3 part 2, 3.2. */
const OPEN_DOCUMENT_PARTS = 'meta-inf/manifest.xml'

export function containerKind(names: string[]): Container {
  const lower = new Set(names.map((name) => name.toLowerCase()))
  if (lower.has(OFFICE_PARTS)) {
    if ([...lower].some((name) => name.startsWith(WORKBOOK_FOLDER))) return { kind: 'workbook' }
    return { kind: null, why: 'is an Office document but no workbook. Save a schedule as XLSX or CSV.' }
  }
  if (lower.has(OPEN_DOCUMENT_PARTS) && lower.has('content.xml'))
    return { kind: null, why: 'is an OpenDocument file. Save a schedule as XLSX or CSV.' }
  return { kind: 'zip' }
}
