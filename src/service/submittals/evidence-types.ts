/** The forms in which evidence is had, each by the name of its file. */

export const SET_FORMS = {
  'report.html': 'text/html; charset=utf-8',
  'report.pdf': 'application/pdf',
  'report.csv': 'text/csv; charset=utf-8',
  'schedule.csv': 'text/csv; charset=utf-8',
  'report.sarif': 'application/sarif+json; charset=utf-8',
  'report.xml': 'application/xml; charset=utf-8',
  'report.bcf': 'application/octet-stream',
  'inspection.html': 'text/html; charset=utf-8',
  'inspection.pdf': 'application/pdf',
  'evidence.zip': 'application/zip',
} as const
export type SetForm = keyof typeof SET_FORMS

export const SIGN_FORMS = {
  'report.html': 'text/html; charset=utf-8',
  'report.pdf': 'application/pdf',
  'inspection.html': 'text/html; charset=utf-8',
  'inspection.pdf': 'application/pdf',
} as const
export type SignForm = keyof typeof SIGN_FORMS
