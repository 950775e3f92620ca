import { page, repeat, WORD, type Attack } from './make.js'

/** Numbers and style sheets. */

export const numbers: Record<string, Attack> = Object.fromEntries(
  [
    '1e999',
    '-1e999',
    '1e308',
    '1e-320',
    'NaN',
    'Infinity',
    '0x10',
    '1e',
    '--1',
    '+-1',
    '.',
    '9'.repeat(400),
    `0.${'0'.repeat(60_000)}1`,
    '1e99999999999',
    '',
  ].flatMap((number): [string, Attack][] => {
    const shown = number.length > 20 ? `${number.slice(0, 8)}… (${number.length})` : number
    return [
      [
        `the number ${JSON.stringify(shown)} everywhere`,
        {
          make: () =>
            page(
              `<circle cx="${number}" cy="9" r=".75"/><rect x="5" y="${number}" width="${number}" height="3"/><path d="M0 0L${number} 5 9 ${number}a${number} 3 0 0 1 5 5z" stroke="#000" stroke-width="${number}" stroke-dasharray="${number} 1"/><text x="${number}" y="20" font-size="${number}" letter-spacing="${number}">A</text><g transform="scale(${number})">${WORD}</g><g opacity="${number}">${WORD}</g>${WORD}`,
            ),
          then: 'report',
        },
      ],
    ]
  }),
)

export const styles: Record<string, Attack> = {
  'ten thousand selectors': {
    make: () => page(`<style>${repeat(10_000, (i) => `.a${i}{fill:red}`)}</style>${WORD}`),
    then: 'too-complex',
  },
  'selectors that look at everything, on everything': {
    make: () =>
      page(
        `<style>${repeat(1_900, (i) => `g * + * ~ * > [id*="a${i}"]{fill:red}`)}</style>${'<g><g><g id="a"/></g></g>'.repeat(14_000)}`,
      ),
    then: 'too-complex',
  },
  'a selector of stars': {
    make: () => page(`<style>${'* '.repeat(60_000)}{fill:red}</style>${'<g>'.repeat(200)}${WORD}${'</g>'.repeat(200)}`),
    then: 'too-complex',
  },
  'selectors that back up': {
    make: () =>
      page(
        `<style>${repeat(200, (i) => `${'g '.repeat(30)}x${i} {fill:red}`)}</style>${'<g>'.repeat(240)}${'<rect width="5" height="5"/>'.repeat(200)}${'</g>'.repeat(240)}${WORD}`,
      ),
    then: 'report',
  },
  'selectors that look down': {
    make: () =>
      page(
        `<style>${repeat(200, (i) => `:has(:has(.b${i})){fill:red}`)}</style>${'<g>'.repeat(20)}${'<rect width="5" height="5"/>'.repeat(5_000)}${'</g>'.repeat(20)}${WORD}`,
      ),
    then: 'too-complex',
  },
  'pseudo-classes inside one another': {
    make: () => page(`<style>${':not('.repeat(20_000)}a${')'.repeat(20_000)}{fill:red}</style>${WORD}`),
    then: 'too-complex',
  },
  'blocks inside one another': {
    make: () => page(`<style>${'@media all{'.repeat(20_000)}</style>${WORD}`),
    then: 'too-complex',
  },
  'rules inside one another': {
    make: () => page(`<style>${'a{'.repeat(50_000)}</style>${WORD}`),
    then: 'too-complex',
  },
  'brackets inside one another in a value': {
    make: () => page(`<style>text{fill:${'('.repeat(100_000)}}</style>${WORD}`),
    then: 'too-complex',
  },
  'a sheet that is loaded': {
    make: () =>
      page(
        `<style>@import "http://127.0.0.1:9/a.css"; @font-face{font-family:Arial;src:url(file:///etc/hostname)} text{fill:url(http://127.0.0.1:9/#a)}</style>${WORD}`,
      ),
    then: 'report',
  },
  'a sheet named in a processing instruction': {
    make: () => page(WORD, '<?xml-stylesheet href="http://127.0.0.1:9/a.css"?>'),
    then: 'report',
  },
  'variables that name each other': {
    make: () => page(`<style>:root{--a:var(--b)var(--b);--b:var(--a)} text{fill:var(--a)}</style>${WORD}`),
    then: 'report',
  },
  'a style attribute of fifty thousand declarations': {
    make: () => page(`<g style="${repeat(50_000, (i) => `p${i}:1;`)}">${WORD}</g>`),
    then: 'report',
  },
  'comments and strings without end': {
    make: () => page(`<style>text{fill:red} /* ${"'".repeat(100_000)}</style>${WORD}`),
    then: 'report',
  },
  'colours that take long to tell': {
    make: () =>
      page(
        `<rect width="9" height="9" fill="rgb(${' '.repeat(50_000)}"/><rect width="9" height="9" fill="hsl(${'1'.repeat(50_000)}"/><rect width="9" height="9" fill="${'color-mix('.repeat(9_000)}"/>${WORD}`,
      ),
    then: 'report',
  },
}
