import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { SaxesParser } from 'saxes'
import { beforeAll, describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import type { CheckInput } from '../../src/check.js'
import { fromJson } from '../../src/service/read-request.js'
import { Refusal } from '../../src/refusal.js'
import { answer } from '../../src/service/answer.js'
import type { ReportType } from '../../src/service/task.js'
import { page } from './attacks/make.js'
import { CORPORA, isMissing, STRINGS } from './corpora.js'

/** Whatever a client writes, in whatever place, is text in every form of the report: no tag, no attribute, no handler of it. */

const translator = createTranslator()

/** Invented: what people try in comments, names and forms. */
const PAYLOADS = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  '</title></style></textarea></svg><script>alert(1)</script>',
  '<svg/onload=alert(1)>',
  'javascript:alert(1)',
  '<!--<![CDATA[<?xml ?>]]>-->',
  '&lt;script&gt;&#60;script&#62;',
  '{{7*7}}${7*7}<%= 7*7 %>',
  '\u202ethgir ot tfel\u202c \u2066x\u2069 \u200f',
  '=cmd|" /C calc"!A0',
  '`${alert(1)}`',
  '\ufffe\uffff',
]

const strings = (): string[] =>
  existsSync(join(CORPORA, STRINGS))
    ? [...PAYLOADS, ...(JSON.parse(readFileSync(join(CORPORA, STRINGS), 'utf8')) as string[])]
    : PAYLOADS

/** Text as XML 1.0 can hold it: no control characters, no halves of pairs. */
const xml = (text: string): string =>
  text.replace(/(?![\t\n\r])\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu, '').replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`)

const drawn = (text: string): CheckInput => ({
  drawing: new TextEncoder().encode(
    page(
      `<g id="${xml(text)}" class="${xml(text)}" data-part="${xml(text)}" xmlns:inkscape="http://www.inkscape.org/namespaces/inkscape" inkscape:label="${xml(text)}">` +
        `<text x="9" y="30" font-size="20" font-family="${xml(text)}" fill="${xml(text)}">${xml(text)}</text>` +
        `<image href="${xml(text)}" width="9" height="9"/></g><style>@${xml(text.slice(0, 20))}{}</style>`,
    ),
  ),
  standards: ['us-ada-2010'],
  options: { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
})

const described = (text: string): CheckInput =>
  fromJson({
    sign: {
      use: 'permanent-room',
      mark: text.slice(0, 100),
      lettering: [{ text: text.slice(0, 500), typeface: { family: text.slice(0, 100) } }],
      braille: [{ text: text.slice(0, 500) }],
      pictograms: [{ meaning: text.slice(0, 500) }],
      properNames: [text.slice(0, 100)],
    },
  })

/** The report in one form; undefined when the string cannot stand there at all. */
function form(input: (text: string) => CheckInput, text: string, type: ReportType): string | undefined {
  try {
    return Buffer.from(answer({ kind: 'check', type, input: input(text) }, translator).body).toString()
  } catch (error) {
    if (error instanceof Refusal) return undefined
    throw error
  }
}

/** Names of elements and attributes; the markup has to be well-formed, once what only HTML leaves open is closed. */
function namesIn(markup: string): Set<string> {
  const names = new Set<string>()
  const parser = new SaxesParser({ xmlns: false, fragment: true })
  parser.on('error', (error) => {
    throw error
  })
  parser.on('opentag', ({ name, attributes }) => {
    names.add(name)
    for (const [attribute, value] of Object.entries(attributes)) {
      names.add(`@${attribute}`)
      if (/^(xlink:)?href$|^src$|^action$/.test(attribute)) expect(value).toMatch(/^(#|\/|https?:\/\/www\.)/)
    }
  })
  parser
    .write(
      markup
        .replace(/^<!doctype html>\s*/i, '')
        .replace(/<(meta|link|br|hr|img|input|wbr|col)\b([^>]*[^/>])?>/g, '<$1$2/>'),
    )
    .close()
  return names
}

const WAYS: [string, (text: string) => CheckInput][] = [
  ['in a description', described],
  ['in a drawing', drawn],
]

describe.each(WAYS)('strings %s', (_, input) => {
  let harmless: Set<string>
  beforeAll(() => {
    harmless = new Set()
    for (const text of ['ROOM', 'ROOM 204 a1', '(x) & y', 'ÄÖ 你好', ' ', '-1', 'a'.repeat(300)])
      for (const type of ['text/html', 'image/svg+xml'] as const)
        for (const name of namesIn(form(input, text, type) ?? '<p/>')) harmless.add(name)
  })

  it('are text in every form', () => {
    let reported = 0
    for (const text of strings()) {
      const json = form(input, text, 'application/json')
      if (json === undefined) continue
      reported++
      expect(() => JSON.parse(json) as unknown).not.toThrow()
      for (const type of ['text/html', 'image/svg+xml'] as const) {
        const markup = form(input, text, type) ?? ''
        const foreign = [...namesIn(markup)].filter((name) => !harmless.has(name))
        expect(foreign, `${type} of ${JSON.stringify(text)}`).toEqual([])
        expect(foreign.filter((name) => name.startsWith('@on'))).toEqual([])
        expect(markup).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/)
      }
    }
    console.log(`${reported} strings reported`)
    expect(reported).toBeGreaterThan(PAYLOADS.length / 2)
  }, 300_000)
})

describe.skipIf(isMissing(STRINGS))('the big list of naughty strings', () => {
  it('is among them', () => expect(strings().length).toBeGreaterThan(450))
})
