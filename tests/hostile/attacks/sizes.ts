import { NAMESPACES, page, repeat, WORD, type Attack } from './make.js'

/** Too much of one thing. */

export const sizes: Record<string, Attack> = {
  'a hundred thousand groups inside one another': {
    make: () => page('<g>'.repeat(100_000) + '</g>'.repeat(100_000)),
    then: 'too-complex',
  },
  'a hundred thousand groups left open': { make: () => page('<g>'.repeat(100_000)), then: 'too-complex' },
  'two hundred thousand elements': { make: () => page('<g/>'.repeat(200_000)), then: 'too-complex' },
  'a hundred thousand attributes': {
    make: () => page(`<g ${repeat(100_000, (i) => `a${i}="" `)}/>`),
    then: 'too-complex',
  },
  'an attribute without end': { make: () => `<svg a="${'b'.repeat(4_900_000)}`, then: 'malformed-drawing' },
  'a comment without end': { make: () => `<svg ${NAMESPACES}><!--${'-'.repeat(4_000_000)}`, then: 'malformed-drawing' },
  'a tag name without end': { make: () => `<${'a'.repeat(4_900_000)}`, then: 'malformed-drawing' },
  'half a million segments in one path': {
    make: () => page(`<path d="M0 0${'h1'.repeat(499_000)}"/>${WORD}`),
    then: 'report',
  },
  'more than half a million segments in six paths': {
    make: () => page(`<path d="M0 0${'h1v1'.repeat(50_000)}"/>`.repeat(6)),
    then: 'too-complex',
  },
  'eighty thousand arcs in one path': {
    make: () => page(`<path d="M0 0${'a1 1 0 011 1'.repeat(80_000)}"/>`),
    then: 'report',
  },
  'a polygon of a hundred and fifty thousand corners': {
    make: () => page(`<polygon points="${repeat(150_000, (i) => `${i % 200} ${i % 99},`)}"/>${WORD}`),
    then: 'report',
  },
  'paths that only move': { make: () => page(`<path d="${'M1 1'.repeat(240_000)}"/>${WORD}`), then: 'report' },
  'paths of points': {
    make: () =>
      page(
        `<path stroke="#000" stroke-linecap="round" stroke-width="1.5" d="${repeat(60_000, (i) => `M${i % 200} ${i % 97}h0`)}"/>`,
      ),
    then: 'report',
  },
}
