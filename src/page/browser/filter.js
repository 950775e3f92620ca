import { announce, renew } from './renew.js'

/** Milliseconds after the last key. */
const PAUSE = 300

/** The table of signs follows what is typed into its filter; without scripts the filter is sent by its button. */
export function filterAsTyped() {
  const form = document.querySelector('[data-filter]')
  if (!(form instanceof HTMLFormElement)) return
  /** @type {number | undefined} */
  let timer
  const follow = async () => {
    const query = new URLSearchParams()
    for (const [name, value] of new FormData(form))
      if (typeof value === 'string' && value !== '') query.set(name, value)
    const address = `${form.getAttribute('action') ?? ''}?${query}`
    try {
      await renew(address)
      history.replaceState(null, '', address)
      announce(document.getElementById('found')?.textContent ?? '')
    } catch {
      // The button still sends the filter.
    }
  }
  form.addEventListener('input', () => {
    clearTimeout(timer)
    timer = window.setTimeout(() => void follow(), PAUSE)
  })
}
