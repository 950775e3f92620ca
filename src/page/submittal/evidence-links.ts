import { markup, type Html } from '../../report/html-tag.js'
import type { SetForm, SignForm } from '../../service/submittals/evidence-types.js'

/** The way to the evidence in each of its forms, with what each is for. */

const OF_A_SET: Record<SetForm, string> = {
  'report.pdf': 'Report, PDF to print and file',
  'report.html': 'Report, as one page',
  'evidence.zip': 'Everything, zip with a manifest of digests',
  'inspection.pdf': 'Inspection sheet, PDF: what gauge and tape must decide',
  'inspection.html': 'Inspection sheet, as one page',
  'schedule.csv': 'Schedule with verdicts, CSV',
  'report.csv': 'Every finding, CSV',
  'report.bcf': 'Issues for a building model, BCF 3.0',
  'report.sarif': 'Findings for tools, SARIF 2.1.0',
  'report.xml': 'Findings for pipelines, JUnit XML',
}

const OF_A_SIGN: Record<SignForm, string> = {
  'report.pdf': 'Report of this sign, PDF',
  'report.html': 'Report of this sign, as one page',
  'inspection.pdf': 'Inspection sheet of this sign, PDF',
  'inspection.html': 'Inspection sheet of this sign, as one page',
}

export const setEvidence = (submittal: string): Html => links(OF_A_SET, `/v1/submittals/${submittal}`)

export const signEvidence = (submittal: string, sign: string): Html =>
  links(OF_A_SIGN, `/v1/submittals/${submittal}/signs/${sign}`)

const links = (forms: Record<string, string>, at: string): Html =>
  markup`<ul class="evidence">
    ${Object.entries(forms).map(([file, words]) => markup`<li><a href="${at}/${file}">${words}</a></li>`)}
  </ul>`
