import type { FastifyInstance } from 'fastify'
import { escapeHtml, sendPage } from './page.js'
import { problemAddress, problemOf, ServiceProblem } from './problems.js'
import { PROBLEM_TYPES, PROBLEMS, type ProblemType } from './problem-table.js'

/** The page behind the type of each problem, as HTML for a browser and as Markdown for the docs folder. */

const EXAMPLE_REQUEST_ID = '00000000-0000-4000-8000-000000000000'

const exampleOf = (type: ProblemType): string =>
  JSON.stringify(problemOf({ type, detail: PROBLEMS[type].example, errors: [] }, EXAMPLE_REQUEST_ID), null, 2)

const isProblemType = (name: string): name is ProblemType => (PROBLEM_TYPES as string[]).includes(name)

/** Text of the table as HTML: what stands between backticks is code, as in Markdown. */
const prose = (text: string): string => escapeHtml(text).replace(/`([^`]*)`/gu, '<code>$1</code>')

export function problemPageRoutes(app: FastifyInstance) {
  app.get('/docs/problems', { schema: { hide: true } }, async (_request, reply) => {
    const items = PROBLEM_TYPES.map((type) => {
      const { status, title } = PROBLEMS[type]
      return `<li><a href="${problemAddress(type)}"><code>${type}</code></a> (${status}): ${escapeHtml(title)}</li>`
    })
    return sendPage(reply, 'Problems', `<ul>\n${items.join('\n')}\n</ul>`)
  })

  app.get('/docs/problems/:type', { schema: { hide: true } }, async (request, reply) => {
    const { type } = request.params as { type: string }
    if (!isProblemType(type)) throw new ServiceProblem('not-found', `There is no problem “${type}”.`)
    const { status, title, meaning, remedy } = PROBLEMS[type]
    return sendPage(
      reply,
      title,
      `<p><code>${type}</code>, status ${status}</p>\n<dl>\n<dt>What it means</dt><dd>${prose(meaning)}</dd>\n<dt>What to do</dt><dd>${prose(remedy)}</dd>\n</dl>\n<h2>Example</h2>\n<pre><code>${escapeHtml(exampleOf(type))}</code></pre>\n<p><a href="/docs/problems">All problems</a></p>`,
    )
  })
}

export function problemMarkdown(type: ProblemType): string {
  const { status, title, meaning, remedy } = PROBLEMS[type]
  return `# ${title}\n\n\`${type}\`, status ${status}\n\n${meaning}\n\n**What to do.** ${remedy}\n\n\`\`\`json\n${exampleOf(type)}\n\`\`\`\n`
}
