// Drawings of a wanted size for the bench: signs with real words, made from an open font, so that every run sees the same bytes.
import { createRequire } from 'node:module'
import { openSync } from 'fontkit'

// The mix is that of a sign as it leaves a drawing program. Raised letters are outlines with three decimals: no text is left in
// the file. The face is one that the letter references were not made from, so that its letters are read as those of any customer
// are. Below all lines stands in contracted braille what they say, and the whole passes whatever can be seen on a drawing. Small signs have their dots as circles, as CAD and hand-written
// files do; large ones have them as four curves each, as programs write circles that were turned into paths. The rooms are invented.
const ROOMS = (
  'KILN ROOM,GLAZE LAB,BISQUE STORE,WHEEL STUDIO,DRYING RACKS,TOOL BENCH,SLIP CASTING,MOULD STORE,ENGOBE BENCH,SHOWROOM,PACKING,' +
  'OFFICE,STAFF ROOM,QUIET ROOM,WASH ROOM,TOOL ROOM,STAIR,OFFICE 2,EXIT,KITCHEN,LOCKERS,READING NOOK,PLASTER SHOP,SAMPLE ROOM'
).split(',')

const FACE = '@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf'
const font = openSync(createRequire(import.meta.url).resolve(FACE))

/** Millimetres. */
const CAPITAL = 19
const TRACKING = 2.2
const LINE = 28.5
const DOT = { radius: 0.775, spacing: 2.4, cell: 6.9, line: 10.1 }
const MARGIN = 30
const BORDER = { inset: 8, width: 1 }
/** From the last baseline to the middle of the first row of dots. */
const BELOW = 12

const FIRST_CELL = 0x2800
const scale = CAPITAL / font.capHeight
const n = (millimetres) => String(Number(millimetres.toFixed(3)))

/** Path data relative to the point before, as most programs write them; quadratic curves as the cubic ones that they are. */
function pathData(commands, place) {
  let from = place([0, 0])
  let start = from
  const relative = (p) => `${n(p[0] - from[0])} ${n(p[1] - from[1])}`
  const towards = (p, q) => p.map((v, i) => v + (2 / 3) * (q[i] - v))
  let data = ''
  for (const { command, args } of commands) {
    const points = Array.from({ length: args.length / 2 }, (_, i) => place(args.slice(2 * i, 2 * i + 2)))
    const to = points.at(-1) ?? start
    if (command === 'moveTo') data += `M${n(to[0])} ${n(to[1])}`
    else if (command === 'lineTo') data += `l${relative(to)}`
    else if (command === 'closePath') data += 'z'
    else {
      const controls = points.length > 2 ? points.slice(0, 2) : [towards(from, points[0]), towards(to, points[0])]
      data += `c${[...controls, to].map(relative).join(' ')}`
    }
    if (command === 'moveTo') start = to
    from = to
  }
  return data
}

function lettersOf(text, left, baseline) {
  let x = left
  const paths = [...text].map((character) => {
    const { path, advanceWidth } = font.glyphForCodePoint(character.codePointAt(0))
    const at = x
    x += advanceWidth * scale + TRACKING
    const data = pathData(path.commands, ([u, v]) => [at + u * scale, baseline - v * scale])
    return data === '' ? '' : `<path d="${data}"/>\n`
  })
  return { svg: paths.join(''), right: x }
}

const circle = (x, y) => `<circle cx="${n(x)}" cy="${n(y)}" r="${n(DOT.radius)}"/>\n`

/** Distance of the controls that puts the middle of a quarter circle on the circle. */
const QUARTER = (4 * (Math.SQRT2 - 1)) / 3

function fourCurves(x, y) {
  const quarter = (...points) => ({ command: 'bezierCurveTo', args: points })
  const commands = [
    { command: 'moveTo', args: [1, 0] },
    quarter(1, QUARTER, QUARTER, 1, 0, 1),
    quarter(-QUARTER, 1, -1, QUARTER, -1, 0),
    quarter(-1, -QUARTER, -QUARTER, -1, 0, -1),
    quarter(QUARTER, -1, 1, -QUARTER, 1, 0),
    { command: 'closePath', args: [] },
  ]
  return `<path d="${pathData(commands, ([u, v]) => [x + u * DOT.radius, y + v * DOT.radius])}"/>\n`
}

function dotsOf(cells, left, top, dot) {
  const places = [...cells].flatMap((cell, column) =>
    [0, 1, 2, 3, 4, 5]
      .filter((bit) => (cell.codePointAt(0) - FIRST_CELL) & (1 << bit))
      .map((bit) => [left + column * DOT.cell + (bit > 2 ? DOT.spacing : 0), top + (bit % 3) * DOT.spacing]),
  )
  return places.map(([x, y]) => dot(x, y)).join('')
}

const frame = (inset, width, height, more) =>
  `<rect x="${n(inset)}" y="${n(inset)}" width="${n(width - 2 * inset)}" height="${n(height - 2 * inset)}" ${more}/>\n`

/**
 * A sign of about `bytes` bytes: raised lines, and all their braille below the last one.
 * @param options.roomsPerLine how many rooms one line names
 * @param options.curves the dots are four curves each instead of circles
 */
export function signOfBytes(bytes, translator, { roomsPerLine = 1, curves = false } = {}) {
  const dot = curves ? fourCurves : circle
  const lines = []
  let size = 0
  const lineOf = (rooms) => {
    const text = rooms.join(' ')
    const letters = lettersOf(text, MARGIN, MARGIN + CAPITAL + lines.length * LINE)
    const cells = translator.toCells(text.toLowerCase(), 'ueb-contracted')
    return { letters, cells, bytes: letters.svg.length + dotsOf(cells, MARGIN, MARGIN, dot).length }
  }
  const add = (line) => {
    lines.push(line)
    size += line.bytes
  }
  for (let first = 0; ; first += roomsPerLine) {
    const rooms = Array.from({ length: roomsPerLine }, (_, i) => ROOMS[(first + i) % ROOMS.length])
    const line = lineOf(rooms)
    if (size + line.bytes > bytes) break
    add(line)
  }
  const fitting = ROOMS.map((room) => lineOf([room])).filter((line) => size + line.bytes <= bytes)
  if (fitting.length > 0) add(fitting.reduce((a, b) => (b.bytes > a.bytes ? b : a)))

  const top = MARGIN + CAPITAL + (lines.length - 1) * LINE + BELOW
  const braille = lines.map(({ cells }, i) => dotsOf(cells, MARGIN + DOT.radius, top + i * DOT.line, dot)).join('')
  const width = Math.max(...lines.map(({ letters }) => letters.right)) + MARGIN
  const height = top + lines.length * DOT.line + MARGIN
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}">\n` +
    frame(0, width, height, 'rx="3" fill="#f4f1e8"') +
    frame(BORDER.inset, width, height, `fill="none" stroke="#1b263b" stroke-width="${BORDER.width}"`) +
    `<g fill="#1b263b">\n<g>\n${lines.map(({ letters }) => letters.svg).join('')}</g>\n<g>\n${braille}</g>\n</g>\n</svg>\n`
  )
}

/** The three sizes that the goals name. */
export const signs = (translator) => ({
  '4 KB': signOfBytes(4_000, translator),
  '40 KB': signOfBytes(39_500, translator),
  '576 KB': signOfBytes(576_000, translator, { roomsPerLine: 4, curves: true }),
})

/**
 * A field of `count` dots on one braille lattice, a path for each line of cells. Written as short as path data can be, so that a
 * hundred thousand dots stay within the size of a drawing that is read.
 */
export function fieldOfDots(count) {
  const perLine = Math.ceil(Math.sqrt(count / 4))
  const parts = []
  let left = count
  for (let line = 0; left > 0; line++) {
    let data = ''
    let from = [0, 0]
    for (let column = 0; column < perLine && left > 0; column++) {
      const raised = [1, 2, 3, 4, 5, 6]
        .filter((d) => (line * 7 + column * 5 + d * 3) % 3 !== 0)
        .slice(0, Math.min(4, left))
      left -= raised.length
      for (const d of raised) {
        const to = [
          5 + column * DOT.cell + (d > 3 ? DOT.spacing : 0),
          5 + line * DOT.line + ((d - 1) % 3) * DOT.spacing,
        ]
        data += `m${n(to[0] - from[0])} ${n(to[1] - from[1])}${SHORT_DOT}`
        from = to
      }
    }
    parts.push(`<path d="${data}"/>`)
  }
  const side = Math.ceil(perLine * DOT.line) + 20
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${side}mm" height="${side}mm" viewBox="0 0 ${side} ${side}">` +
    `<rect id="panel" width="${side}" height="${side}" rx="3" fill="#f4f1e8"/><g id="braille">${parts.join('')}</g></svg>`
  )
}

/** Two half circles from the left end of a dot of 1.6 mm. */
const SHORT_DOT = 'a.8.8 0 101.6 0a.8.8 0 10-1.6 0z'
