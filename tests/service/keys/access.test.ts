import { describe, expect, it } from 'vitest'
import { accessOf } from '../../../src/service/keys/access.js'

const of = (method: string | string[], url: string) => accessOf({ method, url })

describe('what a route asks for', () => {
  it('is a scope for every family below /v1, another for reading than for changing', () => {
    expect(of('GET', '/v1/submittals/:submittal')).toEqual({ for: 'keys', scope: 'read', sessions: true })
    expect(of('HEAD', '/v1/submittals/:submittal')).toEqual({ for: 'keys', scope: 'read', sessions: true })
    expect(of('DELETE', '/v1/submittals/:submittal')).toEqual({ for: 'keys', scope: 'write', sessions: false })
    expect(of(['GET', 'POST'], '/v1/submittals')).toMatchObject({ scope: 'write' })
    expect(of('GET', '/v1/keys')).toEqual({ for: 'keys', scope: 'admin', sessions: false })
    expect(of('GET', '/v1/standards/:id')).toMatchObject({ scope: null })
  })

  it('is a session for pages of submittals, and nothing for the signpost and what it needs', () => {
    expect(of('GET', '/submittals/:submittal')).toEqual({ for: 'signed-in', scope: 'read' })
    expect(of('POST', '/submittals')).toEqual({ for: 'signed-in', scope: 'write' })
    expect(of('GET', '/')).toEqual({ for: 'visitors' })
    for (const url of ['/livez', '/metrics', '/docs/static/*', '/openapi.json', '/assets/:file', '/sign-in'])
      expect(of('GET', url), url).toEqual({ for: 'anybody' })
  })

  it.each(['/v1/secrets', '/v1', '/v2/checks', '/admin', '*', '/docsx'])('is not guessed for %s', (url) =>
    expect(() => of('GET', url)).toThrow(TypeError),
  )

  it('may be said by the route itself', () => {
    expect(accessOf({ method: 'GET', url: '/odd', config: { access: { for: 'anybody' } } })).toEqual({ for: 'anybody' })
  })
})
