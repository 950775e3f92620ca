import { announce, renew } from './renew.js'

/** Milliseconds between two looks at the page while something is under way. */
const PAUSE = 1500

/** Keeps a page up to date while signs are being checked: it listens for events, and looks by itself where there are none. */
export function watchProgress() {
  const place = document.querySelector('[data-progress]')
  if (!(place instanceof HTMLElement) || place.dataset.progress === undefined) return
  const isWhole = place.dataset.whole !== undefined
  let isLooking = false
  let isOver = false

  const look = async () => {
    if (isLooking || isOver) return
    isLooking = true
    try {
      const fresh = await renew(location.href)
      if (fresh.querySelector('[data-progress]')) return
      isOver = true
      source?.close()
      clearInterval(timer)
      if (isWhole) showWhole(fresh)
      announce('Checked. The page is up to date.')
    } catch {
      // The service may be back at the next look.
    } finally {
      isLooking = false
    }
  }

  const source = 'EventSource' in window ? new EventSource(place.dataset.progress) : undefined
  let isNews = false
  source?.addEventListener('progress', () => (isNews = true))
  source?.addEventListener('done', () => void look())
  const timer = setInterval(() => {
    // Where events do not come through, the page is looked at all the same.
    if (isNews || source?.readyState !== EventSource.OPEN) void look()
    isNews = false
  }, PAUSE)
}

/**
 * A page of which nearly everything changes is shown anew, unless somebody is at work on it.
 * @param {Document} fresh
 */
function showWhole(fresh) {
  const main = document.querySelector('main')
  const next = fresh.querySelector('main')
  if (!main || !next || main.contains(document.activeElement) || isTouched(main)) return
  location.reload()
}

/**
 * @param {HTMLElement} main
 * @returns {boolean} whether something was filled in and not sent
 */
function isTouched(main) {
  return [...main.querySelectorAll('input, textarea')].some((control) =>
    control instanceof HTMLInputElement && control.type === 'checkbox'
      ? control.checked !== control.defaultChecked
      : (control instanceof HTMLInputElement || control instanceof HTMLTextAreaElement) &&
        control.type !== 'hidden' &&
        control.value !== control.defaultValue,
  )
}
