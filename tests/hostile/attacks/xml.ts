import { page, repeat, WORD, type Attack } from './make.js'

/** Entities, declarations, and text that never ends. */

const doubling = (levels: number): string =>
  `<!DOCTYPE svg [<!ENTITY e0 "lol">${repeat(levels, (i) => `<!ENTITY e${i + 1} "&e${i};&e${i};&e${i};">`)}]>`

export const entities: Record<string, Attack> = {
  'entities that triple thirty times': {
    make: () => page('<text>&e30;</text>', doubling(30)),
    then: 'entities-not-accepted',
  },
  'entities that triple in an attribute': {
    make: () => page('<g id="&e30;"/>', doubling(30)),
    then: 'entities-not-accepted',
  },
  'one long entity used ten thousand times': {
    make: () => page(`<text>${'&a;'.repeat(10_000)}</text>`, `<!DOCTYPE svg [<!ENTITY a "${'y'.repeat(2000)}">]>`),
    then: 'entities-not-accepted',
  },
  'an entity that holds itself': {
    make: () => page('<text>&a;</text>', '<!DOCTYPE svg [<!ENTITY a "&a;">]>'),
    then: 'entities-not-accepted',
  },
  'an external file': {
    make: () => page('<text>&a;</text>', '<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/hostname">]>'),
    then: 'entities-not-accepted',
  },
  'an external address': {
    make: () => page('<text>&a;</text>', '<!DOCTYPE svg [<!ENTITY a SYSTEM "http://127.0.0.1:9/">]>'),
    then: 'entities-not-accepted',
  },
  'a parameter entity': {
    make: () => page(WORD, '<!DOCTYPE svg [<!ENTITY % a SYSTEM "http://127.0.0.1:9/"> %a;]>'),
    then: 'entities-not-accepted',
  },
  'a doctype without end': { make: () => `<!DOCTYPE svg [${'<!--'.repeat(1_000_000)}`, then: 'malformed-drawing' },
  'a doctype of quotes': {
    make: () => page(WORD, `<!DOCTYPE svg [${`"'`.repeat(45_000)}]>`),
    then: 'malformed-drawing',
  },
}
