/** Namespaces in scope while XML is read (Namespaces in XML 1.0). */

export const SVG_NAMESPACE = 'http://www.w3.org/2000/svg'
export const XML_NAMESPACE = 'http://www.w3.org/XML/1998/namespace'
export const XMLNS_NAMESPACE = 'http://www.w3.org/2000/xmlns/'

/** The prefixes that are bound at a place; `''` is that of names without a prefix. */
export class Scope {
  private readonly bound = new Map<string, string>()

  constructor(private readonly outer?: Scope) {}

  bind(prefix: string, uri: string): void {
    this.bound.set(prefix, uri)
  }

  find(prefix: string): string | undefined {
    return this.bound.get(prefix) ?? this.outer?.find(prefix)
  }
}

/** What holds before anything is declared. */
export function outermostScope(): Scope {
  const scope = new Scope()
  scope.bind('', '')
  scope.bind('xml', XML_NAMESPACE)
  return scope
}
