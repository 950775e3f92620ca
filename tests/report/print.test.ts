import { existsSync } from 'node:fs'
import { chromium, type Browser, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { examine } from '../../src/check.js'
import { reportHtml } from '../../src/report/html.js'
import { reportSvg } from '../../src/report/svg.js'
import { SignDescription } from '../../src/sign/description.js'
import { kiln, PRODUCT } from '../end-to-end/kiln.js'

/** The page on paper, in Chromium. That one sign fits on five sheets is our own aim: what is filed is read to its end. */

const CHROMIUM = '/usr/bin/chromium'
const MOST_SHEETS = 5

const present = existsSync(CHROMIUM)
if (!present && !process.env.CI) console.warn(`${CHROMIUM} is not there: the printed page is not tested`)

function pageOfKiln(): string {
  const { report, sign } = examine(
    {
      drawing: new TextEncoder().encode(kiln({ cells: '⠅⠂⠇⠝⠀⠗⠕⠕⠍' })),
      sign: SignDescription.parse(PRODUCT),
      standards: ['us-ada-2010'],
      options: { use: 'permanent-room', decisionRule: 'guarded', unitSystem: 'printed', language: 'en' },
    },
    createTranslator(),
  )
  return reportHtml(report, reportSvg(report, sign))
}

describe.skipIf(!present && !process.env.CI)('the page on paper', () => {
  let browser: Browser
  let page: Page
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox', '--disable-gpu'] })
    page = await browser.newPage()
    await page.setContent(pageOfKiln())
  })
  afterAll(() => browser.close())

  it.each(['Letter', 'A4'])('takes few sheets: %s', async (format) => {
    const pdf = (await page.pdf({ format, preferCSSPageSize: true })).toString('latin1')
    const sheets = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0
    expect(sheets).toBeGreaterThan(1)
    expect(sheets).toBeLessThanOrEqual(MOST_SHEETS)
  })

  it('shows what is folded away, without its caption a second time', async () => {
    await page.emulateMedia({ media: 'print' })
    const rest = page.locator('#rest')
    await expect.poll(() => rest.locator('tbody tr').first().isVisible()).toBe(true)
    expect(await rest.locator('caption').first().isVisible()).toBe(false)
    expect(await page.locator('#reading caption').first().isVisible()).toBe(true)
  })
})
