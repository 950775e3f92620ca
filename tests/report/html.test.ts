import { createHash } from 'node:crypto'
import { SaxesParser } from 'saxes'
import { describe, expect, it } from 'vitest'
import { reportHtml, REPORT_STYLE_HASH } from '../../src/report/html.js'
import { reportSvg } from '../../src/report/svg.js'
import { judgement, observation, sampleReport, sampleSign } from './sample.js'

const page = (report = sampleReport(), sign = sampleSign()): string => reportHtml(report, reportSvg(report, sign))

/** Everything that begins with a tag's name. */
const tags = (html: string, name: string): string[] => html.match(new RegExp(`<${name}[\\s>][^>]*`, 'g')) ?? []

describe('the page', () => {
  it('says the verdict in words, then what is wrong, then what is undecided', () => {
    const html = page()
    const order = [
      'id="verdict"',
      'id="wrong"',
      'id="undecided"',
      'id="rest"',
      'id="reading"',
      'id="assumptions"',
      'id="ignored"',
      'id="caveats"',
      'id="sources"',
      'id="identity"',
    ]
    const places = order.map((text) => html.indexOf(text))
    expect(places.every((at) => at > 0)).toBe(true)
    expect([...places].sort((a, b) => a - b)).toEqual(places)
    for (const words of [
      '✗ Fails',
      'The sign fails 3 requirements',
      '703.3.1 Cell spacing',
      '0.241 inch (6.1 mm) to 0.300 inch (7.6 mm)',
      'Set the cell spacing to 6.9 mm',
    ])
      expect(html).toContain(words)
  })

  it('gives each numbered finding an id that the drawing shares', () => {
    const html = page()
    for (let number = 1; number <= 8; number++)
      expect(html.match(new RegExp(`id="finding-${number}"`, 'g'))).toHaveLength(1)
  })

  it('has one h1, headings in order, one main, a language and a skip link that leads somewhere', () => {
    const html = page()
    expect(tags(html, 'h1')).toHaveLength(1)
    expect(tags(html, 'main')).toHaveLength(1)
    expect(html).toMatch(/<html lang="en">/)
    const levels = [...html.matchAll(/<h([1-6])/g)].map((m) => Number(m[1]))
    levels.slice(1).forEach((level, i) => expect(level - (levels[i] ?? 0)).toBeLessThanOrEqual(1))
    const target = /class="skip" href="#([a-z]+)"/.exec(html)?.[1]
    expect(html).toContain(`id="${target}"`)
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map((m) => m[1])
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('gives every table a caption and every head a scope', () => {
    const html = page()
    expect(tags(html, 'caption')).toHaveLength(tags(html, 'table').length)
    for (const th of tags(html, 'th')) expect(th).toContain('scope=')
  })

  // Content Security Policy Level 3: a hash source is the base64 SHA-256 of the exact text of the element.
  it('has one style whose hash is the one exported, and no other style or script', () => {
    const html = page()
    const styles = [...html.matchAll(/<style>([\s\S]*?)<\/style>/g)]
    expect(styles).toHaveLength(1)
    expect(
      `sha256-${createHash('sha256')
        .update(styles[0]?.[1] ?? '')
        .digest('base64')}`,
    ).toBe(REPORT_STYLE_HASH)
    expect(html).not.toMatch(/<script|\sstyle=|\son[a-z]+=|javascript:|https?:\/\/(?!www\.w3\.org\/2000\/svg)/i)
  })

  it('is balanced markup: but for its doctype it is well-formed XML', () => {
    const xml = page().replace('<!doctype html>', '')

    const parser = new SaxesParser()
    parser.on('error', (error) => {
      throw error
    })
    parser.write(xml).close()
    expect(xml.length).toBeGreaterThan(1000)
  })

  it('escapes whatever a client says, wherever it says it', () => {
    const evil = '<img src=x onerror=alert(1)>"\'&</style></title>\u202e\u0000'
    const sign = sampleSign({
      mark: evil,
      assumptions: [{ about: evil, text: evil }],
      ignored: [{ source: { id: evil, line: 1, column: 1 }, why: evil }],
      unread: [
        {
          place: { element: evil, source: { id: evil, line: 1, column: 1 }, pointer: evil },
          why: evil,
          couldBe: ['braille'],
        },
      ],
    })
    const seen = [
      observation(5.8, {
        remark: evil,
        instrument: evil,
        places: [{ element: evil, pointer: evil, source: { id: evil, line: 1, column: 1 } }],
      }),
    ]
    const gaps = [
      { reason: 'missing-fact' as const, why: evil, places: [], ask: { pointer: evil, ask: evil, choices: [evil] } },
    ]
    const rows = [
      judgement({ decisive: seen }),
      judgement({ verdict: 'undetermined', reason: 'missing-fact', decisive: [], gaps }),
    ]
    const html = page(sampleReport(sign, rows), sign)
    expect(html).not.toContain('<img')
    expect(html).not.toMatch(/\u202e|\p{Cc}(?<!\n)/u)
    expect([...html.matchAll(/<\/style>/g)]).toHaveLength(1)
    expect([...html.matchAll(/<title>/g)]).toHaveLength(1)
  })

  it('says the cells by their dots, and hides the glyphs from those who hear', () => {
    expect(page()).toContain(
      '<span class="cells" aria-hidden="true">⠓⠊⠇⠇</span><span class="hidden">dots 1 2 5, dots 2 4, dots 1 2 3, dots 1 2 3</span>',
    )
  })

  it('is the same for the same report', () => {
    expect(page()).toBe(page())
  })
})
