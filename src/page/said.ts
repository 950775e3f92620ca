import { markup, NOTHING, type Html } from '../report/html-tag.js'

/** What has just been done, said once on the page that one is led to. The address names a sentence, it never holds one. */
const SENTENCES = {
  added: 'The files were added; their signs are being checked.',
  cancelled: 'The submittal was cancelled. Reports that were there stay.',
  deleted: 'The submittal was deleted.',
  measured: 'The measured values were entered; the sign is checked again with them.',
  placed: 'The facts of its place were entered; the sign is checked again with them.',
  waived: 'The waiver was entered. The finding stays what it is.',
  withdrawn: 'The waiver was withdrawn. The history keeps it.',
  noted: 'The note was added.',
} as const
export type Said = keyof typeof SENTENCES

const isSaid = (name: string | null): name is Said => name !== null && Object.hasOwn(SENTENCES, name)

export function saidNotice(query: URLSearchParams): Html {
  const name = query.get('said')
  return isSaid(name) ? markup`<div class="notice" role="status"><p>${SENTENCES[name]}</p></div>` : NOTHING
}
