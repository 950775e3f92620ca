// The forms of evidence: of one report against its check, and of a set against the checks of its signs.
import { buildService } from '../../dist/service/service.js'
import { DEFAULT_SETTINGS } from '../../dist/service/settings.js'
import { examine } from '../../dist/check.js'
import { reportCsv } from '../../dist/report/csv.js'
import { reportHtml } from '../../dist/report/html.js'
import { reportJson } from '../../dist/report/json.js'
import { reportPdf } from '../../dist/report/pdf.js'
import { reportSarif } from '../../dist/report/sarif.js'
import { DRAWING } from '../../dist/report/sarif-location.js'
import { reportSvg } from '../../dist/report/svg.js'
import { setTimeout as wait } from 'node:timers/promises'
import { ratioOf, row, timeInTurns } from './measure.mjs'

const TEXT = `Writing a report on the drawing of 4 KB in one of its forms, against the check of the drawing; and writing the evidence on a set of signs,
over HTTP and from its store, against checking those signs over HTTP. Pictures (BCF and zip) are painted by another process, whose time is not in it.`

const SIGNS = 40
const SET_FORMS = [
  'report.html',
  'report.pdf',
  'report.csv',
  'report.sarif',
  'report.xml',
  'report.bcf',
  'inspection.pdf',
  'evidence.zip',
]
const ms = (t) => `${t.median.toFixed(2)} ms`

export async function evidenceSection(bench) {
  return { title: 'Evidence', text: TEXT, rows: [...(await ofOne(bench)), ...(await ofSet(bench))] }
}

async function ofOne({ drawings, standards, options, translator, few }) {
  const input = { drawing: Buffer.from(drawings['4 KB']), standards, options }
  const { report, sign } = examine(input, translator)
  const { check, ...forms } = await timeInTurns(
    {
      check: () => examine(input, translator),
      JSON: () => reportJson(report),
      HTML: () => reportHtml(report, reportSvg(report, sign)),
      SVG: () => reportSvg(report, sign),
      CSV: () => reportCsv(report),
      SARIF: () => reportSarif(report, DRAWING),
      PDF: () => reportPdf(report, reportSvg(report, sign)),
    },
    few,
  )
  return Object.entries(forms).map(([form, t]) =>
    row(`a report as ${form} / its check`, ratioOf(t, check), '', `${ms(t)} / ${ms(check)}`),
  )
}

async function ofSet({ drawings, translator, quick }) {
  const app = await buildService({ ...DEFAULT_SETTINGS, logLevel: 'silent' }, { translator })
  await app.listen({ port: 0, host: '127.0.0.1' })
  const drawing = drawings['4 KB']
  const signs = Array.from({ length: SIGNS }, (_, i) => ({ mark: `S-${i + 1}`, drawing: `${drawing}<!-- ${i} -->` }))
  const asked = await app.inject({ method: 'POST', url: '/v1/submittals', payload: { name: 'rooms', signs } })
  if (asked.statusCode !== 202) throw new Error(asked.body)
  const address = asked.headers.location
  while (JSON.parse((await app.inject(address)).body).state !== 'done') await wait(200)
  const headers = { 'content-type': 'image/svg+xml' }
  const ok = ({ statusCode, body }) => {
    if (statusCode !== 200) throw new Error(body)
  }
  const checks = async () => {
    for (const { drawing: payload } of signs)
      ok(await app.inject({ method: 'POST', url: '/v1/checks?use=permanent-room', headers, payload }))
  }
  const forms = Object.fromEntries(
    SET_FORMS.map((form) => [form, async () => ok(await app.inject(`${address}/${form}`))]),
  )
  const { checks: theirs, ...ours } = await timeInTurns({ checks, ...forms }, { rounds: quick ? 1 : 5, warmup: 1 })
  await app.close()
  return Object.entries(ours).map(([form, t]) =>
    row(`${form} of ${SIGNS} signs / their checks`, ratioOf(t, theirs), '', `${ms(t)} / ${ms(theirs)}`),
  )
}
