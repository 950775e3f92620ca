import { Webhook } from 'standardwebhooks'
import { describe, expect, it } from 'vitest'
import { nextAfter, retryAfter, SCHEDULE } from '../../../src/submittals/webhooks/schedule.js'
import { newSecret, rotated, signed, type Secret } from '../../../src/submittals/webhooks/signature.js'

/** Standard Webhooks 1.0.0: signatures are read by the scheme's own library (`standardwebhooks`), the schedule is its example. */

const BODY = '{"type":"endpoint.test","note":"ünïcode ⠎"}'
const now = new Date()
const live = (secret: string): Secret => ({ secret, until: null })

describe('the signature of a message', () => {
  it('is one that the scheme’s own library accepts', () => {
    const secret = newSecret()
    expect(secret).toMatch(/^whsec_[A-Za-z0-9+/]{43}=$/u)
    const headers = { ...signed('msg_1', BODY, [live(secret)], now) }
    expect(new Webhook(secret).verify(BODY, headers)).toEqual(JSON.parse(BODY))
    expect(signed('msg_1', BODY, [live(secret)], now)['webhook-signature']).toBe(
      new Webhook(secret).sign('msg_1', now, BODY),
    )
  })

  it.each([
    ['the body', { body: `${BODY} ` }],
    ['the id', { id: 'msg_2' }],
    ['the time', { time: new Date(now.getTime() - 1000) }],
    ['the secret', { secret: newSecret() }],
  ])(
    'is refused by it when %s is another',
    (_, other: { body?: string; id?: string; time?: Date; secret?: string }) => {
      const secret = newSecret()
      const headers = { ...signed('msg_1', BODY, [live(secret)], now) }
      const seen = {
        ...headers,
        'webhook-id': other.id ?? 'msg_1',
        'webhook-timestamp': String(Math.floor((other.time ?? now).getTime() / 1000)),
      }
      expect(() => new Webhook(other.secret ?? secret).verify(other.body ?? BODY, seen)).toThrow()
    },
  )

  it('is by the secret before as well for a day, and by none before that', () => {
    const [first, second, third] = [newSecret(), newSecret(), newSecret()]
    const once = rotated([live(first)], second, now)
    const both = { ...signed('m', BODY, once, now) }
    for (const secret of [first, second]) expect(new Webhook(secret).verify(BODY, both)).toBeDefined()
    const later = new Date(now.getTime() + 24 * 3_600_000)
    expect(signed('m', BODY, once, later)['webhook-signature'].split(' ')).toHaveLength(1)
    const twice = { ...signed('m', BODY, rotated(once, third, now), now) }
    for (const secret of [second, third]) expect(new Webhook(secret).verify(BODY, twice)).toBeDefined()
    expect(() => new Webhook(first).verify(BODY, twice)).toThrow()
  })
})

describe('the schedule', () => {
  it('is the example of the scheme', () => {
    const [minute, hour] = [60, 3600]
    expect(SCHEDULE).toEqual([
      0,
      5,
      5 * minute,
      30 * minute,
      2 * hour,
      5 * hour,
      10 * hour,
      14 * hour,
      20 * hour,
      24 * hour,
    ])
  })
  it('never sends earlier than it says, and a tenth later at most', () => {
    for (let sent = 1; sent < SCHEDULE.length; sent++)
      for (const chance of [0, 0.5, 1]) {
        const wait = SCHEDULE[sent] ?? Number.NaN
        const next = nextAfter(sent, 0, chance) ?? Number.NaN
        expect(next).toBeGreaterThanOrEqual(wait)
        expect(next).toBeLessThanOrEqual(Math.ceil(wait * 1.1))
      }
    expect(nextAfter(SCHEDULE.length, 0)).toBeUndefined()
  })
  it('waits longer for whoever asks for it, for a day at most', () => {
    expect(nextAfter(1, 120, 0)).toBe(120)
    expect(nextAfter(1, 1e9, 0)).toBe(24 * 3600)
    expect(nextAfter(4, 1, 0)).toBe(2 * 3600)
  })
  it('reads Retry-After in both forms of RFC 9110, 10.2.3', () => {
    const at = new Date('1999-12-31T23:59:00Z')
    expect(retryAfter('120', at)).toBe(120)
    expect(retryAfter('Fri, 31 Dec 1999 23:59:59 GMT', at)).toBe(59)
    expect(retryAfter('Fri, 31 Dec 1999 23:00:00 GMT', at)).toBe(0)
    for (const none of [undefined, '', '-5', 'soon']) expect(retryAfter(none, at)).toBe(0)
  })
})
