/** Files can be dropped on the field for them, and what was chosen is said in words. */
export function listenForDrops() {
  for (const area of document.querySelectorAll('[data-drop]')) {
    const input = area.querySelector('input')
    const said = area.querySelector('[data-drop-said]')
    if (!(input instanceof HTMLInputElement) || !said) continue
    const say = () => (said.textContent = chosenWords(input.files))
    input.addEventListener('change', say)
    area.addEventListener('dragover', (event) => {
      event.preventDefault()
      area.classList.add('over')
    })
    area.addEventListener('dragleave', () => area.classList.remove('over'))
    area.addEventListener('drop', (event) => {
      area.classList.remove('over')
      if (!(event instanceof DragEvent) || !event.dataTransfer?.files.length) return
      event.preventDefault()
      input.files = event.dataTransfer.files
      say()
    })
    said.textContent = 'Files can also be dropped here.'
  }
}

const MOST_NAMED = 3

/**
 * @param {FileList | null} files
 * @returns {string}
 */
function chosenWords(files) {
  const names = [...(files ?? [])].map(({ name }) => name)
  if (names.length === 0) return 'Nothing is chosen.'
  const more = names.length - MOST_NAMED
  const named = names.slice(0, MOST_NAMED).join(', ')
  return `${names.length} chosen: ${named}${more > 0 ? ` and ${more} more` : ''}.`
}
