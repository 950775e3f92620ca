import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { CORPORA, isMissing, STRINGS } from '../../hostile/corpora.js'

/** Invented: what people try in names, marks and reasons. */
const PAYLOADS = [
  '<script>alert(1)</script>',
  '"><x y="1"/>',
  ']]></Title><Title>',
  '&lt;b&gt; &#0; &amp; %00',
  '../../../etc/passwd',
  '..\\..\\windows\\system32\\cmd.exe',
  'CON',
  'nul.svg',
  'a\u0000b\u0008c\u001b[2J',
  '\ufffe\uffff\ud800',
  '\u202ethgir ot tfel',
  '=cmd|" /C calc"!A0',
  ' ;@SUM(1)',
  'line one\nline two\r\nline three\tend',
  '',
  ' ',
  '문 1',
  'Zoe\u0308',
]

/** Those and, where it was fetched, the big list of naughty strings; in CI it must be there. */
export function naughty(): string[] {
  const list = join(CORPORA, STRINGS)
  if (!existsSync(list) && isMissing(STRINGS)) return PAYLOADS
  return [...PAYLOADS, ...(JSON.parse(readFileSync(list, 'utf8')) as string[])]
}
