/** A finding that is pointed at or has the focus outlines its places on the drawing, and a place its findings. */
export function linkPlaces() {
  const places = [...document.querySelectorAll('.place')]
  if (places.length === 0) return
  for (const place of places) {
    const findings = numbersOf(place).flatMap((number) => document.getElementById(`finding-${number}`) ?? [])
    light(place, findings)
    for (const finding of findings) light(finding, [place])
  }
}

/**
 * @param {Element} place
 * @returns {string[]}
 */
const numbersOf = (place) => (place instanceof SVGElement ? (place.dataset.findings ?? '').split(' ') : [])

/**
 * @param {Element} from what is pointed at or has the focus
 * @param {Element[]} others what is outlined then
 */
function light(from, others) {
  const set = (/** @type {boolean} */ isLit) => {
    for (const other of others) other.classList.toggle('lit', isLit)
  }
  for (const event of ['pointerenter', 'focusin']) from.addEventListener(event, () => set(true))
  for (const event of ['pointerleave', 'focusout'])
    from.addEventListener(event, () => set(from.contains(document.activeElement)))
}
