import { existsSync } from 'node:fs'
import { AxeBuilder } from '@axe-core/playwright'
import { chromium, type Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { reportHtml } from '../../../src/report/html.js'
import { setHtml } from '../../../src/report/set/html.js'
import { inspectionHtml } from '../../../src/report/set/inspection-sheet.js'
import { sampleSet, setSign, wordedSet } from './evidence-sample.js'

/** Outside check: the rules of axe-core for WCAG 2.0 to 2.2, levels A and AA, in Chromium. */

const CHROMIUM = '/usr/bin/chromium'
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

const present = existsSync(CHROMIUM)
if (!present && !process.env.CI) console.warn(`${CHROMIUM} is not there: the pages of a set are not tested`)

/** The same sign twice: what is in the page twice must not have one name. */
const twice = { ...sampleSet(), signs: [setSign('L-17'), setSign('L-17')] }
const empty = { ...sampleSet(), signs: [], setFindings: [], intakeProblems: [], state: 'running' as const }
const [waived] = sampleSet().signs

const pages: Record<string, string> = {
  set: setHtml(sampleSet()),
  twice: setHtml(twice),
  empty: setHtml(empty),
  worded: setHtml(wordedSet('Zoë’s long name '.repeat(20))),
  sheet: inspectionHtml(sampleSet()),
  'report with waivers': waived?.report ? reportHtml(waived.report, waived.drawing ?? '', waived) : '',
}

describe.skipIf(!present && !process.env.CI)('the pages of a set in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox', '--disable-gpu'] })
  })
  afterAll(async () => {
    await browser?.close()
  })

  /** Colours come from one style, so that the dark ones are seen where all of it is used. */
  const DARK = ['set', 'sheet', 'report with waivers']
  const cases = Object.entries(pages).flatMap(([name, html]) =>
    (DARK.includes(name) ? (['light', 'dark'] as const) : (['light'] as const)).map((scheme) => ({
      name,
      html,
      scheme,
    })),
  )

  it.each(cases)('break no rule: $name, $scheme', async ({ html, scheme }) => {
    const context = await browser.newContext({ colorScheme: scheme })
    try {
      const page = await context.newPage()
      await page.setContent(html)
      for (const details of await page.locator('summary').all()) await details.click()
      const { violations, passes } = await new AxeBuilder({ page }).withTags(RULES).analyze()
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(' | ')}`)).toEqual([])
      expect(passes.map(({ id }) => id)).toContain('color-contrast')
    } finally {
      await context.close()
    }
  })

  // WCAG 2.2, 1.4.10 Reflow: no scrolling in two directions at a width of 320 CSS px.
  it.each(Object.entries(pages))('reflow at 320 px: %s', async (_, html) => {
    const context = await browser.newContext({ viewport: { width: 320, height: 600 } })
    try {
      const page = await context.newPage()
      await page.setContent(html)
      expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320)
    } finally {
      await context.close()
    }
  })
})
