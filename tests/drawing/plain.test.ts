import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Gated } from '../../src/drawing/gate.js'
import { readPlain } from '../../src/drawing/plain.js'
import { readStrictly } from '../../src/drawing/strict.js'
import { filesIn, ICONS } from '../hostile/corpora.js'

/**
 * The fast reader of XML against saxes, an independent and strict one: whatever the fast one takes, saxes must take too and read
 * the same, down to lines and columns. Icons are those of the package bootstrap-icons; all other texts are invented.
 */

const EXAMPLES = fileURLToPath(new URL('../../docs/examples', import.meta.url))

/** What saxes makes of a text; undefined when it refuses it. */
function strictly(text: string): Gated | undefined {
  try {
    return readStrictly(text)
  } catch {
    return undefined
  }
}

const root = (content: string, attributes = '') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${content}</svg>`

describe('plain XML', () => {
  it('of two thousand icons and of our examples is read as saxes reads it', () => {
    const files = [...filesIn(ICONS, /\.svg$/), ...filesIn(EXAMPLES, /\.svg$/)]
    expect(files.length).toBeGreaterThan(2000)
    for (const file of files) {
      const text = readFileSync(file, 'utf8')
      const plain = readPlain(text)
      expect(plain, file).toBeDefined()
      expect(plain, file).toEqual(readStrictly(text))
    }
  })

  it.each([
    ['a declaration and a document type', `<?xml version="1.0" encoding="UTF-8"?>\r\n<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">\r\n<!-- made by hand -->\n${root('\r\n<g\r\n id="a"/>')}\n`], // prettier-ignore
    ['prefixes', `<s:svg xmlns:s="http://www.w3.org/2000/svg" xmlns:i="urn:i"><s:g i:label="A" xmlns:i="urn:j"><i:x/></s:g><s:g i:label="B" xml:space="preserve"/></s:svg>`], // prettier-ignore
    ['words', root('<text> a <tspan>\n b\r\n</tspan> <!-- c --> &amp; d &lt;</text> e')],
    ['a style sheet', root('<style><![CDATA[ .a > .b { fill: "&" } ]]></style>')],
    ['line breaks in values', root('<path d="M1 2\r\n\t3 4\n5 6" class=\'a"b\'/>', 'width = "1"')],
    ['names beyond ASCII in values', root('<g id="Tür ✂"/>')],
  ])('with %s is read', (_, text) => {
    expect(readPlain(text)).toBeDefined()
    expect(readPlain(text)).toEqual(readStrictly(text))
  })

  it.each([
    ['an entity of its own', '<!DOCTYPE svg [<!ENTITY a "b">]>' + root('<g id="&a;"/>')],
    ['a character by its number', root('<text>&#65;</text>')],
    ['a processing instruction', root('<?a b?>')],
    ['characters beyond U+FFFF', root('<g id="𝄞"/>')],
    ['names beyond ASCII', root('<tür/>')],
    ['a lone return', root('\r')],
    ['XML of another version', `<?xml version="1.1"?>${root('')}`],
  ])('gives up at %s, which the strict reader reads', (_, text) => {
    expect(readPlain(text)).toBeUndefined()
    expect(strictly(text)).toBeDefined()
  })

  const PIECES = fc.constantFrom(
    ...[
      '<g>',
      '</g>',
      '<g ',
      '/>',
      '>',
      '<path d="M1,2 3"/>',
      "<text x='1'>",
      '</text>',
      ' ',
      '\n',
      '\r\n',
      '\r',
      '\t',
      'a',
    ],
    ...[
      'id="b"',
      'id="c"',
      "class='d e'",
      'x:y="z"',
      'xmlns:x="urn:x"',
      'xmlns:x=""',
      'xmlns="urn:d"',
      'xmlns:xml="e"',
      '=',
    ],
    ...[
      '<!-- f -->',
      '<!---->',
      '<!-->',
      '<!--g--h-->',
      '<![CDATA[ i ]]>',
      '<![CDATA[]]>',
      ']]>',
      '&amp;',
      '&lt;',
      '&',
      '&#9;',
    ],
    ...['"', "'", '<', '</', '<x:k>', '</x:k>', 'ü', '😀', '\0', '\x7f', '\x85', '\u2028', '\ufffe', '<?l m?>', ' n = "o" ', 'p:q:r="s"'], // prettier-ignore
  )
  const documents = fc.array(PIECES, { maxLength: 14 }).map((pieces) => pieces.join(''))

  it('of any kind is read as saxes reads it, or not at all', () => {
    let read = 0
    const agree = (text: string) => {
      const plain = readPlain(text)
      if (!plain) return
      read++
      expect(plain).toEqual(readStrictly(text))
    }
    fc.assert(
      fc.property(documents, (content) => agree(root(content, 'xmlns:x="urn:x"'))),
      { numRuns: 4000, seed: 7 },
    )
    fc.assert(
      fc.property(documents, documents, (before, after) => agree(before + root('<g/>') + after)),
      { numRuns: 1000, seed: 7 },
    )
    expect(read).toBeGreaterThan(200)
  })
})
