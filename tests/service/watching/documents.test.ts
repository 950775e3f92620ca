import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { PROBLEMS } from '../../../src/service/problem-table.js'
import { runningService } from '../running.js'
import { readMetrics, type Family } from './read-metrics.js'

/** What is written about the measurements, held against the measurements, both ways. */

const pathOf = (name: string) => fileURLToPath(new URL(`../../../docs/${name}`, import.meta.url))
const PAGE = readFileSync(pathOf('watching.md'), 'utf8')
const ALERTS = readFileSync(pathOf('operations/alerts.yaml'), 'utf8')

/** What is read of a dashboard (Grafana, “Dashboard JSON model”). */
const Target = z.object({ refId: z.string().length(1), expr: z.string().min(1), legendFormat: z.string() })
const Panel = z.object({
  id: z.int(),
  type: z.enum(['row', 'timeseries', 'stat']),
  title: z.string().min(1),
  gridPos: z.object({ x: z.int(), y: z.int(), w: z.int().max(24), h: z.int() }),
  description: z.string().min(1).optional(),
  targets: z.array(Target).min(1).optional(),
})
const Dashboard = z.object({
  uid: z.string().max(40),
  title: z.string(),
  schemaVersion: z.int(),
  templating: z.object({ list: z.array(z.object({ name: z.string(), type: z.string(), query: z.string() })) }),
  panels: z.array(Panel),
})
const dashboard = Dashboard.parse(JSON.parse(readFileSync(pathOf('operations/dashboard.json'), 'utf8')))

let app: FastifyInstance
let families: Family[]
let routes: string[]
beforeAll(async () => {
  app = await runningService()
  // So that there is a sample of requests, with its labels.
  await request(app.server).get('/livez').expect(200)
  families = (await readMetrics(app)).families
  routes = app.guarded.map(({ url }) => url)
})
afterAll(() => app.close())

const NAME = /\b(?:fingertrue|http_server|process|nodejs)_[a-z0-9_]+/gu
/** Labels that Prometheus itself puts on what it reads. */
const OF_PROMETHEUS = ['job', 'instance', 'le']

const familyOf = (name: string) =>
  families.find((one) => one.name === name) ??
  families.find((one) => one.type === 'histogram' && one.name === name.replace(/_(?:bucket|sum|count)$/u, ''))

/** Every name in a text of queries is exported, with the labels and the values that it is asked for. */
function holdQueries(text: string) {
  const names = text.match(NAME) ?? []
  expect(names.length).toBeGreaterThan(10)
  for (const name of names) expect(familyOf(name), name).toBeDefined()
  for (const [, name = '', selector = ''] of text.matchAll(/([a-z_0-9]+)\{([^{}]*)\}/gu)) {
    if (!familyOf(name)) continue
    const labels = new Set(familyOf(name)?.samples.flatMap((sample) => Object.keys(sample.labels)))
    for (const [, label = '', operator = '', value = ''] of selector.matchAll(/(\w+)(=~|!~|!=|=)"([^"]*)"/gu)) {
      if (OF_PROMETHEUS.includes(label)) continue
      expect([...labels], `${name} has the label ${label}`).toContain(label)
      if (label === 'problem') expect(Object.keys(PROBLEMS)).toContain(value)
      else if (label === 'route' && operator === '=') expect(routes).toContain(value)
      else if (!operator.endsWith('~'))
        expect(
          familyOf(name)?.samples.map((sample) => sample.labels[label]),
          `${name} has ${label}="${value}"`,
        ).toContain(value)
    }
  }
}

describe('the page about watching', () => {
  it('names every measurement that there is, and none that there is not', () => {
    const exported = families.map(({ name }) => name).sort()
    const named = new Set([...PAGE.matchAll(/^\|.*$/gmu)].flatMap(([row]) => row.match(NAME) ?? []))
    if (process.platform === 'linux') expect([...named].sort()).toEqual(exported)
    // Elsewhere the operating system tells less of a process.
    else expect([...named]).toEqual(expect.arrayContaining(exported))
  })

  it('says of each of ours what kind it is and which labels it has', () => {
    for (const { name, type, samples } of families.filter((one) => !/^(?:process|nodejs)_/.test(one.name))) {
      const row = PAGE.split('\n').find((line) => line.startsWith(`| \`${name}\` |`)) ?? ''
      const [, kind = ''] = row.split(' | ')
      const labels = [...new Set(samples.flatMap((sample) => Object.keys(sample.labels)))].filter((l) => l !== 'le')
      const said = [...kind.matchAll(/`(\w+)`/gu)].map(([, label]) => label)
      expect(kind.split(';')[0], name).toBe(type)
      expect(said.sort(), name).toEqual(labels.sort())
    }
  })

  it('explains every alert, and none that there is not', () => {
    const rules = [...ALERTS.matchAll(/- alert: (\w+)/gu)].map(([, name]) => name)
    const explained = [...PAGE.matchAll(/^### (\w+)$/gmu)].map(([, name]) => name)
    expect(rules.length).toBeGreaterThan(5)
    expect(explained).toEqual(rules)
  })
})

describe('the dashboard', () => {
  const panels = dashboard.panels.filter(({ type }) => type !== 'row')

  it('asks only for what there is', () => {
    holdQueries(panels.flatMap(({ targets }) => (targets ?? []).map(({ expr }) => expr)).join('\n'))
    for (const { query } of dashboard.templating.list)
      for (const name of query.match(NAME) ?? []) expect(familyOf(name), name).toBeDefined()
  })

  it('shows every measurement of ours', () => {
    const asked = panels.flatMap(({ targets }) => (targets ?? []).map(({ expr }) => expr)).join('\n')
    for (const { name } of families.filter((one) => !/^(?:process|nodejs)_/.test(one.name)))
      expect(asked).toContain(name)
  })

  it('says of every panel what it shows, and lays none over another', () => {
    expect(new Set(dashboard.panels.map(({ id }) => id)).size).toBe(dashboard.panels.length)
    for (const panel of panels) expect(panel.description, panel.title).toBeDefined()
    const taken = new Set<string>()
    for (const { title, gridPos } of dashboard.panels) {
      expect(gridPos.x + gridPos.w, title).toBeLessThanOrEqual(24)
      for (let x = gridPos.x; x < gridPos.x + gridPos.w; x++)
        for (let y = gridPos.y; y < gridPos.y + gridPos.h; y++) {
          expect(taken.has(`${x} ${y}`), title).toBe(false)
          taken.add(`${x} ${y}`)
        }
    }
  })
})

describe('the alert rules', () => {
  it('ask only for what there is', () => holdQueries(ALERTS))

  const promtool = (...args: string[]) => spawnSync('promtool', args, { encoding: 'utf8' })
  const isMissing = promtool('--version').status !== 0 && !process.env.CI

  it.skipIf(isMissing)('are read by Prometheus (promtool check config), with the file that leads to them', () => {
    const { status, stdout, stderr } = promtool('check', 'config', pathOf('operations/prometheus.yaml'))
    expect(status, stdout + stderr).toBe(0)
  })

  it.skipIf(isMissing)('fire when something is wrong and on no ordinary day (promtool test rules)', () => {
    const cases = readFileSync(new URL('./alerts.test.yaml', import.meta.url), 'utf8')
    for (const [, name = ''] of ALERTS.matchAll(/- alert: (\w+)/gu))
      expect(cases.split(`alertname: ${name},`).length - 1 + cases.split(`alertname: ${name}\n`).length - 1, name).toBe(
        2,
      )
    const folder = mkdtempSync(join(tmpdir(), 'rules-'))
    try {
      const file = join(folder, 'cases.yaml')
      writeFileSync(file, cases.replace('RULES', pathOf('operations/alerts.yaml')))
      const { status, stdout, stderr } = promtool('test', 'rules', file)
      expect(status, stdout + stderr).toBe(0)
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})
