import Fastify from 'fastify'
import { expect, it } from 'vitest'
import { installErrorHandler } from '../../../src/service/errors.js'
import { installLoopGuard, watchLoop } from '../../../src/service/admission/loop-delay.js'

/** A watch that says what it is told to: the limit and the delays are invented. */
function guarded(limit: number) {
  const watch = { ms: 0, started: 0, stopped: 0 }
  const app = Fastify()
  installErrorHandler(app)
  installLoopGuard(
    app,
    { start: () => void watch.started++, stop: () => void watch.stopped++, delay: () => watch.ms },
    limit,
  )
  for (const path of ['/v1/work', '/livez', '/readyz', '/metrics', '/']) app.all(path, async () => 'done')
  return { app, watch }
}

it('refuses new work while the loop is slow, never health, metrics and pages', async () => {
  const { app, watch } = guarded(250)
  const status = async (url: string) => (await app.inject({ url, method: 'POST', payload: { a: 1 } })).statusCode
  expect(await status('/v1/work')).toBe(200)
  watch.ms = 251
  const refused = await app.inject({ url: '/v1/work', method: 'POST', payload: { a: 1 } })
  expect([refused.statusCode, refused.headers['retry-after']]).toEqual([503, '1'])
  // RFC 9457, 3: the media type of a problem.
  expect(refused.headers['content-type']).toContain('application/problem+json')
  expect(refused.json()).toMatchObject({ type: '/docs/problems/busy' })
  for (const url of ['/livez', '/readyz', '/metrics', '/']) expect(await status(url), url).toBe(200)
  expect(await status('/v1/nowhere')).toBe(404)
  watch.ms = 250
  expect(await status('/v1/work')).toBe(200)
})

it('watches while the service listens', async () => {
  const { app, watch } = guarded(250)
  await app.ready()
  expect([watch.started, watch.stopped]).toEqual([0, 0])
  await app.listen({ port: 0, host: '127.0.0.1' })
  expect([watch.started, watch.stopped]).toEqual([1, 0])
  await app.close()
  expect([watch.started, watch.stopped]).toEqual([1, 1])
})

it('sees that a loop is held up, by Node’s own histogram, and when it is free again', async () => {
  const watch = watchLoop()
  watch.start()
  let isHeld = true
  const hold = () => {
    const until = performance.now() + 60
    while (performance.now() < until);
    if (isHeld) setTimeout(hold)
  }
  hold()
  await expect.poll(watch.delay, { timeout: 20_000 }).toBeGreaterThan(40)
  isHeld = false
  await expect.poll(watch.delay, { timeout: 60_000 }).toBeLessThan(40)
  watch.stop()
})

it('holds a stall against nobody that it was told to forget', async () => {
  const watch = watchLoop()
  watch.start()
  const seen: number[] = []
  const look = setInterval(() => seen.push(watch.delay()), 20)
  const until = performance.now() + 2000
  while (performance.now() < until);
  watch.forget()
  await expect.poll(() => seen.length, { timeout: 20_000 }).toBeGreaterThan(20)
  clearInterval(look)
  watch.stop()
  expect(Math.max(...seen)).toBeLessThan(1000)
})
