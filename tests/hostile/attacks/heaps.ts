import { page, repeat, WORD, type Attack } from './make.js'

/** Many small shapes that may belong to each other: whatever weighs each against each takes for ever. */

export const heaps: Record<string, Attack> = {
  'dots heaped on one place': {
    make: () =>
      page(repeat(24_000, (i) => `<circle cx="${50 + (i % 200) / 1000}" cy="${50 + (i % 211) / 1000}" r=".75"/>`)),
    then: 'report',
  },
  'dots strewn densely': {
    make: () =>
      page(
        repeat(
          24_000,
          (i) =>
            `<circle cx="${10 + ((i * 7919) % 20_011) / 2000}" cy="${10 + ((i * 104_729) % 20_021) / 2000}" r=".75"/>`,
        ),
      ),
    then: 'report',
  },
  'outlines of many small arcs': {
    make: () =>
      page(
        repeat(
          450,
          (i) => `<path d="M${(i % 30) * 6} ${6 * Math.floor(i / 30) + 9}${'a1 1 0 011 1a1 1 0 01-1-1'.repeat(50)}z"/>`,
        ),
      ),
    then: 'report',
  },
  'bars between dots': {
    make: () =>
      page(
        repeat(12_000, (i) => `<circle cx="${(i % 100) * 2 + 0.5}" cy="${Math.floor(i / 100) / 2}" r=".4"/>`) +
          repeat(
            12_000,
            (i) => `<rect x="${(i % 100) * 2 + 1}" y="${Math.floor(i / 100) / 4}" width=".5" height="40"/>`,
          ),
      ),
    then: 'report',
  },
  'dots of every size on one place': {
    make: () => page(repeat(24_000, (i) => `<circle cx="50" cy="50" r="${0.3 + i / 15_000}"/>`)),
    then: 'report',
  },
  'twenty thousand round contours in one path': {
    make: () =>
      page(`<path d="${repeat(20_000, (i) => `M${i % 190} ${i % 95}a.7.7 0 1 0 1.4 0a.7.7 0 1 0-1.4 0z`)}"/>`),
    then: 'report',
  },
  'squares inside one another': {
    make: () =>
      page(
        `${repeat(20_000, (i) => `<rect x="${i / 500}" y="${i / 500}" width="${100 - i / 250}" height="${100 - i / 250}"/>`)}${WORD}`,
      ),
    then: 'report',
  },
  'squares of glass over one another': {
    make: () =>
      page(`${repeat(20_000, () => '<rect width="200" height="100" fill="#888" opacity=".001"/>')}${WORD.repeat(50)}`),
    then: 'report',
  },
  'loose strokes that nearly meet': {
    make: () =>
      page(
        `${repeat(24_000, (i) => `<path d="M${(i * 7) % 199} ${(i * 13) % 97}l${1 + (i % 3)} 1" stroke="#000" fill="none"/>`)}${WORD}`,
      ),
    then: 'report',
  },
  'strokes that all end in one point': {
    make: () =>
      page(`${repeat(24_000, (i) => `<path d="M50 50L${i % 199} ${i % 97}" stroke="#000" fill="none"/>`)}${WORD}`),
    then: 'report',
  },
  'outlines of characters by the thousand': {
    make: () =>
      page(repeat(8_000, (i) => `<path d="M${(i % 100) * 2} ${Math.floor(i / 100)}h1v.9h-.3v-.6h-.4v.6h-.3z"/>`)),
    then: 'report',
  },
  'outlines of characters heaped on one place': {
    make: () =>
      page(
        repeat(
          8_000,
          (i) => `<path d="M${50 + (i % 100) / 100} ${20 + Math.floor(i / 100) / 100}h12v20h-3v-12h-6v12h-3z"/>`,
        ),
      ),
    then: 'report',
  },
  'one outline with a hundred thousand teeth': {
    make: () => page(`<path d="M10 10${'v20l.001-20'.repeat(50_000)}z"/>`),
    then: 'report',
  },
}
