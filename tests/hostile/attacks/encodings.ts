import { gzipSync } from 'node:zlib'
import { page, WORD, type Attack } from './make.js'

/** Bytes that are no text, and other kinds of files. */

const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (c) => c.charCodeAt(0))
const utf16le = (text: string): Uint8Array => Buffer.from(`\ufeff${text}`, 'utf16le')
const withBytes = (text: string, bytes: number[]): Uint8Array => {
  const [before, after] = text.split('§')
  return Buffer.concat([Buffer.from(before), Uint8Array.from(bytes), Buffer.from(after)])
}

export const encodings: Record<string, Attack> = {
  'bytes that are not UTF-8': {
    make: () => withBytes(page(`<g id="§"/>${WORD}`), [0xc3, 0x28]),
    then: 'malformed-drawing',
  },
  'an overlong slash': { make: () => withBytes(page(`<g id="§"/>${WORD}`), [0xc0, 0xaf]), then: 'malformed-drawing' },
  'half of a surrogate pair in UTF-8': {
    make: () => withBytes(page(`<g id="§"/>${WORD}`), [0xed, 0xa0, 0x80]),
    then: 'malformed-drawing',
  },
  'UTF-7': {
    make: () => page('+ADw-script+AD4-', '<?xml version="1.0" encoding="UTF-7"?>'),
    then: 'malformed-drawing',
  },
  'an encoding nobody knows': {
    make: () => page(WORD, '<?xml version="1.0" encoding="x-none"?>'),
    then: 'malformed-drawing',
  },
  'UTF-16 that says it is': {
    make: () => utf16le(page(WORD, '<?xml version="1.0" encoding="UTF-16"?>')),
    then: 'report',
  },
  'UTF-16 with half a character at the end': {
    make: () => utf16le(page(WORD)).subarray(0, -1),
    then: 'malformed-drawing',
  },
  'Latin-1 that says it is': {
    make: () => latin1(page(`<g id="T\u00fcr"/>${WORD}`, '<?xml version="1.0" encoding="ISO-8859-1"?>')),
    then: 'report',
  },
  'a NUL': { make: () => page(`<g id="a\0b"/>${WORD}`), then: 'malformed-drawing' },
  'a control character by its number': { make: () => page(`<g id="&#1;"/>${WORD}`), then: 'malformed-drawing' },
  'nothing but NULs': { make: () => new Uint8Array(4_000_000), then: 'malformed-drawing' },
  'nothing but blanks': { make: () => ' '.repeat(4_000_000), then: 'malformed-drawing' },
  'characters that turn the direction': {
    make: () => page('<text x="9" y="30" font-size="20">\u202eMOOR\u202c \u2066A\u2069</text>'),
    then: 'report',
  },
  'marks heaped on one letter': {
    make: () => page(`<text x="9" y="30" font-size="20">A${'\u0301'.repeat(20_000)}</text>`),
    then: 'report',
  },
}

export const otherFiles: Record<string, Attack> = {
  gzip: { make: () => gzipSync(page(WORD)), then: 'malformed-drawing' },
  'a gzip of a thousand times its size': { make: () => gzipSync(Buffer.alloc(100_000_000)), then: 'malformed-drawing' },
  'a gzip that was cut off': { make: () => gzipSync(page(WORD)).subarray(0, 60), then: 'malformed-drawing' },
  'a drawing that was cut off': { make: () => page(WORD).slice(0, -9), then: 'malformed-drawing' },
  'a drawing that was cut off in a tag': { make: () => page('<circle cx="').slice(0, -6), then: 'malformed-drawing' },
  'HTML that holds a drawing': {
    make: () => `<!DOCTYPE html><html><body>${page(WORD)}</body></html>`,
    then: 'malformed-drawing',
  },
  'a drawing with HTML after it': { make: () => `${page(WORD)}<html/>`, then: 'malformed-drawing' },
  'a PDF that is also a drawing': { make: () => `%PDF-1.4\n${page(WORD)}`, then: 'malformed-drawing' },
  'a ZIP that is also a drawing': { make: () => `PK\u0003\u0004${page(WORD)}`, then: 'malformed-drawing' },
  'a drawing with a ZIP after it': { make: () => `${page(WORD)}PK\u0003\u0004`, then: 'malformed-drawing' },
  'a drawing that is also a script': {
    make: () => page(`<script>*/alert(1)/*</script>${WORD}`, '<!--/*-->'),
    then: 'report',
  },
  'foreign elements': {
    make: () =>
      page(
        `<foreignObject width="99" height="99"><body xmlns="http://www.w3.org/1999/xhtml"><script>alert(1)</script><iframe src="file:///etc/hostname"/></body></foreignObject><image href="file:///etc/hostname" width="9" height="9"/><image href="data:image/svg+xml;base64,PHN2Zy8+" width="9" height="9"/>${WORD}`,
      ),
    then: 'report',
  },
  'another file included': {
    make: () =>
      page(
        `<xi:include xmlns:xi="http://www.w3.org/2001/XInclude" href="file:///etc/hostname" parse="text"/><use href="file:///etc/hostname#a"/>${WORD}`,
      ),
    then: 'report',
  },
}
