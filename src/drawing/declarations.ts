import { cssTree } from '../libraries.js'

/** Lists of CSS declarations, as the attribute `style` and the blocks of rules hold them. */

export interface Declaration {
  /** In lower case. */
  property: string
  value: string
  important: boolean
}

/** Texts with these need a real CSS parser; all others are cut at their semicolons, which is forty times as fast. */
const NEEDS_PARSER = /["'()\\{}]|\/\*/

/** The declarations of a `style` attribute, in order; what is malformed is left out, as CSS says. */
export function parseDeclarations(text: string): Declaration[] {
  return NEEDS_PARSER.test(text) ? parseWithCssTree(text) : text.split(';').flatMap(splitDeclaration)
}

function splitDeclaration(text: string): Declaration[] {
  const colon = text.indexOf(':')
  if (colon < 0) return []
  const property = text.slice(0, colon).trim().toLowerCase()
  const written = text.slice(colon + 1).trim()
  const bang = written.lastIndexOf('!')
  const important =
    bang >= 0 &&
    written
      .slice(bang + 1)
      .trim()
      .toLowerCase() === 'important'
  const value = important ? written.slice(0, bang).trim() : written
  return /^-{0,2}[a-z_][\w-]*$/.test(property) && value !== '' ? [{ property, value, important }] : []
}

function parseWithCssTree(text: string): Declaration[] {
  const { generate, parse, walk } = cssTree()
  const declarations: Declaration[] = []
  const list = parse(text, { context: 'declarationList', parseValue: false })
  walk(list, {
    visit: 'Declaration',
    enter({ property, value, important }) {
      declarations.push({
        property: property.toLowerCase(),
        value: generate(value).trim(),
        important: important !== false,
      })
    },
  })
  return declarations
}
