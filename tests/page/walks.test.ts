import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  cannotLook,
  example,
  handIn,
  listening,
  openBrowser,
  SET,
  signsOf,
  whenChecked,
  type Listening,
} from './browser.js'

/** What people do with the page: by keyboard alone, without scripts, with a pointer. */

describe.skipIf(cannotLook)('a person at the page', () => {
  let browser: Browser
  let works: Listening
  beforeAll(async () => {
    browser = await openBrowser()
    works = await listening()
  })
  afterAll(async () => {
    await browser?.close()
    await works?.app.close()
  })

  /** Presses Tab until the focus is there, and sees that the focus can be seen (WCAG 2.2, 2.4.7 and 2.4.11). */
  async function tabTo(page: Page, selector: string) {
    for (let presses = 0; presses < 200; presses++) {
      await page.keyboard.press('Tab')
      if (!(await page.evaluate<boolean>(`document.activeElement.matches(${JSON.stringify(selector)})`))) continue
      const seen = await page.evaluate<boolean>(
        '(() => { const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement); return outlineStyle !== "none" && parseFloat(outlineWidth) >= 2 })()',
      )
      expect(seen, `the focus on ${selector} is seen`).toBe(true)
      return
    }
    throw new Error(`Tab does not lead to ${selector}`)
  }

  it('hands in, reads, measures and waives by keyboard alone', async () => {
    const page = await browser.newPage()
    await page.goto(works.base)
    await page.keyboard.press('Tab')
    expect(await page.locator(':focus').getAttribute('class')).toBe('skip')
    await tabTo(page, '#files')
    // Stands for the dialog of the system, which no page sees.
    await page.locator(':focus').setInputFiles([example('glaze-lab.svg')])
    await tabTo(page, '#name')
    await page.keyboard.type('By keyboard')
    await tabTo(page, 'main form button[type=submit]')
    await page.keyboard.press('Enter')
    await page.waitForURL(/\/submittals\/sub_/)
    await page.locator('[data-progress]').waitFor({ state: 'detached' })
    expect(await page.locator('[data-announce]').textContent()).toMatch(/Checked/)
    await tabTo(page, '#sign-list tbody a')
    await page.keyboard.press('Enter')
    await page.waitForURL(/\/signs\//)

    await tabTo(page, 'input[id="values-braille.dotHeight"]')
    await page.keyboard.type('0.028 0.029 0.027')
    await page.keyboard.press('Enter')
    await page.waitForURL(/said=measured/)
    await page.locator('[data-progress]').waitFor({ state: 'detached' })
    await page
      .getByText(/0\.028, 0\.029, 0\.027 in/)
      .first()
      .waitFor()

    await tabTo(page, '#finding-1 summary')
    await page.keyboard.press('Enter')
    for (const [field, text] of Object.entries({
      reason: 'The wall is tiled.',
      authority: 'V 12',
      author: 'R. Ferrante',
    })) {
      await tabTo(page, `#waive-1-${field}`)
      await page.keyboard.type(text)
    }
    await page.keyboard.press('Enter')
    await page.waitForURL(/said=waived/)
    expect(await page.locator('#finding-1').textContent()).toContain('Authority reference: V 12')
    expect(await page.locator('#finding-1').textContent()).toContain('Fails')
    await page.close()
  })

  it('does all of it without scripts', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false })
    const page = await context.newPage()
    await page.goto(works.base)
    await page.setInputFiles('#files', [example('glaze-lab.svg'), example('landing-2.json')])
    await page.getByRole('button', { name: 'Hand in and check' }).click()
    await whenChecked(works, /sub_\w+/.exec(page.url())?.[0] ?? '')
    await page.reload()
    await page.getByRole('combobox', { name: 'Verdict' }).selectOption('fail')
    await page.getByRole('button', { name: 'Filter' }).click()
    expect(await page.locator('#sign-list tbody tr').count()).toBe(1)
    await page.locator('#sign-list tbody a').click()
    await page
      .getByRole('link', { name: /Show on the drawing/ })
      .first()
      .click()
    expect(await page.locator('.place:target').count()).toBe(1)
    await page.fill('input[id="values-braille.dotHeight"]', '0.028')
    await page.getByRole('button', { name: 'Enter and check again' }).first().click()
    await whenChecked(works, /sub_\w+/.exec(page.url())?.[0] ?? '')
    await page.goto(page.url().split('?')[0] ?? '')
    expect(await page.locator('#laid-over ~ ul').first().textContent()).toContain('0.028 in')
    await context.close()
  })

  it('sees a set on its way without scripts, and may stop the page from loading itself', async () => {
    const waits = await listening({ role: 'api' })
    const id = await handIn(waits, SET, 'Waiting')
    const text = await (await fetch(`${waits.base}/submittals/${id}`)).text()
    expect(text).toMatch(/<noscript\s*><meta http-equiv="refresh" content="10"/)
    const still = await (await fetch(`${waits.base}/submittals/${id}?still=1`)).text()
    expect(still).not.toContain('http-equiv="refresh"')
    await waits.app.close()
  })

  it('finds the place of a finding on the drawing, and the finding of a place, with the pointer and with the focus', async () => {
    const id = await handIn(works, SET, 'Pointed at')
    await whenChecked(works, id)
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
    await page.goto(works.base + ((await signsOf(works, id)).get('K-106') ?? ''))
    const place = page.locator('.place[data-findings~="1"]').first()
    const finding = page.locator('#finding-1')
    const outline = () =>
      page.evaluate<number>(
        'Number(getComputedStyle(document.querySelector(".place[data-findings~=\'1\'] rect")).strokeOpacity)',
      )
    expect(await outline()).toBe(0)
    await finding.getByRole('link', { name: /Show on the drawing/ }).focus()
    expect(await outline()).toBe(1)
    await page.locator('h1').click()
    expect(await outline()).toBe(0)
    await finding.hover()
    expect(await outline()).toBe(1)
    await page.mouse.move(0, 0)
    expect(await finding.getAttribute('class')).not.toContain('lit')
    await place.focus()
    expect(await finding.getAttribute('class')).toContain('lit')
    await page.keyboard.press('Enter')
    await page.waitForURL(/#finding-1$/)
    await page.close()
  })

  it('drops files and sees the table follow the filter', async () => {
    const id = await handIn(works, SET, 'Filtered')
    await whenChecked(works, id)
    const page = await browser.newPage()
    await page.goto(`${works.base}/submittals/${id}`)
    await page.locator('#text').pressSequentially('k-10')
    await page.locator('#found', { hasText: /^2 signs/ }).waitFor()
    expect(await page.locator('[data-announce]').textContent()).toContain('2 signs')
    expect(page.url()).toContain('text=k-10')
    await page.goto(works.base)
    await page.evaluate(
      '(() => { const data = new DataTransfer(); data.items.add(new File(["x"], "a.svg")); document.querySelector("[data-drop]").dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true })) })()',
    )
    expect(await page.locator('[data-drop-said]').textContent()).toContain('1 chosen: a.svg')
    await page.close()
  })
})
