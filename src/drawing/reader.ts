import type { Read } from './basic-shapes.js'
import type { Declared } from './cascade.js'
import type { Element } from './document.js'

/** Geometry as a property of CSS wins over the attribute; path data stand in `path("…")` there (SVG 2, 9.3.2). */
export function outlineReader(element: Element, declared: Declared): Read {
  if (declared.size === 0) return (name) => element.attributes.get(name)
  return (name) => {
    const property = declared.get(name)
    if (property === undefined) return element.attributes.get(name)
    return name === 'd' ? (/^path\(\s*["'](.*)["']\s*\)$/s.exec(property)?.[1] ?? property) : property
  }
}
