import { existsSync, readFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { setTimeout as wait } from 'node:timers/promises'
import { AxeBuilder } from '@axe-core/playwright'
import { chromium, type Browser, type Page } from 'playwright-core'
import type { FastifyInstance } from 'fastify'
import type { Settings } from '../../src/service/settings.js'
import { runningService } from '../service/running.js'

/** A service that listens, a browser that looks at it, and sets of signs to look at. */

const CHROMIUM = '/usr/bin/chromium'
const present = existsSync(CHROMIUM)
if (!present && !process.env.CI) console.warn(`${CHROMIUM} is not there: the page is not tested in a browser`)

/** Without a browser these tests are skipped; in CI they fail. */
export const cannotLook = !present && !process.env.CI

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: CHROMIUM,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })

const LONG = 60_000

export interface Listening {
  app: FastifyInstance
  base: string
}

export async function listening(settings: Partial<Settings> = {}): Promise<Listening> {
  // What is tested here is not how long a check may take on a machine that is shared.
  const app = await runningService({ timeLimit: LONG, ...settings })
  await app.listen({ host: '127.0.0.1', port: 0 })
  const { port } = app.server.address() as AddressInfo
  return { app, base: `http://127.0.0.1:${port}` }
}

/** Our own drawings and descriptions, with a schedule of them. */
export const example = (name: string): string => new URL(`../../docs/examples/${name}`, import.meta.url).pathname

const PNG = Buffer.from('89504e470d0a1a0a', 'hex')
const BARE = Buffer.from(
  '<svg xmlns="http://www.w3.org/2000/svg" width="50mm" height="50mm" viewBox="0 0 50 50"><rect width="50" height="50"/></svg>',
)

/** Signs that fail, are undecided and cannot be checked, doors without a sign, a file that cannot be used. */
export const SET = [
  ...['schedule.csv', 'kiln-room.svg', 'kiln-room.json', 'glaze-lab.svg', 'landing-2.json'].map((name) => ({
    name,
    bytes: readFileSync(example(name)),
  })),
  { name: 'bare.svg', bytes: BARE },
  { name: 'picture.png', bytes: PNG },
]

/** @returns the id of the new submittal */
export async function handIn(
  { base }: Listening,
  files: readonly { name: string; bytes: Uint8Array }[],
  name: string,
  standards = ['us-ada-2010'],
): Promise<string> {
  const form = new FormData()
  for (const { name: file, bytes } of files) form.append('files', new Blob([new Uint8Array(bytes)]), file)
  form.set('name', name)
  for (const standard of standards) form.append('standards', standard)
  const { status, headers } = await fetch(`${base}/submittals`, { method: 'POST', body: form, redirect: 'manual' })
  const id = /^\/submittals\/(\w+)$/.exec(headers.get('location') ?? '')?.[1]
  if (status !== 303 || id === undefined) throw new Error(`the set was not taken: ${status}`)
  return id
}

const PAUSE = 200

export async function whenChecked({ base }: Listening, submittal: string): Promise<void> {
  for (;;) {
    const answer = (await (await fetch(`${base}/v1/submittals/${submittal}`)).json()) as { state: string }
    if (answer.state === 'done') return
    await wait(PAUSE)
  }
}

/** Addresses of the pages of the signs, by their marks. */
export async function signsOf({ base }: Listening, submittal: string): Promise<Map<string, string>> {
  const { signs } = (await (await fetch(`${base}/v1/submittals/${submittal}/signs`)).json()) as {
    signs: { id: string; mark: string }[]
  }
  return new Map(signs.map(({ id, mark }) => [mark, `/submittals/${submittal}/signs/${id}`]))
}

/** Outside check: the rules of axe-core for WCAG 2.0 to 2.2, levels A and AA, and its best practice. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** What axe finds wrong with all that a page has, folded parts too. */
export async function brokenRules(page: Page): Promise<{ broken: string[]; passed: string[] }> {
  await page.evaluate('document.querySelectorAll("details").forEach((part) => { part.open = true })')
  const { violations, passes } = await new AxeBuilder({ page }).withTags(RULES).analyze()
  return {
    broken: violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`),
    passed: passes.map(({ id }) => id),
  }
}
