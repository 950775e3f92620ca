import type { FastifyReply, FastifyRequest } from 'fastify'
import { isolated, markup, NOTHING } from '../report/html-tag.js'
import { sendProblem, type SendProblem } from '../service/errors.js'
import { problemAddress, problemOf, ServiceProblem } from '../service/problems.js'
import { PROBLEMS } from '../service/problem-table.js'
import { sendView } from './layout.js'

/** A problem as a page, for people; clients of the interface get the document. */
export const sendErrorPage: SendProblem = (request, reply, cause) => {
  const { title, status, detail, errors = [], instance } = problemOf(cause, request.id)
  const { meaning, remedy } = PROBLEMS[cause.type]
  if (cause instanceof ServiceProblem) void reply.headers(cause.headers)
  const main = markup`<h1>${title}</h1>
    <p class="lead">${isolated(detail)}</p>
    ${errors.length === 0 ? NOTHING : markup`<ul>${errors.map((one) => markup`<li>${isolated(one.detail)}</li>`)}</ul>`}
    ${status === 404 ? NOTHING : markup`<p>${meaning} ${remedy}</p>`}
    <p><a class="button" href="/">To the first page</a> <a class="button quiet" href="/submittals">Submittals</a></p>
    <p class="hint">Status ${status}, <a href="${problemAddress(cause.type)}">${cause.type}</a>, ${instance}</p>`
  return sendView(request, reply, { title, main }, status)
}

/** For addresses that there are not: a page for browsers, except under the interface. */
export const sendEitherWay: SendProblem = (request: FastifyRequest, reply: FastifyReply, cause) =>
  isOfTheInterface(request.url) || !isBrowser(request)
    ? sendProblem(request, reply, cause)
    : sendErrorPage(request, reply, cause)

const isOfTheInterface = (url: string): boolean => /^\/v1(?:[/?]|$)/u.test(url)

/** Browsers name HTML before anything else; other clients name it seldom or not at all. */
const isBrowser = ({ headers }: FastifyRequest): boolean => headers.accept?.startsWith('text/html') ?? false
