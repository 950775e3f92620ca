import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { once } from 'node:events'
import type { AddressInfo } from 'node:net'
import { afterEach, describe, expect, it } from 'vitest'
import { onlyPublic, send, type LookUp, type SendOptions } from '../../../src/submittals/webhooks/send.js'

/** Sending to receivers that are slow, wordy, gone or somewhere else (Standard Webhooks 1.0.0, “Webhook delivery” and “SSRF”). */

const HEADERS = { 'webhook-id': 'msg_1', 'webhook-timestamp': '1', 'webhook-signature': 'v1,x' }
const BODY = '{"type":"endpoint.test"}'
const ALLOWED: SendOptions = { privateAllowed: true, timeout: 1000 }

let close: (() => void) | undefined
afterEach(() => close?.())

async function receiver(answer: (request: IncomingMessage, response: ServerResponse) => void): Promise<string> {
  const server = createServer(answer).listen(0, '127.0.0.1')
  close = () => {
    server.closeAllConnections()
    server.close()
  }
  await once(server, 'listening')
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/hook?a=b`
}

const message = (url: string) => ({ url, headers: HEADERS, body: BODY })

/** What a name server would say. */
const saying =
  (...addresses: string[]): LookUp =>
  (_host, _options, done) =>
    done(
      null,
      addresses.map((address) => ({ address, family: address.includes(':') ? 6 : 4 })),
    )

describe('a message', () => {
  it('arrives with its headers and the very bytes that were signed', async () => {
    const seen: { request: IncomingMessage; body: string }[] = []
    const url = await receiver((request, response) => {
      const chunks: Buffer[] = []
      request.on('data', (chunk: Buffer) => chunks.push(chunk))
      request.on('end', () => {
        seen.push({ request, body: Buffer.concat(chunks).toString('utf8') })
        response.writeHead(204).end()
      })
    })
    expect(await send(message(url), ALLOWED)).toEqual({ status: 204, retryAfter: 0 })
    expect(seen[0]?.body).toBe(BODY)
    expect(seen[0]?.request.method).toBe('POST')
    expect(seen[0]?.request.url).toBe('/hook?a=b')
    expect(seen[0]?.request.headers).toMatchObject({ ...HEADERS, 'content-type': 'application/json' })
  })

  it('does not follow a redirect', async () => {
    let asked = 0
    const url = await receiver((request, response) => {
      asked++
      response.writeHead(307, { location: request.url }).end()
    })
    expect(await send(message(url), ALLOWED)).toEqual({ status: 307, retryAfter: 0 })
    expect(asked).toBe(1)
  })

  it('waits as long as a busy receiver asks for, and only a busy one', async () => {
    let status = 503
    const url = await receiver((_request, response) => {
      response.writeHead(status, { 'retry-after': '120' }).end()
    })
    expect(await send(message(url), ALLOWED)).toEqual({ status: 503, retryAfter: 120 })
    status = 429
    expect(await send(message(url), ALLOWED)).toEqual({ status: 429, retryAfter: 120 })
    status = 500
    expect(await send(message(url), ALLOWED)).toEqual({ status: 500, retryAfter: 0 })
  })

  it('is not answered by an answer that never begins', async () => {
    const url = await receiver(() => undefined)
    expect(await send(message(url), { ...ALLOWED, timeout: 200 })).toEqual({
      error: 'There was no answer within 0.2 seconds.',
    })
  })

  it('counts as taken when only the end of a long answer is missing', async () => {
    const url = await receiver((_request, response) => {
      response.writeHead(200)
      const more = () => response.write('x'.repeat(1024), () => setTimeout(more, 5))
      more()
    })
    expect(await send(message(url), { ...ALLOWED, timeout: 5000 })).toEqual({ status: 200, retryAfter: 0 })
    const stalls = await receiver((_request, response) => void response.writeHead(200).write('x'))
    expect(await send(message(stalls), { ...ALLOWED, timeout: 200 })).toEqual({ status: 200, retryAfter: 0 })
  })

  it('says that nobody is there', async () => {
    const url = await receiver(() => undefined)
    close?.()
    expect(await send(message(url), ALLOWED)).toEqual({
      error: 'No connection could be made, or it broke: ECONNREFUSED.',
    })
  })
})

describe('an address that is not public', () => {
  const NOT_PUBLIC = { error: 'The address is not one of the public internet.' }
  const closed: SendOptions = { privateAllowed: false, timeout: 1000 }

  it('is not connected to by its number', async () => {
    let asked = 0
    const url = await receiver((_request, response) => {
      asked++
      response.end()
    })
    expect(await send(message(url), closed)).toEqual(NOT_PUBLIC)
    expect(await send(message('https://[::ffff:127.0.0.1]/'), closed)).toEqual(NOT_PUBLIC)
    expect(asked).toBe(0)
  })

  it.each([
    ['that leads to this machine', ['127.0.0.1']],
    ['that leads to the metadata of a cloud', ['169.254.169.254']],
    ['of which one address is public and one is not', ['8.8.8.8', '10.0.0.1']],
    ['that leads to it by IPv6', ['::1']],
    ['that leads nowhere', []],
  ])('is not connected to by a name %s', async (_, addresses) => {
    const url = await receiver((_request, response) => response.end())
    const named = url.replace('127.0.0.1', 'inside.example')
    expect(await send(message(named), { ...closed, lookUp: saying(...addresses) })).toEqual(NOT_PUBLIC)
  })

  it('is told from a public one when the connection asks for one address', () => {
    let given: unknown[] = []
    const done = (...all: unknown[]) => void (given = all)
    onlyPublic(saying('8.8.8.8', '1.1.1.1'))('outside.example', {}, done)
    expect(given).toEqual([null, '8.8.8.8', 4])
    onlyPublic(saying('8.8.8.8', '1.1.1.1'))('outside.example', { all: true }, done)
    expect(given).toEqual([
      null,
      [
        { address: '8.8.8.8', family: 4 },
        { address: '1.1.1.1', family: 4 },
      ],
    ])
    onlyPublic(saying('8.8.8.8', '192.168.0.1'))('outside.example', {}, done)
    expect(given[0]).toBeInstanceOf(Error)
  })
})
