/**
 * Loads a page again and puts its living parts in the place of those that are shown, without moving whoever reads: a part that has
 * the focus in it stays as it is.
 * @param {string} address
 * @returns {Promise<Document>}
 */
export async function renew(address) {
  const response = await fetch(address, { headers: { accept: 'text/html' } })
  if (!response.ok) throw new Error(`the page answered ${response.status}`)
  const fresh = new DOMParser().parseFromString(await response.text(), 'text/html')
  for (const part of document.querySelectorAll('[data-live]')) {
    const next = fresh.getElementById(part.id)
    if (next && !part.contains(document.activeElement)) part.replaceWith(document.adoptNode(next))
  }
  return fresh
}

/**
 * Says something to those who hear the page.
 * @param {string} text
 */
export function announce(text) {
  const place = document.querySelector('[data-announce]')
  if (place) place.textContent = text
}
