import { boxOfPoints, unionOfBoxes, type Box } from '../../geometry/box.js'
import { coordinate as n, escaped } from '../../report/markup.js'
import type { DotPlan } from './schema.js'

/**
 * The plan as a drawing at true scale, made from the plan alone: each dot with its number, the way from dot to dot, and a heading that says
 * in words what it shows. Two inks take turns from cartridge to cartridge.
 */

const FONT = 'system-ui, "Segoe UI", "Helvetica Neue", Arial, "DejaVu Sans", sans-serif'
const PAPER = '#ffffff'
const TEXT_INK = '#1f2933'
const PANEL_INK = '#9aa5b1'
const INKS = ['#0b5394', '#9c3d00']
const DOT_FILL = '#dfe7ef'
/** Up to so many dots each has its number drawn; beyond, one in ten. */
const MOST_NUMBERED = 1500
const EVERY = 10
const LEAST_TEXT = 2.6
const TEXT_SHARE = 1 / 75
/** Least width of the sheet in text sizes: the heading needs room. */
const LEAST_WIDTH = 52

/** @param panel of the sign, when its place is known */
export function planSvg(plan: DotPlan, panel: Box | undefined): string {
  const radius = plan.dot.baseDiameter / 2
  const dots = boxOfPoints(plan.sequence.map(([x, y]) => ({ x, y })))
  const content = unionOfBoxes([panel, dots && grown(dots, radius)]) ?? { x: 0, y: 0, width: 0, height: 0 }
  const size = Math.max(LEAST_TEXT, Math.max(content.width, content.height) * TEXT_SHARE)
  const pad = 2 * size
  const lines = headingOf(plan)
  const top = pad + lines.length * 1.4 * size + size
  const width = Math.max(content.width + 2 * pad, LEAST_WIDTH * size)
  const height = top + content.height + pad
  const heading = lines.map(
    (line, i) =>
      `<text x="${n(pad)}" y="${n(pad + i * 1.4 * size)}" font-size="${n(i === 0 ? 1.2 * size : size)}"${i === 0 ? ' font-weight="bold"' : ''}>${escaped(line)}</text>`,
  )
  const frame = panel
    ? `<rect x="${n(panel.x)}" y="${n(panel.y)}" width="${n(panel.width)}" height="${n(panel.height)}" fill="none" stroke="${PANEL_INK}" stroke-width="0.3"/>`
    : ''
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}" role="img" aria-labelledby="plan-title plan-desc" font-family="${escaped(FONT)}" fill="${TEXT_INK}">
<title id="plan-title">${escaped(lines[0])}</title>
<desc id="plan-desc">${escaped(`${lines.slice(1).join(' ')} ${plan.warnings.map(({ text }) => text).join(' ')}`.trim())}</desc>
<rect width="${n(width)}" height="${n(height)}" fill="${PAPER}"/>
${heading.join('\n')}
<g transform="translate(${n(pad - content.x)} ${n(top - content.y)})">
${frame}
${plan.cartridges.map((_, i) => cartridgeMarkup(plan, i)).join('\n')}
</g>
</svg>
`
}

function headingOf(plan: DotPlan): string[] {
  const { dots, cartridges, travel, seconds, warnings } = plan
  const numbers = dots <= MOST_NUMBERED ? 'Each dot has its number' : `One dot in ${EVERY} has its number`
  return [
    `Dot plan: ${dots} dots, ${cartridges.length} cartridge${cartridges.length === 1 ? '' : 's'}`,
    `${numbers}; lines are the way from dot to dot. The first dot of each cartridge is ringed.`,
    `Travel ${Math.round(travel)} mm, about ${duration(seconds)}. Warnings: ${warnings.length === 0 ? 'none' : warnings.length}. Drawn at true scale.`,
  ]
}

const SECONDS_PER_MINUTE = 60

const duration = (seconds: number): string =>
  seconds < 2 * SECONDS_PER_MINUTE ? `${Math.round(seconds)} s` : `${Math.round(seconds / SECONDS_PER_MINUTE)} min`

function cartridgeMarkup(plan: DotPlan, number: number): string {
  const { from, to } = plan.cartridges[number]
  const ink = INKS[number % INKS.length]
  const radius = plan.dot.baseDiameter / 2
  const places = plan.sequence.slice(from, to + 1)
  const way = places.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')
  const circles = places.map(([x, y]) => `<circle cx="${n(x)}" cy="${n(y)}" r="${n(radius)}"/>`)
  const texts = places.flatMap(([x, y], k) => {
    const label = String(from + k + 1)
    if (plan.dots > MOST_NUMBERED && (from + k + 1) % EVERY !== 0) return []
    // Digits are about 0.6 of their size wide: the number fits into its dot.
    const size = (1.7 * radius) / Math.max(1.4, 0.6 * label.length)
    return `<text x="${n(x)}" y="${n(y + 0.35 * size)}" font-size="${n(size)}">${label}</text>`
  })
  const [x, y] = places[0]
  const ring = `<circle cx="${n(x)}" cy="${n(y)}" r="${n(1.35 * radius)}" fill="none" stroke="${TEXT_INK}" stroke-width="${n(0.25 * radius)}"/>`
  return `<g>
<path d="M${way}" fill="none" stroke="${ink}" stroke-width="${n(0.2 * radius)}" stroke-linejoin="round"/>
<g fill="${DOT_FILL}" stroke="${ink}" stroke-width="${n(0.1 * radius)}">
${circles.join('\n')}
</g>
<g text-anchor="middle">
${texts.join('\n')}
</g>
${ring}
</g>`
}

const grown = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
})
