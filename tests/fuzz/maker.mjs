// A value of a JSON Schema, each choice made by the next byte; now and then a value that the schema does not allow.

import { listStandards } from '../../dist/standards/catalogue.js'

const TEXTS = [
  '',
  ' ',
  'ROOM 204',
  'kiln room',
  'Restroom',
  'a',
  'A1B',
  '204',
  '⠗⠕⠕⠍',
  '⠼⠃⠚⠙⠠⠁',
  'ÅØ é 你好',
  '\u202e\ufeff\u0000',
  '𝕏😀\ud800',
  "O'Neil & Sons (West) #1/2",
  'us-ada-2010@1',
  'us-ada-2010',
  '#1d2b3a',
  'white',
  'rgb(300 0 0 / 50%)',
  'Open Sans',
  '__proto__',
  'constructor',
  'x'.repeat(200),
  'WWWW '.repeat(99),
]
const STANDARDS = listStandards().map(({ id }) => id)
const WRONG = [null, true, -1, '', [], {}, 1e308, 'x']
const NUMBERS = [
  0, 1, 0.5, 0.1, 2.4, 6.9, 0.025, 0.75, 19, 120, 1350, 1e5, 1e-9, 5e-324, 99999.5, -0.5, -1e5, 4.5, 21, 100,
]

/** Deeper than any description. */
const DEEPEST = 12
/** Of 256 bytes, so many make a value that the schema does not allow. */
const WRONG_FROM = 254
/** Of 256 bytes, so many make a text that is not in the list. */
const OWN_FROM = 224

export class Maker {
  at = 0

  constructor(schema, bytes) {
    this.schema = schema
    this.bytes = bytes
  }

  value() {
    return this.make(this.schema, 0)
  }

  byte() {
    return this.bytes[this.at++] ?? 0
  }

  pick(from) {
    return from[this.byte() % from.length]
  }

  make(schema, depth) {
    if (schema.$ref) return this.make(this.schema.$defs[schema.$ref.split('/').at(-1)], depth)
    if (depth > DEEPEST || this.byte() >= WRONG_FROM) return this.pick(WRONG)
    if ('const' in schema) return schema.const
    if (schema.enum) return this.pick(schema.enum)
    const ways = schema.anyOf ?? schema.oneOf
    if (ways) return this.make(this.pick(ways), depth)
    switch (schema.type) {
      case 'object':
        return this.object(schema, depth)
      case 'array':
        return this.array(schema, depth)
      case 'integer':
        return Math.trunc(this.number(schema))
      case 'number':
        return this.number(schema)
      case 'boolean':
        return this.byte() % 2 === 1
      case 'string':
        return this.text()
      default:
        return this.pick(WRONG)
    }
  }

  object({ properties = {}, required = [], additionalProperties }, depth) {
    const made = {}
    for (const [key, inner] of Object.entries(properties))
      if (required.includes(key) || this.byte() % 2 === 1)
        made[key] = key === 'standards' ? this.standards() : this.make(inner, depth + 1)
    if (typeof additionalProperties === 'object')
      for (let left = this.byte() % 3; left > 0; left--) made[this.text()] = this.make(additionalProperties, depth + 1)
    return made
  }

  /** Chance would mostly name one that is not known, and nothing more would be read. */
  standards() {
    return Array.from({ length: 1 + (this.byte() % 3) }, () => this.pick(STANDARDS))
  }

  array({ items, prefixItems, minItems = 0 }, depth) {
    if (prefixItems) return prefixItems.map((inner) => this.make(inner, depth + 1))
    return Array.from({ length: minItems + (this.byte() % 4) }, () => this.make(items, depth + 1))
  }

  number({ minimum, exclusiveMinimum, maximum }) {
    const way = this.byte()
    if (way < NUMBERS.length) return NUMBERS[way]
    const share = (this.byte() * 256 + this.byte()) / 65_535
    const least = minimum ?? exclusiveMinimum ?? -1000
    // Sizes of signs are far from the largest that may be said.
    const most = way % 4 === 0 ? (maximum ?? 1e6) : Math.min(maximum ?? 1e6, 50)
    return least + (most - least) * share
  }

  text() {
    const way = this.byte()
    if (way < OWN_FROM) return TEXTS[way % TEXTS.length]
    return Array.from({ length: this.byte() % 24 }, () => String.fromCodePoint(32 + this.byte())).join('')
  }
}
