/**
 * Definite integrals by the Gauss-Legendre rule (DLMF 3.5.15), halved until halving changes nothing. For integrands that are smooth
 * but may be steep somewhere.
 */

const POINTS = 24
/** After so many halvings in all, what is there is taken: an integrand whose own digits are at their end never settles. */
const MOST_HALVINGS = 500

interface Rule {
  nodes: number[]
  weights: number[]
}

/** Legendre polynomial of the degree `POINTS` and its derivative (DLMF 14.10.3 and 18.9.15). */
function legendre(x: number): { value: number; slope: number } {
  let [before, value] = [1, x]
  for (let n = 2; n <= POINTS; n++) [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n]
  return { value, slope: (POINTS * (x * value - before)) / (x * x - 1) }
}

const NEWTON_STEPS = 10

function makeRule(): Rule {
  const rule: Rule = { nodes: [], weights: [] }
  for (let i = 0; i < POINTS; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (POINTS + 0.5))
    for (let step = 0; step < NEWTON_STEPS; step++) {
      const { value, slope } = legendre(x)
      x -= value / slope
    }
    rule.nodes.push(x)
    rule.weights.push(2 / ((1 - x * x) * legendre(x).slope ** 2))
  }
  return rule
}

const RULE = makeRule()

function panel(f: (x: number) => number, from: number, to: number): number {
  const [middle, half] = [(from + to) / 2, (to - from) / 2]
  let sum = 0
  RULE.nodes.forEach((node, i) => (sum += (RULE.weights[i] ?? 0) * f(middle + half * node)))
  return sum * half
}

/** @param precision how much the last halving of a piece may change */
export function integral(f: (x: number) => number, from: number, to: number, precision: number): number {
  const open = [{ from, to, whole: panel(f, from, to) }]
  let [sum, halvings] = [0, 0]
  for (let piece = open.pop(); piece; piece = open.pop()) {
    const middle = (piece.from + piece.to) / 2
    const left = { from: piece.from, to: middle, whole: panel(f, piece.from, middle) }
    const right = { from: middle, to: piece.to, whole: panel(f, middle, piece.to) }
    const halves = left.whole + right.whole
    if (Math.abs(halves - piece.whole) > precision && ++halvings < MOST_HALVINGS) open.push(left, right)
    else sum += halves
  }
  return sum
}
