import { classesOf } from './cascade.js'
import { isElement, isSvg, ownText, type Element } from './document.js'
import type { Labels } from './drawing.js'
import { NAME_LENGTH, NAMES_PER_SHAPE } from './limits.js'

/** What an element is called, by the attributes that drawing programs write names into. */

const INKSCAPE_LABEL = '{http://www.inkscape.org/namespaces/inkscape}label'
const NAME_ATTRIBUTES = [INKSCAPE_LABEL, 'data-name', 'aria-label']

const cut = (name: string): string => name.trim().slice(0, NAME_LENGTH)

export const NO_LABELS: Labels = { names: [] }

/** The element's own names before those of the element that it is painted in. */
export function labelsOf(element: Element, parent: Labels): Labels {
  if (element.attributes.size === 0 && element.children.length === 0) return parent
  const own = ownNames(element)
  const dataPart = element.attributes.get('data-part')
  if (own.length === 0 && dataPart === undefined) return parent
  const names = [...own, ...parent.names].slice(0, NAMES_PER_SHAPE)
  const part = dataPart === undefined ? parent.dataPart : cut(dataPart)
  return part === undefined ? { names } : { dataPart: part, names }
}

function ownNames(element: Element): string[] {
  const { attributes, children } = element
  const names: string[] = []
  const add = (name: string | undefined) => {
    const short = name === undefined ? '' : cut(name)
    if (short !== '') names.push(short)
  }
  if (attributes.size > 0) {
    add(attributes.get('id'))
    if (attributes.has('class')) classesOf(element).forEach(add)
    for (const name of NAME_ATTRIBUTES) add(attributes.get(name))
  }
  const title = children.length === 0 ? undefined : children.find((c) => isElement(c) && c.name === 'title' && isSvg(c))
  if (title !== undefined && isElement(title)) add(ownText(title))
  return names
}
