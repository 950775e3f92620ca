import { ENTITY_LIMITS } from './limits.js'
import { entitiesNotAccepted, malformed, quote, type Spot } from './refuse.js'

/**
 * The document type declaration. Drawing programs declare a few short internal entities for namespaces: those are read.
 * Anything that would load something, expand into more entities or grow large is refused before it is expanded.
 * Grammar: XML 1.0, productions 28 to 76; nothing external is ever loaded.
 */

/** Values by name, from the internal subset of a document type declaration as it stands between `<!DOCTYPE` and `>`. */
export function entitiesOf(doctype: string, spot: Spot): Map<string, string> {
  const entities = new Map<string, string>()
  if (doctype.length > ENTITY_LIMITS.doctypeLength)
    throw entitiesNotAccepted('The document type declaration is too long.', spot)
  const subset = internalSubset(doctype)
  if (subset === undefined) return entities
  const token = /\s+|<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!(\w+)((?:[^"'>]|"[^"]*"|'[^']*')*)>|%[^;\s]*;?/y
  while (token.lastIndex < subset.length) {
    const found = token.exec(subset)
    if (!found) throw malformed('The document type declaration (<!DOCTYPE …>) cannot be read. Remove it.', spot)
    if (found[0].startsWith('%')) throw entitiesNotAccepted('Parameter entities are not read. Remove them.', spot)
    if (found[1] === 'ENTITY') addEntity(entities, found[2], spot)
  }
  return entities
}

/** What stands in the square brackets, outside of quotes. */
function internalSubset(doctype: string): string | undefined {
  const open = /^(?:[^"'[]|"[^"]*"|'[^']*')*\[/.exec(doctype)
  if (!open) return undefined
  return doctype.slice(open[0].length, Math.max(open[0].length, doctype.lastIndexOf(']')))
}

function addEntity(entities: Map<string, string>, declaration: string, spot: Spot): void {
  const parts = /^\s+([^\s%"']+)\s+(?:"([^"]*)"|'([^']*)')\s*$/.exec(declaration)
  if (!parts) {
    const kind = /^\s+%/.test(declaration) ? 'Parameter entities' : 'Entities that stand in another file'
    throw entitiesNotAccepted(`${kind} are not read. Remove the declaration.`, spot)
  }
  const name = parts[1]
  const value = parts[2] ?? parts[3]
  if (/[&<%]/.test(value)) throw entitiesNotAccepted(`The entity ${quote(name)} holds markup or other entities.`, spot)
  if (value.length > ENTITY_LIMITS.length) throw entitiesNotAccepted(`The entity ${quote(name)} is too long.`, spot)
  if (entities.size >= ENTITY_LIMITS.count) throw entitiesNotAccepted('Too many entities are declared.', spot)
  if (!entities.has(name)) entities.set(name, value)
}

/** Refuses entities whose uses in the text would make it much longer, before any is expanded. */
export function limitExpansion(text: string, entities: Map<string, string>, spot: Spot): void {
  if (entities.size === 0) return
  let length = 0
  for (const [, name] of text.matchAll(/&([^#;&<\s]{1,100});/g)) {
    length += entities.get(name)?.length ?? 0
    if (length > ENTITY_LIMITS.expansion) throw entitiesNotAccepted('The entities expand to too much text.', spot)
  }
}
