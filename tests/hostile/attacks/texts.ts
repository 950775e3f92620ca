import { page, repeat, WORD, type Attack } from './make.js'

/** Live text, names, transforms and dashes without end. */

export const texts: Record<string, Attack> = {
  'twenty thousand texts': {
    make: () => page(repeat(20_000, (i) => `<text x="${i % 190}" y="${i % 97}" font-size="3">A${i % 10}</text>`)),
    then: 'report',
  },
  'texts heaped on one place': {
    make: () => page(repeat(10_000, () => '<text x="20" y="40" font-size="20" font-family="Arial">ROOM</text>')),
    then: 'report',
  },
  'one text of a hundred thousand characters': {
    make: () => page(`<text x="1" y="9" font-size="5">${'ab '.repeat(33_000)}</text>`),
    then: 'report',
  },
  'tspans inside one another': {
    make: () => page(`<text x="1" y="9">${'<tspan dy="1">a'.repeat(240)}${'</tspan>'.repeat(240)}</text>`),
    then: 'report',
  },
  'a place for each of many characters': {
    make: () => page(`<text y="9" x="${'1 2 3 '.repeat(150_000)}">${'a'.repeat(90_000)}</text>`),
    then: 'report',
  },
  'braille as live text by the thousand': {
    make: () => page(`<text x="1" y="9" font-size="5">${'⠗⠕⠕⠍ '.repeat(19_000)}</text>`),
    then: 'report',
  },
  'a transform of fifty thousand steps': {
    make: () => page(`<g transform="${'rotate(1) '.repeat(90_000)}">${WORD}</g>`),
    then: 'report',
  },
  'classes and layer names by the hundred thousand': {
    make: () =>
      page(
        `<g class="${repeat(100_000, (i) => `c${i} `)}">${WORD}${'<circle cx="9" cy="9" r=".75"/>'.repeat(1_000)}</g>`,
      ),
    then: 'report',
  },
  'twenty thousand equal ids': {
    make: () => page(`${'<g id="a"/>'.repeat(20_000)}<use href="#a"/>${WORD}`),
    then: 'report',
  },
  'a dash pattern of 10^12 dots': {
    make: () =>
      page('<path d="M0 50H1e6" stroke="#000" stroke-width="1.5" stroke-linecap="round" stroke-dasharray="0 1e-6"/>'),
    then: 'too-complex',
  },
  'dash patterns that add up': {
    make: () =>
      page(
        '<path d="M0 50h190" stroke="#000" stroke-width="1.5" stroke-linecap="round" stroke-dasharray="0 .01"/>'.repeat(
          200,
        ),
      ),
    then: 'too-complex',
  },
}
