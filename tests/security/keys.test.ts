import request from 'supertest'
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { digestOf, isSecretOf, newSecret } from '../../src/submittals/keys/token.js'
import { guarded, KEYED, type Guarded } from '../service/keys/guarded.js'

/** What the time and the wording of a refusal tell of a key: nothing. Compared in constant time by Node’s `crypto.timingSafeEqual`. */

const compared = vi.hoisted(() => ({ lengths: [] as [number, number][] }))
vi.mock('node:crypto', async (original) => {
  const real = await original<typeof import('node:crypto')>()
  const timingSafeEqual: typeof real.timingSafeEqual = (a, b) => {
    compared.lengths.push([a.byteLength, b.byteLength])
    return real.timingSafeEqual(a, b)
  }
  return { ...real, default: real, timingSafeEqual }
})

beforeEach(() => void (compared.lengths = []))

describe('a secret', () => {
  it('is compared as a whole digest, whatever was sent in its place', () => {
    const secret = newSecret()
    const digest = digestOf(secret)
    const nearly = `${secret.slice(0, -1)}${secret.endsWith('0') ? '1' : '0'}`
    expect([secret, nearly, '', 'x'.repeat(10_000)].map((sent) => isSecretOf(sent, digest))).toEqual([
      true,
      false,
      false,
      false,
    ])
    // SHA-256 has 32 bytes (FIPS 180-4): the comparison never sees the secret or its length.
    expect(compared.lengths).toEqual(Array.from({ length: 4 }, () => [32, 32]))
  })
})

describe('a key of the service', () => {
  let service: Guarded
  beforeAll(async () => {
    service = await guarded({ role: 'api' })
  })
  afterAll(() => service.close())

  it('that is wrong is compared so too, and refused in the words of one that is not there', async () => {
    const token = await service.key(KEYED)
    const wrong = token.replace(/\w{43}$/u, newSecret())
    const absent = token.replace(/_\w{12}_/u, '_000000000000_')
    const ask = (sent: string) =>
      request(service.app.server).get('/v1/standards').set('authorization', `Bearer ${sent}`)
    const answers = [await ask(wrong).expect(401), await ask(absent).expect(401)]
    expect(compared.lengths).toContainEqual([32, 32])
    const said = answers.map(({ body, headers }) => [
      { ...(body as object), instance: '' },
      headers['www-authenticate'],
    ])
    expect(said[0]).toEqual(said[1])
  })
})
