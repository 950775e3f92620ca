import { createHash } from 'node:crypto'
import { gzipSync } from 'node:zlib'
import type { CheckInput } from '../check.js'
import { reportJson } from '../report/json.js'
import type { Report } from '../report/schema.js'
import { reportSvg } from '../report/svg.js'
import type { Sign } from '../sign/sign.js'
import type { MadeReport } from '../submittals/outcome.js'
import { factsOf } from '../submittals/set-facts.js'

/** A report as it is kept: written out and compressed, with what is asked of it most beside it. */
export function keptAnswer(input: CheckInput, report: Report, sign: Sign): MadeReport {
  const { id, verdict, stages, summary, standards } = report
  const written = reportJson(report)
  return {
    id,
    digest: createHash('sha256').update(written).digest('hex'),
    verdict,
    stages,
    summary,
    standards: standards.map(({ id, revision, digest }) => ({ id, revision, digest })),
    facts: factsOf(input, report),
    body: packed(written),
    picture: packed(reportSvg(report, sign)),
  }
}

/** In a memory of its own, as it crosses threads. */
const packed = (content: string | Uint8Array): Uint8Array => new Uint8Array(gzipSync(content))
