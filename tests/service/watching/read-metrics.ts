import type { FastifyInstance } from 'fastify'
import request from 'supertest'

/**
 * A reader of the text format, by its description (prometheus.io, “Exposition formats”, text-based format): comments with HELP
 * and TYPE, then lines of a name, labels in braces with three escapes, and a value.
 */

export interface Sample {
  name: string
  labels: Record<string, string>
  value: number
}

export interface Family {
  name: string
  type: string
  help: string
  samples: Sample[]
}

const LINE = /^([a-zA-Z_:][a-zA-Z0-9_:]*)(?:\{(.*)\})? (\S+)$/u
const LABEL = /([a-zA-Z_][a-zA-Z0-9_]*)="((?:[^"\\\n]|\\\\|\\"|\\n)*)"(?:,|$)/uy
const PARTS_OF_HISTOGRAMS = /_(?:bucket|sum|count)$/u

/** @throws for a line that the format does not have */
export function parseMetrics(text: string): Family[] {
  const families = new Map<string, Family>()
  const familyOf = (name: string): Family => {
    const known = families.get(name)
    if (known) return known
    const family = { name, type: 'untyped', help: '', samples: [] }
    families.set(name, family)
    return family
  }
  for (const line of text.split('\n')) {
    const comment = /^# (HELP|TYPE) (\S+) (.*)$/u.exec(line)
    if (comment) {
      const [, kind, name = '', rest = ''] = comment
      familyOf(name)[kind === 'TYPE' ? 'type' : 'help'] = rest
    } else if (line !== '') {
      const sample = sampleOf(line)
      const whole = sample.name.replace(PARTS_OF_HISTOGRAMS, '')
      familyOf(families.get(whole)?.type === 'histogram' ? whole : sample.name).samples.push(sample)
    }
  }
  return [...families.values()]
}

function sampleOf(line: string): Sample {
  const found = LINE.exec(line)
  if (!found) throw new Error(`not a line of the format: ${line}`)
  const [, name = '', labels = '', value = ''] = found
  return { name, labels: labelsOf(labels), value: numberOf(value) }
}

function labelsOf(text: string): Record<string, string> {
  const labels: Record<string, string> = {}
  LABEL.lastIndex = 0
  while (LABEL.lastIndex < text.length) {
    const [, key, value] = LABEL.exec(text) ?? []
    if (key === undefined || value === undefined) throw new Error(`not labels of the format: ${text}`)
    labels[key] = value.replace(/\\(.)/gu, (_, escaped: string) => (escaped === 'n' ? '\n' : escaped))
  }
  return labels
}

/** As Go reads it, which the format refers to. */
function numberOf(text: string): number {
  if (/^nan$/iu.test(text)) return NaN
  if (/^[+-]?inf$/iu.test(text)) return text.startsWith('-') ? -Infinity : Infinity
  if (!/^[+-]?[0-9.]+(?:e[+-]?[0-9]+)?$/iu.test(text)) throw new Error(`not a number: ${text}`)
  return Number(text)
}

/** The value of the one sample that has these labels, and of a histogram its count; undefined when there is none. */
export function valueOf(families: Family[], name: string, labels: Record<string, string> = {}): number | undefined {
  const family = families.find((one) => one.name === name)
  const wanted = family?.type === 'histogram' ? `${name}_count` : name
  const found = (family?.samples ?? []).filter(
    (sample) => sample.name === wanted && Object.entries(labels).every(([key, value]) => sample.labels[key] === value),
  )
  if (found.length > 1) throw new Error(`several samples of ${name} have these labels`)
  return found[0]?.value
}

/** What /metrics says now. */
export async function readMetrics(app: FastifyInstance) {
  const { text, headers } = await request(app.server).get('/metrics').expect(200)
  const families = parseMetrics(text)
  return {
    text,
    contentType: String(headers['content-type']),
    families,
    value: (name: string, labels?: Record<string, string>) => valueOf(families, name, labels),
  }
}
