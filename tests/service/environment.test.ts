import { describe, expect, it } from 'vitest'
import { readEnvironment } from '../../src/service/environment.js'

const refusals = (variables: Record<string, string>): string[] => {
  const read = readEnvironment(variables)
  return 'refused' in read ? read.refused : []
}

const settings = (variables: Record<string, string>) => {
  const read = readEnvironment(variables)
  if ('refused' in read) throw new Error(read.refused.join())
  return read.settings
}

describe('the environment', () => {
  it('needs nothing: loopback, port 8080, everything in one folder', () => {
    expect(readEnvironment({})).toMatchObject({
      host: '127.0.0.1',
      port: 8080,
      settings: { logLevel: 'info', role: 'all', auth: 'off', place: { folder: './data' } },
      remarks: [],
    })
    expect(readEnvironment({ PORT: '', HOST: '', AUTH: '', DATABASE_URL: '' })).toEqual(readEnvironment({}))
  })

  it.each(['127.0.0.1', '::1', 'localhost'])('asks for no keys when it listens on %s, unless it is told to', (HOST) => {
    expect(settings({ HOST })).toMatchObject({ auth: 'off' })
    expect(settings({ HOST, AUTH: 'keys' })).toMatchObject({ auth: 'keys' })
  })

  it.each(['0.0.0.0', '::', '192.0.2.1', 'example.org'])('asks for keys on %s, unless AUTH=off is said', (HOST) => {
    expect(settings({ HOST })).toMatchObject({ auth: 'keys' })
    expect(settings({ HOST, AUTH: 'off' })).toMatchObject({ auth: 'off' })
    expect(readEnvironment({ HOST, AUTH: 'off' })).toMatchObject({ remarks: [expect.stringContaining(HOST)] })
  })

  it('keeps what is kept until it is deleted, or for as many days as are said', () => {
    expect(settings({}).retention).toEqual({})
    expect(settings({ RETENTION_DAYS: '400', UPLOAD_RETENTION_DAYS: '30' }).retention).toEqual({
      submittals: 400,
      uploads: 30,
    })
    for (const days of ['0', '-1', '1.5', 'ten']) expect(refusals({ RETENTION_DAYS: days })).toHaveLength(1)
  })

  it('limits requests and waiting signs where keys are asked for, by what is said where it is', () => {
    const { rateLimit, openSigns } = settings({ AUTH: 'keys' })
    expect([rateLimit, openSigns].every((limit) => limit !== undefined && limit > 0)).toBe(true)
    expect(settings({ AUTH: 'keys', RATE_LIMIT: '30', OPEN_SIGNS: '40' })).toMatchObject({
      rateLimit: 30,
      openSigns: 40,
    })
    expect(settings({ RATE_LIMIT: '30' })).toMatchObject({ auth: 'off', rateLimit: 30 })
    const none = settings({ AUTH: 'keys', RATE_LIMIT: '0', OPEN_SIGNS: '0' })
    expect(none).not.toHaveProperty('rateLimit')
    expect(none).not.toHaveProperty('openSigns')
  })

  it('lets threads rest, unless they are to stay ready', () => {
    expect(settings({}).restAfter).toBeGreaterThan(0)
    expect(settings({ THREADS: 'ready' }).restAfter).toBeUndefined()
  })

  it('sends notifications to the public internet only, unless it is told otherwise', () => {
    expect(settings({})).toMatchObject({ webhooksPrivate: false })
    expect(settings({ WEBHOOKS_PRIVATE: 'allow' })).toMatchObject({ webhooksPrivate: true })
    expect(readEnvironment({ WEBHOOKS_PRIVATE: 'allow' })).toMatchObject({
      remarks: [expect.stringContaining('WEBHOOKS_PRIVATE')],
    })
    expect(refusals({ WEBHOOKS_PRIVATE: 'yes' })).toHaveLength(1)
  })

  it('has measurements unless they are turned off', () => {
    expect(settings({})).toMatchObject({ metrics: true })
    expect(settings({ METRICS: 'off' })).toMatchObject({ metrics: false })
  })

  it('sends traces where the variables of OpenTelemetry ask for them (its specification, environment variables)', () => {
    const to = { OTEL_EXPORTER_OTLP_ENDPOINT: 'http://collector:4318' }
    expect(settings({})).toMatchObject({ traces: false })
    expect(settings(to)).toMatchObject({ traces: true })
    expect(settings({ OTEL_EXPORTER_OTLP_TRACES_ENDPOINT: 'http://c/v1/traces' })).toMatchObject({ traces: true })
    expect(settings({ ...to, OTEL_SDK_DISABLED: 'True' })).toMatchObject({ traces: false })
    expect(settings({ ...to, OTEL_TRACES_EXPORTER: 'none' })).toMatchObject({ traces: false })
    expect(readEnvironment(to)).toMatchObject({ remarks: [] })
    expect(readEnvironment({ ...to, OTEL_EXPORTER_OTLP_PROTOCOL: 'grpc' })).toMatchObject({
      remarks: [expect.stringContaining('http/json')],
    })
  })

  it('has several processes share one PostgreSQL only', () => {
    for (const ROLE of ['api', 'worker']) {
      expect(refusals({ ROLE })[0]).toContain('DATABASE_URL')
      const url = 'postgres://db/x'
      expect(settings({ ROLE, DATABASE_URL: url })).toMatchObject({ role: ROLE, place: { url } })
    }
  })

  it.each([
    { PORT: 'http' },
    { PORT: '65536' },
    { AUTH: 'no' },
    { ROLE: 'chief' },
    { LOG_LEVEL: 'loud' },
    { RATE_LIMIT: '-1' },
    { RATE_LIMIT: 'much' },
    { OPEN_SIGNS: '1.5' },
    { METRICS: 'maybe' },
  ] as Record<string, string>[])('names what is wrong in %j', (variables) => {
    expect(refusals(variables)[0]).toContain(Object.keys(variables)[0])
  })
})
