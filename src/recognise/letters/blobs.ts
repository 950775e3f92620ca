import { boxContains, boxesOverlap, unionOfBoxes, type Box } from '../../geometry/box.js'
import { edgesOf, gapBetween } from '../../geometry/gap.js'
import { areaOfLoop, boxOfLoops, windsRound, type Loop } from '../../geometry/loop.js'
import { overlappingOf } from '../overlapping.js'
import type { Ink, Layer } from './ink.js'

/** One closed contour as a drawing holds it. Millimetres, x to the right, y down. */
export interface LetterOutline {
  corners: Loop
  /** Contours of one path share its number; paths are numbered in paint order. */
  path: number
  rule: 'nonzero' | 'evenodd'
  /** What it is filled with, as written; undefined when only its edge is drawn. */
  fill?: string
}

/** Contours that hang together: what lies within one outer contour, and what touches it. A character, or one piece of it. */
export interface Blob {
  ink: Ink
  box: Box
  /** Which of the outlines it is made of. */
  members: number[]
}

/** Two contours are one drawn twice when their boxes and areas differ by no more than this, in shares of the box's size. */
const SAME = 0.004
/** Outlines no farther apart than this, in millimetres, are pieces of one character: a letter cut into several paths. */
const TOUCHING = 0.01
/** Contours thinner or shorter than this are specks of a drawing program, in millimetres. */
const SPECK = 0.02

interface Node {
  index: number
  source: LetterOutline
  box: Box
  area: number
  depth: number
  root: number
  parent?: Node
}

export function blobsOf(outlines: readonly LetterOutline[]): Blob[] {
  const nodes = nested(outlines)
  const groups = new Map<number, Node[]>()
  const rootOf = touching(nodes.filter((n) => n.depth === 0))
  for (const node of nodes) {
    const root = rootOf.get(node.root) ?? node.root
    const group = groups.get(root)
    if (group) group.push(node)
    else groups.set(root, [node])
  }
  return [...groups.values()].map((group) => ({
    ink: inkOf(group),
    box: unionOfBoxes(group.filter((n) => n.depth === 0).map((n) => n.box)) ?? group[0].box,
    members: group.map((n) => n.index),
  }))
}

/** Contours with what encloses them, the largest first; specks and second drawings of a contour are left out. */
function nested(outlines: readonly LetterOutline[]): Node[] {
  const found = outlines
    .flatMap((source, index): Node[] => {
      const box = boxOfLoops([source.corners])
      if (!box || Math.max(box.width, box.height) < SPECK) return []
      const area = areaOfLoop(source.corners)
      return area > SPECK ** 2 ? [{ index, source, box, area, depth: 0, root: index }] : []
    })
    .sort((a, b) => b.area - a.area || a.source.path - b.source.path || a.index - b.index)
  // By falling area: whatever may hold a contour, or is the same drawn before, stands before it.
  const near = overlappingOf(found.map(({ box }) => box))
  const dropped = new Set<Node>()
  found.forEach((node, at) => {
    const slack = 2 * SAME * Math.max(node.box.width, node.box.height)
    const before = near(node.box, slack).filter((i) => i < at && !dropped.has(found[i]))
    if (before.some((i) => isTwin(found[i], node))) {
      dropped.add(node)
      return
    }
    // The smallest one that holds it: the last.
    const round = Int32Array.from(before.filter((i) => boxContains(found[i].box, node.box))).sort()
    const parent = round.findLast((i) => encloses(found[i], node))
    node.parent = parent === undefined ? undefined : found[parent]
    node.depth = node.parent ? node.parent.depth + 1 : 0
    node.root = node.parent?.root ?? node.index
  })
  return found.filter((node) => !dropped.has(node))
}

function isTwin(a: Node, b: Node): boolean {
  const slack = SAME * Math.max(a.box.width, a.box.height)
  return (
    Math.abs(a.box.x - b.box.x) <= slack &&
    Math.abs(a.box.y - b.box.y) <= slack &&
    Math.abs(a.box.width - b.box.width) <= slack &&
    Math.abs(a.box.height - b.box.height) <= slack &&
    Math.abs(a.area - b.area) <= SAME * a.area
  )
}

/** Points of the inner contour that must lie in the outer one, whose box is round its own. */
const PROBES = 5

function encloses(outer: Node, inner: Node): boolean {
  const { corners } = inner.source
  const stride = 2 * Math.max(1, Math.floor(corners.length / 2 / PROBES))
  for (let i = 0; i < corners.length; i += stride)
    if (!windsRound(outer.source.corners, corners[i], corners[i + 1])) return false
  return true
}

/** For each outer contour the first of those that it hangs together with, by touching or crossing. */
function touching(roots: readonly Node[]): Map<number, number> {
  const first = new Map(roots.map((n) => [n.index, n.index]))
  const find = (i: number): number => {
    const up = first.get(i) ?? i
    return up === i ? i : find(up)
  }
  const sorted = [...roots].sort((a, b) => a.box.x - b.box.x)
  sorted.forEach((a, i) => {
    const reach = {
      x: a.box.x - TOUCHING,
      y: a.box.y - TOUCHING,
      width: a.box.width + 2 * TOUCHING,
      height: a.box.height + 2 * TOUCHING,
    }
    for (let j = i + 1; j < sorted.length && sorted[j].box.x <= reach.x + reach.width; j++) {
      const b = sorted[j]
      if (!boxesOverlap(reach, b.box) || find(a.index) === find(b.index)) continue
      if (gapBetween(edgesOf([a.source.corners]), edgesOf([b.source.corners])).distance <= TOUCHING)
        first.set(find(b.index), find(a.index))
    }
  })
  return new Map(roots.map((n) => [n.index, find(n.index)]))
}

/** The layers of contours that hang together, in paint order; the largest is ink. */
function inkOf(group: readonly Node[]): Ink {
  const base = group[0].source.fill
  const edges = group.filter((n) => n.source.fill === undefined)
  const layers: Layer[] = []
  const paths = new Map<number, Node[]>()
  for (const node of group)
    if (node.source.fill !== undefined) paths.set(node.source.path, [...(paths.get(node.source.path) ?? []), node])
  for (const [, nodes] of [...paths].sort((a, b) => a[0] - b[0])) {
    const { fill, rule } = nodes[0].source
    const inside = nodes.every((n) => n.parent !== undefined && !nodes.includes(n.parent))
    const cut = nodes.some((n) => n.depth > 0) && inside
    const effect = !cut || layers.length === 0 ? 'add' : fill === base ? 'flip' : 'cut'
    layers.push({ contours: nodes.map((n) => n.source.corners), rule, effect })
  }
  if (edges.length > 0) {
    const effect = layers.length === 0 ? 'add' : 'flip'
    layers.push({ contours: edges.map((n) => n.source.corners), rule: 'evenodd', effect })
  }
  return { layers }
}
