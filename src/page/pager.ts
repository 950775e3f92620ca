import { markup, NOTHING, type Html } from '../report/html-tag.js'

/** The way through a long list, a page at a time. */

export interface Part {
  /** Counted from 1. */
  page: number
  size: number
  total: number
}

export const pagesOf = ({ size, total }: Part): number => Math.max(1, Math.ceil(total / size))

/** What a query says of a page; the first for anything that is no number. */
export const pageIn = (query: URLSearchParams): number => {
  const page = Number(query.get('page') ?? '1')
  return Number.isSafeInteger(page) && page >= 1 ? page : 1
}

/** @param address without a query @param query what else is kept in it @param what the things listed, in the plural */
export function pager(part: Part, address: string, query: URLSearchParams, what: string): Html {
  const { page, size, total } = part
  const last = pagesOf(part)
  if (last === 1) return NOTHING
  const to = (number: number) => {
    const next = new URLSearchParams(query)
    next.set('page', String(number))
    return `${address}?${next.toString()}`
  }
  const from = (page - 1) * size + 1
  return markup`<nav class="pages" aria-label="Pages of ${what}">
    <p>
      ${from > total ? 'None' : `${from.toLocaleString('en')} to ${Math.min(total, page * size).toLocaleString('en')}`} of
      ${total.toLocaleString('en')}
    </p>
    ${page > 1 ? markup`<a class="button quiet" href="${to(1)}">First</a> <a class="button quiet" rel="prev" href="${to(page - 1)}">Before</a>` : NOTHING}
    ${page < last ? markup`<a class="button quiet" rel="next" href="${to(page + 1)}">Next</a> <a class="button quiet" href="${to(last)}">Last</a>` : NOTHING}
  </nav>`
}
