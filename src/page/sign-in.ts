import type { FastifyInstance } from 'fastify'
import { markup, type Html } from '../report/html-tag.js'
import { SIGN_IN } from '../service/keys/guard.js'
import { clearSession, sessionOf, setSession } from '../service/keys/session-cookie.js'
import type { Keeping } from '../submittals/keeping.js'
import { closeSession, openSession } from '../submittals/keys/sessions.js'
import { errorOf, errorSummary, hidden, textField, type FormError } from './form.js'
import { sendView, type View } from './layout.js'
import { queryOf } from './query.js'

/** Signing in with an API key, and out again. */

export function signInPages(app: FastifyInstance, keeping: Keeping, isKeyAsked: boolean) {
  app.get(SIGN_IN, async (request, reply) =>
    sendView(request, reply, isKeyAsked ? signInPage(queryOf(request).get('to') ?? '/', []) : NO_KEY_NEEDED),
  )

  app.post(SIGN_IN, async (request, reply) => {
    const values = request.body instanceof URLSearchParams ? request.body : new URLSearchParams()
    const to = inside(values.get('to') ?? '/')
    const key = values.get('key')?.trim() ?? ''
    if (key === '') return sendView(request, reply, signInPage(to, [{ id: 'key', text: 'Enter your key.' }]), 422)
    const token = await openSession(keeping, key)
    if (token === undefined) {
      request.log.info({ address: request.ip }, 'a key was refused at sign-in')
      return sendView(request, reply, signInPage(to, [{ id: 'key', text: REFUSED }]), 403)
    }
    setSession(request, reply, token)
    return reply.redirect(to, 303)
  })

  app.post('/sign-out', async (request, reply) => {
    const session = sessionOf(request)
    if (session !== undefined) await closeSession(keeping, session)
    clearSession(request, reply)
    return reply.redirect(isKeyAsked ? SIGN_IN : '/', 303)
  })
}

const REFUSED = 'This key does not work here: it is not known, was revoked or has ended.'

const NO_KEY_NEEDED: View = {
  title: 'Sign in',
  main: markup`<h1>No key is needed here</h1>
    <p>Whoever can reach this service may use it. <a href="/">To the first page</a></p>`,
}

const signInPage = (to: string, errors: readonly FormError[]): View => ({
  title: `${errors.length > 0 ? 'Error: ' : ''}Sign in`,
  main: markup`${errorSummary(errors)}
    <h1>Sign in</h1>
    <p>With the key that whoever runs this service gave you. It is asked for again after a working day.</p>
    ${form(to, errors)}`,
})

const form = (to: string, errors: readonly FormError[]): Html =>
  markup`<form method="post" action="${SIGN_IN}" aria-label="Sign in">
    ${hidden('to', to)}
    ${textField({ id: 'key', label: 'Key', hint: 'It begins with fingertrue_.', error: errorOf(errors, 'key') }, '', { type: 'password', isRequired: true, autocomplete: 'current-password' })}
    <button type="submit">Sign in</button>
  </form>`

/** Nobody is led to another site: an address of this one, or the first page. */
function inside(to: string): string {
  const base = 'http://inside.invalid'
  if (!to.startsWith('/') || !URL.canParse(to, base)) return '/'
  const { origin, pathname, search } = new URL(to, base)
  return origin === base ? `${pathname}${search}` : '/'
}
