/** Keeps the OpenAPI document to what it uses: the schema library writes each schema twice, once as input, once as output. */

interface Document {
  components?: { schemas?: Record<string, unknown> }
}

const PREFIX = '#/components/schemas/'
const INPUT = 'Input'

/** The document without unused schemas, and with `…Input` called by its plain name where no output of that name is used. */
export function pruned<T extends object>(document: T & Document): T {
  const schemas = document.components?.schemas ?? {}
  const used = usedSchemas(document, schemas)
  const names = new Map([...used].sort().map((name) => [name, plainName(name, used)]))
  const kept = Object.fromEntries([...names].map(([name, plain]) => [plain, schemas[name]]))
  const slim = { ...document, components: { ...document.components, schemas: kept } }
  return JSON.parse(JSON.stringify(slim), (key, value: unknown) => {
    if (key !== '$ref' || typeof value !== 'string' || !value.startsWith(PREFIX)) return value
    const name = value.slice(PREFIX.length)
    return PREFIX + (names.get(name) ?? name)
  }) as T
}

/** Names of the schemas that the document reaches from outside its list of schemas. */
function usedSchemas(document: Document, schemas: Record<string, unknown>): Set<string> {
  const used = new Set<string>()
  const pending: unknown[] = [{ ...document, components: undefined }]
  while (pending.length > 0) {
    for (const name of referencesIn(pending.pop())) {
      if (used.has(name) || !(name in schemas)) continue
      used.add(name)
      pending.push(schemas[name])
    }
  }
  return used
}

const referencesIn = (value: unknown): string[] =>
  [...JSON.stringify(value).matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/gu)].map((match) => String(match[1]))

function plainName(name: string, used: Set<string>): string {
  const plain = name.endsWith(INPUT) ? name.slice(0, -INPUT.length) : name
  return used.has(plain) ? name : plain
}
