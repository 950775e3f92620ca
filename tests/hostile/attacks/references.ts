import { page, repeat, WORD, type Attack } from './make.js'

/** Elements that refer to each other: rings, fans, chains, and clips on everything. */

const USES = 100
const fanOut = (levels: number): string =>
  `<defs><circle id="u0" r=".75"/>${repeat(levels, (i) => `<g id="u${i + 1}">${`<use href="#u${i}"/>`.repeat(USES)}</g>`)}</defs><use href="#u${levels}"/>`

export const references: Record<string, Attack> = {
  'a use of itself': { make: () => page(`<use id="a" href="#a"/>${WORD}`), then: 'report' },
  'two groups that use each other': {
    make: () => page(`<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>${WORD}`),
    then: 'report',
  },
  'symbols in a ring of a hundred': {
    make: () =>
      page(
        `${repeat(100, (i) => `<symbol id="s${i}"><use href="#s${(i + 1) % 100}"/></symbol>`)}<use href="#s0"/>${WORD}`,
      ),
    then: 'report',
  },
  'uses that fan out to 10^14': { make: () => page(fanOut(7)), then: 'too-complex' },
  'uses in a chain of twenty-four thousand': {
    make: () => page(`<circle id="u0" r="1"/>${repeat(24_000, (i) => `<use id="u${i + 1}" href="#u${i}"/>`)}`),
    then: 'too-complex',
  },
  'patterns, masks, clips, markers, gradients and filters in rings': {
    make: () =>
      page(
        ['pattern', 'mask', 'clipPath', 'marker', 'linearGradient', 'filter']
          .map(
            (kind) =>
              `<${kind} id="${kind}a" href="#${kind}b" width="9" height="9"><rect width="5" height="5" fill="url(#${kind}b)" mask="url(#${kind}b)" clip-path="url(#${kind}b)" filter="url(#${kind}b)" marker-start="url(#${kind}b)"/></${kind}>` +
              `<${kind} id="${kind}b" href="#${kind}a" width="9" height="9"><rect width="5" height="5" fill="url(#${kind}a)" mask="url(#${kind}a)" clip-path="url(#${kind}a)" filter="url(#${kind}a)" marker-start="url(#${kind}a)"/></${kind}>`,
          )
          .join('') +
          '<g fill="url(#patterna)" stroke="url(#linearGradienta)"><path d="M0 0h50v50" mask="url(#maska)" marker-start="url(#markera)"/><path d="M0 0h50v50" clip-path="url(#clipPatha)" filter="url(#filtera)"/></g>' +
          WORD,
      ),
    then: 'report',
  },
  'patterns inside patterns that fan out': {
    make: () =>
      page(
        `<defs>${repeat(8, (i) => `<pattern id="p${i}" width="1" height="1" patternUnits="userSpaceOnUse"><rect width="1" height="1" fill="url(#p${i + 1})"/></pattern>`)}<pattern id="p8" width=".001" height=".001" patternUnits="userSpaceOnUse"><circle r=".75"/></pattern></defs><rect width="200" height="100" fill="url(#p0)"/>${WORD}`,
      ),
    then: 'too-complex',
  },
  'a pattern of 10^12 tiles': {
    make: () =>
      page(
        `<pattern id="p" width="1e-4" height="1e-4" patternUnits="userSpaceOnUse"><circle r=".75"/></pattern><rect width="200" height="100" fill="url(#p)"/>${WORD}`,
      ),
    then: 'too-complex',
  },
  'markers on twenty thousand corners': {
    make: () =>
      page(
        `<marker id="m"><circle r=".75"/></marker><path marker-mid="url(#m)" fill="none" stroke="#000" d="M0 0${repeat(20_000, (i) => `L${i % 200} ${i % 99}`)}"/>${WORD}`,
      ),
    then: 'too-complex',
  },
  'a clip of many corners on many shapes': {
    make: () =>
      page(
        `<clipPath id="c"><path d="M0 0${repeat(40_000, (i) => `L${(i % 200) + (i % 7) / 10} ${(i * 7) % 99}`)}z"/></clipPath><g clip-path="url(#c)">${repeat(10_000, (i) => `<rect x="${i % 199}" y="${i % 97}" width="2" height="2"/>`)}</g>${WORD}`,
      ),
    then: 'too-complex',
  },
  'two hundred clips inside one another': {
    make: () =>
      page(
        `<clipPath id="c"><circle cx="50" cy="50" r="60"/></clipPath>${'<g clip-path="url(#c)">'.repeat(200)}${repeat(5_000, (i) => `<rect x="${i % 199}" y="${i % 97}" width="2" height="2"/>`)}${'</g>'.repeat(200)}${WORD}`,
      ),
    then: 'report',
  },
}
