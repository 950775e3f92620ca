import { createHash } from 'node:crypto'
import type { FastifyReply } from 'fastify'

/** A small plain page for people: no script, one style sheet, nothing loaded from anywhere. */

const STYLE = `
:root { color-scheme: light dark }
body { font: 1.05rem/1.6 system-ui, sans-serif; max-width: 42rem; margin: 2rem auto; padding: 0 1rem }
code { font-size: 0.95em }
dt { font-weight: 600; margin-top: 1rem }
dd { margin: 0 }
`

const STYLE_HASH = `sha256-${createHash('sha256').update(STYLE).digest('base64')}`

/** Only the one style sheet whose hash is given is let in. */
export const pagePolicy = (styleHash: string): string =>
  `default-src 'none'; style-src '${styleHash}'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`

/** @param main markup of the main part, already escaped */
export function sendPage(reply: FastifyReply, title: string, main: string) {
  const name = escapeHtml(title)
  return reply
    .type('text/html; charset=utf-8')
    .header('content-security-policy', pagePolicy(STYLE_HASH))
    .send(
      `<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width, initial-scale=1">\n<title>${name}</title>\n<style>${STYLE}</style>\n</head>\n<body>\n<main>\n<h1>${name}</h1>\n${main}\n</main>\n</body>\n</html>\n`,
    )
}

const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

export const escapeHtml = (text: string): string => text.replace(/[&<>"']/gu, (character) => ESCAPES[character] ?? '')
