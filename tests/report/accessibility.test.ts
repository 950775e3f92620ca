import { existsSync } from 'node:fs'
import { AxeBuilder } from '@axe-core/playwright'
import { chromium, type Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { reportHtml } from '../../src/report/html.js'
import { reportSvg } from '../../src/report/svg.js'
import { judgement, sampleReport, sampleSign } from './sample.js'
import { severalReport } from './several.js'

/** Outside check: the rules of axe-core for WCAG 2.0 to 2.2, levels A and AA, in Chromium. */

const CHROMIUM = '/usr/bin/chromium'
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

const present = existsSync(CHROMIUM)
if (!present && !process.env.CI) console.warn(`${CHROMIUM} is not there: the accessibility of the page is not tested`)

const reports = {
  failing: sampleReport(),
  passing: sampleReport(sampleSign(), [judgement({ verdict: 'pass', margin: 0.7 }, 6.9)]),
  empty: sampleReport(sampleSign({ lettering: [], braille: [] }), []),
  several: severalReport(),
}

describe.skipIf(!present && !process.env.CI)('the page in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await chromium.launch({
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
  })
  afterAll(async () => {
    await browser?.close()
  })

  const cases = Object.entries(reports).flatMap(([name, report]) =>
    (['light', 'dark'] as const).map((scheme) => ({ name, report, scheme })),
  )

  it.each(cases)('breaks no rule: $name, $scheme', async ({ report, scheme }) => {
    const context = await browser.newContext({ colorScheme: scheme })
    try {
      const page = await context.newPage()
      await page.setContent(reportHtml(report, reportSvg(report, sampleSign())))
      for (const details of await page.locator('summary').all()) await details.click()
      const { violations, passes } = await new AxeBuilder({ page }).withTags(RULES).analyze()
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(' | ')}`)).toEqual([])
      expect(passes.map(({ id }) => id)).toContain('color-contrast')
    } finally {
      await context.close()
    }
  })

  // WCAG 2.2, 1.4.10 Reflow: no scrolling in two directions at a width of 320 CSS px.
  it('reflows at 320 px', async () => {
    const context = await browser.newContext({ viewport: { width: 320, height: 600 } })
    try {
      const page = await context.newPage()
      await page.setContent(reportHtml(reports.failing, reportSvg(reports.failing, sampleSign())))
      const width = await page.evaluate<number>('document.documentElement.scrollWidth')
      expect(width).toBeLessThanOrEqual(320)
    } finally {
      await context.close()
    }
  })

  // WCAG 2.2, 2.4.1 Bypass Blocks and 2.4.7 Focus Visible.
  it('offers the skip link first and shows where the focus is', async () => {
    const page = await browser.newPage()
    await page.setContent(reportHtml(reports.failing, reportSvg(reports.failing, sampleSign())))
    await page.keyboard.press('Tab')
    const focused = page.locator(':focus')
    expect(await focused.getAttribute('class')).toBe('skip')
    expect((await focused.boundingBox())?.x).toBeGreaterThanOrEqual(0)
    await page.close()
  })
})
