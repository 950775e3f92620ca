import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { digestOf, isSecretOf, newKeyId, newSecret, readToken, tokenOf } from '../../../src/submittals/keys/token.js'

describe('a key', () => {
  it('says its prefix, its id and its secret, and is read back', () => {
    const [id, secret] = [newKeyId(), newSecret()]
    expect(tokenOf(id, secret)).toMatch(/^fingertrue_[0-9A-Za-z]{12}_[0-9A-Za-z]{43}$/u)
    expect(readToken(tokenOf(id, secret))).toEqual({ id, secret })
  })

  it('has a secret of 256 bits: 43 letters of 62 are as many as 2 to the 256th, and no fewer', () => {
    expect(62n ** BigInt(newSecret().length) >= 2n ** 256n).toBe(true)
    expect(62n ** BigInt(newSecret().length - 1) >= 2n ** 256n).toBe(false)
  })

  it('is another each time, and uses every letter', () => {
    const secrets = Array.from({ length: 200 }, newSecret)
    expect(new Set(secrets).size).toBe(secrets.length)
    // 8600 letters: that one of 62 never comes up has a chance below 1 in 10^58.
    expect(new Set(secrets.join('')).size).toBe(62)
  })

  it.each(['', 'fingertrue_', 'fingertrue_abc_def', `other_${'a'.repeat(12)}_${'b'.repeat(43)}`])(
    'is not read from %j',
    (text) => expect(readToken(text)).toBeUndefined(),
  )

  it('is not read with anything before or behind it', () => {
    const token = tokenOf(newKeyId(), newSecret())
    for (const text of [` ${token}`, `${token} `, `${token}\n`, `x${token}`, `${token}0`, token.slice(0, -1)])
      expect(readToken(text), JSON.stringify(text)).toBeUndefined()
  })

  it('is kept as the SHA-256 of its secret: FIPS 180-4, by the published example “abc”', () => {
    expect(digestOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  })

  it('is known by its secret alone', () => {
    const secret = newSecret()
    const digest = createHash('sha256').update(secret).digest('hex')
    expect(isSecretOf(secret, digest)).toBe(true)
    expect(isSecretOf(newSecret(), digest)).toBe(false)
    expect(isSecretOf(secret, '')).toBe(false)
  })
})
