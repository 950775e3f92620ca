import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  brokenRules,
  cannotLook,
  handIn,
  listening,
  openBrowser,
  SET,
  signsOf,
  whenChecked,
  type Listening,
} from './browser.js'

/** Every page in every state, by the rules of axe-core in Chromium, and by WCAG 2.2 where axe has no rule. */

describe.skipIf(cannotLook)('the pages in a browser', () => {
  let browser: Browser
  let works: Listening
  let waits: Listening
  let asks: Listening
  /** Address of each state. */
  const states = new Map<string, string>()
  const addressOf = (state: string): string => {
    const address = states.get(state)
    if (address === undefined) throw new Error(`there is no state ${state}`)
    return address
  }

  beforeAll(async () => {
    browser = await openBrowser()
    works = await listening()
    waits = await listening({ role: 'api' })
    asks = await listening({ auth: 'keys' })
    states.set('nothing handed in', `${waits.base}/submittals`)
    const queued = await handIn(waits, SET, 'Waiting')
    const [first = ''] = (await signsOf(waits, queued)).values()
    states.set('set that waits', `${waits.base}/submittals/${queued}`)
    states.set('sign that waits', `${waits.base}${first}`)
    const done = await handIn(works, SET, 'Pottery studio', ['us-ada-2010', 'us-ca-2019'])
    await whenChecked(works, done)
    const signs = await signsOf(works, done)
    const at = `${works.base}/submittals/${done}`
    const failing = `${works.base}${signs.get('K-106') ?? ''}`
    await layOver(failing)
    await whenChecked(works, done)
    states.set('first page', `${works.base}/`)
    states.set('list', `${works.base}/submittals`)
    states.set('set', at)
    states.set('set, nothing found', `${at}?text=zzz&verdict=pass`)
    states.set('failing sign with all laid over', failing)
    states.set('earlier report', `${failing}?report=1`)
    states.set('undecided sign', `${works.base}${signs.get('L-2') ?? ''}`)
    states.set('sign without a report', `${works.base}${signs.get('bare') ?? ''}`)
    states.set('history', `${at}/history`)
    states.set('delete', `${at}/delete`)
    states.set('add', `${at}/add`)
    states.set('nothing there', `${works.base}/submittals/nowhere`)
    states.set('sign in', `${asks.base}/sign-in`)
    states.set('nobody signed in', `${asks.base}/`)
  })
  afterAll(async () => {
    await browser?.close()
    for (const one of [works, waits, asks]) await one?.app.close()
  })

  /** A reading, a waiver of the first finding and a note. */
  async function layOver(address: string) {
    const post = (path: string, fields: Record<string, string>) =>
      fetch(`${address}/${path}`, { method: 'POST', body: new URLSearchParams(fields), redirect: 'manual' })
    const text = await (await fetch(address)).text()
    const fingerprint = /name="fingerprint" value="(\w+)"/.exec(text)?.[1] ?? ''
    expect(fingerprint).not.toBe('')
    const waiver = { fingerprint, reason: 'The wall is tiled.', authority: 'V 12', author: 'R. Ferrante' }
    const readings = {
      'values-braille.dotHeight': '0.71 0.74',
      'unit-braille.dotHeight': 'mm',
      instrument: 'Dial gauge',
    }
    for (const [path, fields] of Object.entries({ waivers: waiver, notes: { text: 'Seen.' }, measurements: readings }))
      expect((await post(path, fields)).status, path).toBe(303)
  }

  async function looking<T>(options: BrowserContextOptions, look: (page: Page) => Promise<T>): Promise<T> {
    const context = await browser.newContext(options)
    try {
      return await look(await context.newPage())
    } finally {
      await context.close()
    }
  }

  const NAMES = [
    'nothing handed in',
    'set that waits',
    'sign that waits',
    'first page',
    'list',
    'set',
    'set, nothing found',
    'failing sign with all laid over',
    'earlier report',
    'undecided sign',
    'sign without a report',
    'history',
    'delete',
    'add',
    'nothing there',
    'sign in',
    'nobody signed in',
  ]

  it.each(NAMES)('break no rule, wide and light, narrow and dark: %s', async (name) => {
    const address = addressOf(name)
    for (const options of [
      { viewport: { width: 1280, height: 900 }, colorScheme: 'light' as const },
      // WCAG 2.2, 1.4.10 Reflow: 1280 px at 400 % are 320 px.
      { viewport: { width: 320, height: 640 }, colorScheme: 'dark' as const },
    ])
      await looking(options, async (page) => {
        await page.goto(address)
        const { broken, passed } = await brokenRules(page)
        expect(broken).toEqual([])
        expect(passed).toContain('color-contrast')
        expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(
          options.viewport.width,
        )
      })
  })

  it.each(['first page', 'set', 'failing sign with all laid over'])(
    'break no rule with large text and with forced colours: %s',
    async (name) => {
      await looking({ viewport: { width: 1280, height: 900 }, forcedColors: 'active' }, async (page) => {
        await page.goto(addressOf(name))
        // WCAG 2.2, 1.4.4 Resize Text.
        await page.evaluate('document.documentElement.style.fontSize = "200%"')
        expect((await brokenRules(page)).broken).toEqual([])
        expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(1280)
      })
    },
  )

  // WCAG 2.2, 3.3.1 Error Identification and 2.4.3 Focus Order.
  it('lead to what is wrong in a form, keep what was typed, and break no rule in that state', async () => {
    await looking({ viewport: { width: 320, height: 640 } }, async (page) => {
      await page.goto(addressOf('first page'))
      await page.fill('#name', 'Second floor')
      await page.evaluate('document.querySelector("form[enctype]").noValidate = true')
      await page.getByRole('button', { name: 'Hand in and check' }).click()
      expect(await page.title()).toMatch(/^Error:/)
      expect(await page.locator(':focus').getAttribute('id')).toBe('errors')
      expect(await page.inputValue('#name')).toBe('Second floor')
      expect((await brokenRules(page)).broken).toEqual([])
      await page.getByRole('link', { name: 'Choose at least one file.' }).click()
      expect(await page.locator(':focus').getAttribute('id')).toBe('files')
    })
  })

  it('say what is wrong with a reading beside it', async () => {
    await looking({ viewport: { width: 1280, height: 900 } }, async (page) => {
      await page.goto(addressOf('undecided sign'))
      const values = page.locator('input[id^="values-"]').first()
      await values.fill('0,71')
      await page.getByRole('button', { name: 'Enter and check again' }).first().click()
      expect(await page.locator(':focus').getAttribute('id')).toBe('errors')
      const again = page.locator('input[id^="values-"]').first()
      expect(await again.inputValue()).toBe('0,71')
      expect(await again.getAttribute('aria-invalid')).toBe('true')
      expect((await brokenRules(page)).broken).toEqual([])
    })
  })

  // WCAG 2.2, 2.3.3 Animation from Interactions.
  it('move nothing for those who ask for less motion', async () => {
    const motion = async (reducedMotion: 'reduce' | 'no-preference') =>
      looking({ reducedMotion }, async (page) => {
        await page.goto(addressOf('failing sign with all laid over'))
        return page.evaluate<string>('getComputedStyle(document.documentElement).scrollBehavior')
      })
    expect(await motion('no-preference')).toBe('smooth')
    expect(await motion('reduce')).toBe('auto')
  })

  it('print the findings and none of the forms', async () => {
    await looking({}, async (page) => {
      await page.goto(addressOf('failing sign with all laid over'))
      await page.emulateMedia({ media: 'print' })
      expect(await page.locator('#finding-1').isVisible()).toBe(true)
      for (const form of await page.locator('form').all()) expect(await form.isVisible()).toBe(false)
    })
  })
})
