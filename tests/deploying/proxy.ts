import { createServer, request, type IncomingMessage, type ServerResponse } from 'node:http'
import { once } from 'node:events'
import type { AddressInfo } from 'node:net'

/**
 * A load balancer as simple as there can be: each request goes to the next process in turn, and to the one after it where no
 * connection comes about, as nginx and HAProxy do. An answer that breaks off is broken off for the client too.
 */
export interface Balancer {
  base: string
  /** Which process answered, in the order of the answers. */
  served: number[]
  close: () => Promise<void>
}

const CANNOT_CONNECT = ['ECONNREFUSED', 'ECONNRESET']

/** @param targets addresses of the processes */
export async function balance(targets: readonly string[]): Promise<Balancer> {
  const served: number[] = []
  let turn = 0

  function forward(asked: IncomingMessage, reply: ServerResponse, body: Buffer, index: number, tried = 0) {
    const { method, headers, url } = asked
    const sent = request(`${targets[index] ?? ''}${url ?? ''}`, { method, headers, agent: false }, (answer) => {
      served.push(index)
      reply.writeHead(answer.statusCode ?? 502, { ...answer.headers, 'x-served-by': String(index) })
      answer.pipe(reply)
      answer.on('error', () => reply.destroy())
    })
    sent.on('error', (error: NodeJS.ErrnoException) => {
      const isUntouched = error.code === 'ECONNREFUSED'
      if (isUntouched && tried + 1 < targets.length)
        forward(asked, reply, body, (index + 1) % targets.length, tried + 1)
      else if (reply.headersSent || CANNOT_CONNECT.includes(error.code ?? '')) reply.destroy()
      else reply.writeHead(502).end()
    })
    reply.on('close', () => sent.destroy())
    sent.end(body)
  }

  const server = createServer((asked, reply) => {
    const chunks: Buffer[] = []
    asked.on('data', (chunk: Buffer) => chunks.push(chunk))
    asked.on('end', () => forward(asked, reply, Buffer.concat(chunks), turn++ % targets.length))
  }).listen(0, '127.0.0.1')
  await once(server, 'listening')
  return {
    base: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    served,
    close: async () => {
      server.closeAllConnections()
      server.close()
      await once(server, 'close')
    },
  }
}
