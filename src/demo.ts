import { readdirSync, readFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import type { Report } from './report/schema.js'
import { reportText } from './report/text.js'
import { buildService } from './service/service.js'
import { DEFAULT_SETTINGS } from './service/settings.js'

/**
 * `npm run demo`: serves on a free port, checks every sign of docs/examples over HTTP as a client would, and prints the
 * results for people. Ends with exit status 0 when every sign got a report.
 */

const EXAMPLES = new URL('../docs/examples/', import.meta.url)

/** One sign of the examples: a description, and a drawing where there is one. */
function requestFor(name: string): FormData | string {
  const sign = readFileSync(new URL(`${name}.json`, EXAMPLES), 'utf8')
  const drawing = readIfThere(new URL(`${name}.svg`, EXAMPLES))
  if (drawing === undefined) return JSON.stringify({ sign: JSON.parse(sign) as unknown })
  const form = new FormData()
  form.append('drawing', new Blob([drawing], { type: 'image/svg+xml' }), `${name}.svg`)
  form.append('sign', new Blob([sign], { type: 'application/json' }))
  return form
}

function readIfThere(file: URL): string | undefined {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return undefined
  }
}

const service = await buildService({ ...DEFAULT_SETTINGS, logLevel: 'silent' })
await service.listen({ port: 0, host: '127.0.0.1' })
const base = `http://127.0.0.1:${(service.server.address() as AddressInfo).port}`

const names = readdirSync(EXAMPLES)
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.slice(0, -'.json'.length))
  .sort()
const outcomes: string[] = []
let broken = false
for (const name of names) {
  const body = requestFor(name)
  const headers: Record<string, string> = typeof body === 'string' ? { 'content-type': 'application/json' } : {}
  const response = await fetch(new URL('/v1/checks', base), { method: 'POST', headers, body })
  const answer = await response.text()
  console.log('='.repeat(80))
  if (response.status === 200) {
    const report = JSON.parse(answer) as Report
    console.log(reportText(report))
    outcomes.push(`${name.padEnd(14)} ${report.verdict.padEnd(14)} ${failedClauses(report)}`)
  } else {
    broken = true
    console.log(`${name}: no report, status ${response.status}\n${answer}`)
    outcomes.push(`${name.padEnd(14)} no report`)
  }
}
console.log(`${'='.repeat(80)}\n${outcomes.join('\n')}`)
await service.close()
process.exitCode = broken ? 1 : 0

function failedClauses(report: Report): string {
  const failed = report.findings.filter((f) => f.verdict === 'fail' && f.force === 'shall')
  return failed.map((f) => `${f.clause} ${f.title}`).join('; ')
}
