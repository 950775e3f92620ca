// Drawings of a wanted size for the bench, made from numbers only, so that every run sees the same bytes.

const HEAD = (w, h) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}">` +
  `<rect id="panel" width="${w}" height="${h}" rx="3" fill="#f4f1e8"/>`

/** An outlined letter-like contour of four straight and four curved edges at x, y (mm). */
const letter = (x, y) => {
  const n = (v) => v.toFixed(4)
  return (
    `<path d="M${n(x)},${n(y)} L${n(x)},${n(y - 19)} L${n(x + 8.4)},${n(y - 19)} ` +
    `C${n(x + 11.9)},${n(y - 19)} ${n(x + 13.8)},${n(y - 16.9)} ${n(x + 13.8)},${n(y - 13.7)} ` +
    `C${n(x + 13.8)},${n(y - 10.5)} ${n(x + 11.8)},${n(y - 8.3)} ${n(x + 8.4)},${n(y - 8.3)} ` +
    `L${n(x + 2.4)},${n(y - 8.3)} L${n(x + 2.4)},${n(y)} Z"/>`
  )
}

/** A braille cell's dots (1 to 6) at the given cell origin (mm). */
const cell = (x, y, dots) =>
  dots
    .map(
      (d) =>
        `<circle cx="${(x + (d > 3 ? 2.4 : 0)).toFixed(3)}" cy="${(y + ((d - 1) % 3) * 2.4).toFixed(3)}" r="0.775"/>`,
    )
    .join('')

const LETTERS = {
  a: [1],
  e: [1, 5],
  i: [2, 4],
  l: [1, 2, 3],
  m: [1, 3, 4],
  n: [1, 3, 4, 5],
  o: [1, 3, 5],
  r: [1, 2, 3, 5],
  s: [2, 3, 4],
  t: [2, 3, 4, 5],
}
const WORDS = ['room', 'salon', 'atelier', 'terminal', 'metro', 'line', 'solar', 'tram']

/** A sign of about `bytes` bytes: outlined letters above, lines of uncontracted braille below. */
export function signOfBytes(bytes) {
  const width = 600
  const parts = []
  let size = 0
  let row = 0
  const add = (text) => {
    parts.push(text)
    size += text.length
  }
  while (size < bytes) {
    const y = 40 + row * 44
    add('<g id="raised' + row + '" fill="#1b263b">')
    for (let i = 0; i < 24; i++) add(letter(20 + i * 18, y))
    add('</g><g id="braille' + row + '" fill="#1b263b">')
    let column = 0
    for (const word of [WORDS[row % WORDS.length], WORDS[(row + 3) % WORDS.length]]) {
      for (const l of word) add(cell(20 + column++ * 6.9, y + 12, LETTERS[l]))
      column++
    }
    add('</g>')
    row++
  }
  return HEAD(width, 60 + row * 44) + parts.join('') + '</svg>'
}

/** A field of `count` dots on one braille lattice, a path for each line of cells. */
export function fieldOfDots(count) {
  const perLine = Math.ceil(Math.sqrt(count / 4))
  const parts = []
  let left = count
  for (let line = 0; left > 0; line++) {
    const dots = []
    for (let column = 0; column < perLine && left > 0; column++) {
      const raised = [1, 2, 3, 4, 5, 6]
        .filter((d) => (line * 7 + column * 5 + d * 3) % 3 !== 0)
        .slice(0, Math.min(4, left))
      left -= raised.length
      for (const d of raised) {
        const x = 5 + column * 6.9 + (d > 3 ? 2.4 : 0)
        const y = 5 + line * 10.1 + ((d - 1) % 3) * 2.4
        dots.push(`M${(x - 0.775).toFixed(3)},${y.toFixed(2)}a.775,.775 0 1 0 1.55,0a.775,.775 0 1 0-1.55,0z`)
      }
    }
    parts.push(`<path d="${dots.join('')}"/>`)
  }
  const side = Math.ceil(perLine * 10.1) + 20
  return HEAD(side, side) + '<g id="braille">' + parts.join('') + '</g></svg>'
}
