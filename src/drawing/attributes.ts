/**
 * The attributes of one element, by name, as written. Elements have few, and drawings have many elements: a list of pairs is
 * a fraction of a map's size, and as quick to search.
 */
export class Attributes {
  /** @param pairs name, value, name, value …; no name twice. */
  constructor(private readonly pairs: readonly string[]) {}

  get size(): number {
    return this.pairs.length / 2
  }

  get(name: string): string | undefined {
    for (let i = 0; i < this.pairs.length; i += 2) if (this.pairs[i] === name) return this.pairs[i + 1]
    return undefined
  }

  has(name: string): boolean {
    return this.get(name) !== undefined
  }

  hasAny(names: ReadonlySet<string>): boolean {
    for (let i = 0; i < this.pairs.length; i += 2) if (names.has(this.pairs[i])) return true
    return false
  }

  forEach(visit: (name: string, value: string) => void): void {
    for (let i = 0; i < this.pairs.length; i += 2) visit(this.pairs[i], this.pairs[i + 1])
  }
}
